package org.flexwright.hardness;

import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.hardness.contact.Ball;
import org.flexwright.hardness.contact.Frustum;
import org.flexwright.hardness.contact.Indenter;
import org.flexwright.hardness.contact.RoundedCone;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;

/**
 * A durometer as an instrument: a spring presses an indenter out of a flat foot, and the reading
 * says how far the indenter stays out.
 *
 * <p>Spring force F = F0 + k H; depth of the indenter in the material d = L (1 - H / 100).
 *
 * <p>H reading in points, 0 to 100; F0 and k preload and rate of the spring in N and N per point; L
 * the extension of the free indenter, 2.5 mm but 1.25 mm for type M and 5 mm for type OOO-S. Type
 * A: F0 = 0.55 N, k = 0.075 N, a cone of 35 degrees included angle cut off at a flat of 0.79 mm
 * diameter. Type D: F0 = 0, k = 0.4445 N, a cone of 30 degrees included angle with a tip rounded to
 * 0.1 mm radius. The others combine such springs and cones with balls. Type R of ASTM D2240 is not
 * here.
 *
 * <p>Here 0 and 100 are allowed: the instrument has them, a reading does not. {@link LinearContact}
 * takes a reading to a modulus and back.
 *
 * <p>Source: ASTM D2240-15 and ISO 48-4:2018, from memory, see {@link #source()}; the names of the
 * types, and for types A and D the shape and most of the spring, were read in secondary texts.
 *
 * <pre>{@code
 * Durometer.SHORE_A.springForce(60)      // 5.05 N
 * Durometer.SHORE_D.indentation(46)      // 1.35 mm
 * }</pre>
 */
@SuppressWarnings("ImmutableEnumChecker") // springs and indenters are records
public enum Durometer {
  /** Type A: blunt cone, spring 0.55 N to 8.05 N; rubber. */
  SHORE_A("Shore A", Spring.LIGHT, Tips.BLUNT, 2.5),
  /** Type B: the pointed cone of type D with the spring of type A. */
  SHORE_B("Shore B", Spring.LIGHT, Tips.POINTED, 2.5),
  /** Type C: the blunt cone of type A with the spring of type D. */
  SHORE_C("Shore C", Spring.STRONG, Tips.BLUNT, 2.5),
  /** Type D: pointed cone with a rounded tip, spring 0 N to 44.45 N; hard rubber and plastics. */
  SHORE_D("Shore D", Spring.STRONG, Tips.POINTED, 2.5),
  /** Type DO: ball of 2.38 mm diameter with the spring of type D. */
  SHORE_DO("Shore DO", Spring.STRONG, Tips.SMALL_BALL, 2.5),
  /** Type O: ball of 2.38 mm diameter with the spring of type A. */
  SHORE_O("Shore O", Spring.LIGHT, Tips.SMALL_BALL, 2.5),
  /** Type OO: ball of 2.38 mm diameter, spring 0.203 N to 1.111 N; soft foams and gels. */
  SHORE_OO("Shore OO", Spring.SOFT, Tips.SMALL_BALL, 2.5),
  /** Type OOO: ball of 12.7 mm diameter with the spring of type OO. */
  SHORE_OOO("Shore OOO", Spring.SOFT, ball(6.35), 2.5),
  /** Type OOO-S: ball of 21.4 mm diameter, extension 5 mm, spring 0.167 N to 1.932 N. */
  SHORE_OOO_S("Shore OOO-S", new Spring(0.167, 0.01765), ball(10.7), 5.0),
  /** Type E: ball of 5 mm diameter with the spring of type A. */
  SHORE_E("Shore E", Spring.LIGHT, Tips.LARGE_BALL, 2.5),
  /** Type M, AM in ISO 48-4: the pointed cone on thin pieces, extension 1.25 mm. */
  SHORE_M("Shore M", new Spring(0.324, 0.0044), Tips.POINTED, 1.25),
  /** Type AO of ISO 48-4: ball of 5 mm diameter with the spring of type A, as type E. */
  SHORE_AO("Shore AO", Spring.LIGHT, Tips.LARGE_BALL, 2.5);

  /** Preload in N and rate in N per point. */
  private record Spring(double preload, double rate) {
    static final Spring LIGHT = new Spring(0.55, 0.075);
    static final Spring STRONG = new Spring(0.0, 0.4445);
    static final Spring SOFT = new Spring(0.203, 0.00908);
  }

