package org.flexwright.hardness.relation;

import java.util.Optional;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.hardness.Irhd;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;

/**
 * From the depth of a ball to modulus and IRHD: method N of ISO 48-2 by the relation of Scott.
 *
 * <p>F / M = 0.0038 R^0.65 D^1.35.
 *
 * <p>F = 5.40 N the force added to the contact force; M Young's modulus in MPa; R = 1.25 mm radius
 * of the ball; D depth added by F, in hundredths of a millimetre (the constant 0.00017 that is also
 * quoted takes micrometres; mixing the two is a factor of 22). The contact of Hertz gives the same
 * modulus within 4 per cent between 0.6 and 0.8 mm, 19 per cent more at 0.2 mm, 15 per cent less at
 * 1.8 mm.
 *
 * <p>Range 0.15 to 2.0 mm, about 95 to 30 IRHD.
 *
 * <p>Source: J. R. Scott in ISO 48-2, from memory.
 *
 * <pre>{@code
 * BallIndentation.irhd(Length.mm(1.0))      // 51.46 IRHD
 * }</pre>
 */
public final class BallIndentation {

  private static final String NAME = "Scott relation, method N";
  private static final Source SOURCE =
      Source.memory("relation of J. R. Scott between depth, ball and force, ISO 48-2 method N");
  private static final ValidityRange RANGE =
      new ValidityRange(NAME, "depth of the ball", 0.15, 2.0, "mm", SOURCE);

  private static final double FORCE = 5.40;
  private static final double RADIUS = 1.25;
  private static final double EXPONENT = 1.35;
  // M D^1.35 with D in 0.01 mm, in MPa
  private static final double PRODUCT = FORCE / (0.0038 * Math.pow(RADIUS, 0.65));

  private BallIndentation() {}

  /**
   * Young's modulus from the depth.
   *
   * @param depth the depth added by the indenting force, above 0 and at most 5 mm
   * @return the modulus
   * @throws org.flexwright.InvalidInputException if the depth is not above 0, or above 5 mm
   */
  public static Pressure modulus(Length depth) {
    double mm = Require.positive("depth of the ball", depth.mm(), "mm");
    Require.between("depth of the ball", mm, 0.0, 5.0, "mm");
    return Pressure.mpa(PRODUCT * Math.pow(100.0 * mm, -EXPONENT));
  }

  /**
   * The depth from Young's modulus.
   *
   * @param modulus the modulus, above zero
   * @return the depth added by the indenting force
   * @throws org.flexwright.InvalidInputException if the modulus is not above zero
   */
  public static Length depth(Pressure modulus) {
    double mpa = Require.positive("modulus under the ball", modulus.mpa(), "MPa");
    return Length.mm(0.01 * Math.pow(PRODUCT / mpa, 1.0 / EXPONENT));
  }

  /**
   * The reading from the depth, by the definition of {@link IrhdProbit}.
   *
   * @param depth the depth added by the indenting force, above 0 and at most 5 mm
   * @return the reading, taken as exact
   * @throws org.flexwright.InvalidInputException if the depth is not above 0, or above 5 mm, or so
   *     small that the reading is 100
   */
  public static Irhd irhd(Length depth) {
    return Irhd.of(new IrhdProbit().points(modulus(depth)));
  }

  /**
   * The range of the method.
   *
   * @return 0.15 to 2 mm
   */
  public static ValidityRange range() {
    return RANGE;
  }

  /**
   * Where the relation comes from.
   *
   * @return the source
   */
  public static Source source() {
    return SOURCE;
  }

  /**
   * The caveat for a depth outside the method, if any.
   *
   * @param depth the depth
   * @return the caveat, nothing inside the range
   */
  public static Optional<Caveat> check(Length depth) {
    return RANGE.check(depth.mm());
  }
}
