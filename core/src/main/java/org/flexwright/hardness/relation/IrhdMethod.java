package org.flexwright.hardness.relation;

import java.util.Optional;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.hardness.Irhd;
import org.flexwright.hardness.contact.Ball;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;

/**
 * The four methods of ISO 48-2 as instruments: a dead weight presses a ball, and the depth that it
 * adds to that of a small contact force gives modulus and IRHD by the relation of Scott.
 *
 * <p>F / M = 0.0038 R^0.65 D^1.35.
 *
 * <p>F force added to the contact force in N; M Young's modulus in MPa; R radius of the ball in mm;
 * D depth added by F, in hundredths of a millimetre (the constant 0.00017 that is also quoted takes
 * micrometres; mixing the two is a factor of 22). For method N the contact of Hertz gives the same
 * modulus within 4 per cent between 0.6 and 0.8 mm, 19 per cent more at 0.2 mm, 15 per cent less at
 * 1.8 mm. Method M is method N shrunk six times: a sixth of its depth is the same reading.
 *
 * <p>Range: N and M 30 to 95 IRHD (35 to 85 as rule), H 85 to 100, L 10 to 35. A foot around the
 * ball presses with 8.3 N, 0.235 N for method M.
 *
 * <p>Source: ISO 48-2 and J. R. Scott there; ranges and the ball of N read in abstracts, forces and
 * the other balls from memory.
 *
 * <pre>{@code
 * IrhdMethod.N.irhd(Length.mm(1.0))        // 51.46 IRHD
 * IrhdMethod.M.depth(Irhd.of(50))          // 0.1743 mm
 * }</pre>
 */
public enum IrhdMethod {
  /** Method N, normal: ball of 2.5 mm diameter. */
  N(1.25, 0.30, 5.40, 30.0, 95.0),
  /** Method H, high hardness: ball of 1 mm diameter. */
  H(0.5, 0.30, 5.40, 85.0, 100.0),
  /** Method L, low hardness: ball of 5 mm diameter. */
  L(2.5, 0.30, 5.40, 10.0, 35.0),
  /** Method M, micro: ball of 0.395 mm diameter, for pieces of about 2 mm thickness. */
  M(0.1975, 0.0083, 0.145, 30.0, 95.0);

  private static final Source SOURCE =
      Source.memory(
          "relation of J. R. Scott between depth, ball and force, ISO 48-2 methods N, H, L and M");
  private static final double CONSTANT = 0.0038;
  private static final double EXPONENT = 1.35;
  private static final double BALL_EXPONENT = 0.65;

  private final double radius;
  private final double contactForce;
  private final double addedForce;
  private final double low;
  private final double high;
  // M D^1.35 with D in 0.01 mm, in MPa
  private final double product;

  IrhdMethod(double radiusMm, double contactForce, double addedForce, double low, double high) {
    this.radius = radiusMm;
    this.contactForce = contactForce;
    this.addedForce = addedForce;
    this.low = low;
    this.high = high;
    this.product = addedForce / (CONSTANT * Math.pow(radiusMm, BALL_EXPONENT));
  }

  /**
   * Young's modulus from the depth.
   *
   * @param depth the depth added by the indenting force, above 0 and at most four radii
   * @return the modulus
   * @throws org.flexwright.InvalidInputException if the depth is not above 0, or above four radii
   */
  public Pressure modulus(Length depth) {
    double mm = Require.positive("depth of the ball", depth.mm(), "mm");
    Require.between("depth of the ball", mm, 0.0, 4.0 * radius, "mm");
    return Pressure.mpa(product * Math.pow(100.0 * mm, -EXPONENT));
  }

  /**
   * The depth from Young's modulus.
   *
   * @param modulus the modulus, above zero
   * @return the depth added by the indenting force
   * @throws org.flexwright.InvalidInputException if the modulus is not above zero
   */
  public Length depth(Pressure modulus) {
    double mpa = Require.positive("modulus under the ball", modulus.mpa(), "MPa");
    return Length.mm(0.01 * Math.pow(product / mpa, 1.0 / EXPONENT));
  }

  /**
   * The depth at a reading, by the definition of {@link IrhdProbit}.
   *
   * @param reading the reading
   * @return the depth added by the indenting force
   */
  public Length depth(Irhd reading) {
    return depth(new IrhdProbit().modulus(reading.points()));
  }

  /**
   * The reading from the depth, by the definition of {@link IrhdProbit}.
   *
   * @param depth the depth added by the indenting force, above 0 and at most four radii
   * @return the reading, taken as exact
   * @throws org.flexwright.InvalidInputException if the depth is not above 0, or above four radii,
   *     or so small that the reading is 100
   */
  public Irhd irhd(Length depth) {
    return Irhd.of(new IrhdProbit().points(modulus(depth)));
  }

  /**
   * The ball.
   *
   * @return its shape, for {@link org.flexwright.hardness.contact.Indenter#force}
   */
  public Ball ball() {
    return new Ball(Length.mm(radius));
  }

  /**
   * The force from which the depth is counted.
   *
   * @return the contact force
   */
  public Force contactForce() {
    return Force.newtons(contactForce);
  }

  /**
   * The force that is added.
   *
   * @return the indenting force
   */
  public Force addedForce() {
    return Force.newtons(addedForce);
  }

  /**
   * The range of the method.
   *
   * @return readings in IRHD
   */
  public ValidityRange range() {
    return new ValidityRange("IRHD method " + name(), "IRHD", low, high, "points", SOURCE);
  }

  /**
   * Where the relation comes from.
   *
   * @return the source
   */
  public Source source() {
    return SOURCE;
  }

  /**
   * The caveat for a reading outside the method, if any.
   *
   * @param reading the reading
   * @return the caveat, nothing inside the range
   */
  public Optional<Caveat> check(Irhd reading) {
    return range().check(reading.points());
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "IRHD method "
        + name()
        + ", "
        + ball()
        + ", "
        + contactForce()
        + " and "
        + addedForce()
        + " added, "
        + range();
  }
}