  /** Indenters that several types share. */
  private static final class Tips {
    static final Indenter BLUNT = new Frustum(Length.mm(0.395), Angle.degrees(17.5));
    static final Indenter POINTED = new RoundedCone(Length.mm(0.1), Angle.degrees(15.0));
    static final Indenter SMALL_BALL = ball(1.19);
    static final Indenter LARGE_BALL = ball(2.5);

    private Tips() {}
  }

  private static final Source SOURCE =
      Source.memory(
          "ASTM D2240-15 and ISO 48-4:2018, spring, indenter and extension of the durometer types");
  private static final Source DISCARD_A =
      Source.read("advice of test houses on ASTM D2240, discard readings below 10 and above 90");
  private static final Source DISCARD =
      Source.memory("ASTM D2240, readings below 20 and above 90 points are to be discarded");

  private final String words;
  private final Spring spring;
  private final Indenter indenter;
  private final double extension;

  Durometer(String words, Spring spring, Indenter indenter, double extensionMm) {
    this.words = words;
    this.spring = spring;
    this.indenter = indenter;
    this.extension = extensionMm;
  }

  private static Indenter ball(double radiusMm) {
    return new Ball(Length.mm(radiusMm));
  }

  /**
   * The force on the indenter at a reading.
   *
   * @param points the reading, 0 to 100
   * @return the spring force
   * @throws org.flexwright.InvalidInputException if the reading is outside 0 to 100
   */
  public Force springForce(double points) {
    return Force.newtons(spring.preload + spring.rate * closed(points));
  }

  /**
   * How deep the indenter stands in the material at a reading.
   *
   * @param points the reading, 0 to 100
   * @return the depth, from the extension at 0 to nothing at 100
   * @throws org.flexwright.InvalidInputException if the reading is outside 0 to 100
   */
  public Length indentation(double points) {
    return Length.mm(extension * ((100.0 - closed(points)) / 100.0));
  }

  /**
   * The reading at a depth of the indenter.
   *
   * @param indentation the depth, 0 to the extension
   * @return the reading in points, 0 to 100
   * @throws org.flexwright.InvalidInputException if the depth is outside 0 to the extension
   */
  public double points(Length indentation) {
    double depth = Require.between(words + " indentation", indentation.mm(), 0.0, extension, "mm");
    return 100.0 * (1.0 - depth / extension);
  }

  /**
   * The reading at a force of the spring, as in a calibration on a balance.
   *
   * @param springForce the force, from the preload to the force at 100 points
   * @return the reading in points, 0 to 100
   * @throws org.flexwright.InvalidInputException if the spring does not reach the force
   */
  public double points(Force springForce) {
    double most = springForce(100.0).newtons();
    double n =
        Require.between(words + " spring force", springForce.newtons(), spring.preload, most, "N");
    return Math.min(100.0, (n - spring.preload) / spring.rate);
  }

  /**
   * How far the free indenter stands out of the foot.
   *
   * @return the extension, 2.5 mm for most types
   */
  public Length extension() {
    return Length.mm(extension);
  }

  /**
   * The indenter of a new instrument.
   *
   * @return its shape
   */
  public Indenter indenter() {
    return indenter;
  }

  /**
   * The readings that the standard keeps: 10 to 90 points of Shore A, 20 to 90 of the others.
   *
   * @return the range
   */
  public ValidityRange range() {
    String model = words.replace("Shore", "type") + " durometer";
    return this == SHORE_A
        ? new ValidityRange(model, words, 10.0, 90.0, "points", DISCARD_A)
        : new ValidityRange(model, words, 20.0, 90.0, "points", DISCARD);
  }

  /**
   * The least thickness of a test piece: 6 mm, 1.5 mm for type M. On less, the base below is felt;
   * {@link LinearContact#on} says by how much.
   *
   * @return the thickness
   */
  public Length leastThickness() {
    return Length.mm(this == SHORE_M ? 1.5 : 6.0);
  }

  /**
   * The name of the scale.
   *
   * @return such as "Shore OO"
   */
  public String scale() {
    return words;
  }

  /**
   * Where spring and geometry come from.
   *
   * @return the source
   */
  public Source source() {
    return SOURCE;
  }

  private double closed(double points) {
    return Require.between(words + " reading", points, 0.0, 100.0, "points");
  }

  /** One readable line. */
  @Override
  public String toString() {
    return words
        + " durometer, "
        + springForce(0.0)
        + " to "
        + springForce(100.0)
        + ", extension "
        + extension();
  }
}
