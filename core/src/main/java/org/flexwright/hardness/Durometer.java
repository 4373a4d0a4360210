package org.flexwright.hardness;

import org.flexwright.evidence.Source;
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
 * = 2.5 mm the extension of the free indenter. Type A: F0 = 0.55 N, k = 0.075 N, a cone of 35
 * degrees included angle cut off at a flat of 0.79 mm diameter. Type D: F0 = 0, k = 0.4445 N, a
 * cone of 30 degrees included angle with a tip rounded to 0.1 mm radius.
 *
 * <p>Here 0 and 100 are allowed: the instrument has them, a reading does not.
 *
 * <p>Source: ASTM D2240-15 and ISO 48-4:2018, from memory, see {@link #source()}.
 *
 * <pre>{@code
 * Durometer.SHORE_A.springForce(60)      // 5.05 N
 * Durometer.SHORE_D.indentation(46)      // 1.35 mm
 * }</pre>
 */
public enum Durometer {
  /** Type A: blunt cone, spring 0.55 N to 8.05 N. */
  SHORE_A("Shore A", 0.55, 0.075, 0.395, 17.5),
  /** Type D: pointed cone with a rounded tip, spring 0 N to 44.45 N. */
  SHORE_D("Shore D", 0.0, 0.4445, 0.1, 15.0);

  private static final double EXTENSION_MM = 2.5;
  private static final Source SOURCE =
      Source.memory(
          "ASTM D2240-15 and ISO 48-4:2018, spring, indenter and extension of types A and D");

  private final String words;
  private final double preload;
  private final double rate;
  private final double tipRadius;
  private final double halfAngle;

  Durometer(String words, double preload, double rate, double tipRadius, double halfAngle) {
    this.words = words;
    this.preload = preload;
    this.rate = rate;
    this.tipRadius = tipRadius;
    this.halfAngle = halfAngle;
  }

  /**
   * The force on the indenter at a reading.
   *
   * @param points the reading, 0 to 100
   * @return the spring force
   * @throws org.flexwright.InvalidInputException if the reading is outside 0 to 100
   */
  public Force springForce(double points) {
    return Force.newtons(preload + rate * closed(points));
  }

  /**
   * How deep the indenter stands in the material at a reading.
   *
   * @param points the reading, 0 to 100
   * @return the depth, from 2.5 mm at 0 to nothing at 100
   * @throws org.flexwright.InvalidInputException if the reading is outside 0 to 100
   */
  public Length indentation(double points) {
    return Length.mm(EXTENSION_MM * (1.0 - closed(points) / 100.0));
  }

  /**
   * The reading at a depth of the indenter.
   *
   * @param indentation the depth, 0 to 2.5 mm
   * @return the reading in points, 0 to 100
   * @throws org.flexwright.InvalidInputException if the depth is outside 0 to 2.5 mm
   */
  public double points(Length indentation) {
    double depth =
        Require.between(words + " indentation", indentation.mm(), 0.0, EXTENSION_MM, "mm");
    return 100.0 * (1.0 - depth / EXTENSION_MM);
  }

  /**
   * How far the free indenter stands out of the foot.
   *
   * @return the extension, 2.5 mm
   */
  public Length extension() {
    return Length.mm(EXTENSION_MM);
  }

  /**
   * The radius at the tip: of the flat face (type A), of the rounding (type D).
   *
   * @return the radius
   */
  public Length tipRadius() {
    return Length.mm(tipRadius);
  }

  /**
   * The angle between the axis and the flank of the cone, half the included angle.
   *
   * @return the angle
   */
  public Angle halfAngle() {
    return Angle.degrees(halfAngle);
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
