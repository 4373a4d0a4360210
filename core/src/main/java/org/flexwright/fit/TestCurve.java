package org.flexwright.fit;

import java.util.List;
import java.util.Locale;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.law.Deformation;
import org.flexwright.quantity.Pressure;

/**
 * One measured curve of a homogeneous test: stretches and nominal stresses.
 *
 * <p>JShell: {@code TestCurve.of("strip", Deformation.UNIAXIAL, List.of(TestCurve.at(1.5,
 * mpa(0.4)), TestCurve.at(2, mpa(0.6))))}
 *
 * @param name a name for tables
 * @param mode the deformation
 * @param points the points, at least one, by rising stretch
 * @param weight how much the curve counts in a fit, 1 unless said otherwise, above 0
 */
public record TestCurve(String name, Deformation mode, List<Point> points, double weight) {

  /**
   * One point of a curve.
   *
   * @param stretch deformed over reference length, above 0
   * @param nominal force per reference area, negative in compression
   */
  public record Point(double stretch, Pressure nominal) {

    /**
     * Refuses a stretch that cannot be.
     *
     * @param stretch deformed over reference length, above 0
     * @param nominal force per reference area, negative in compression
     * @throws org.flexwright.InvalidInputException if the stretch is not above 0
     */
    public Point {
      Require.positive("stretch", stretch, "");
    }
  }

  /**
   * Refuses an empty or unsorted curve.
   *
   * @param name a name for tables
   * @param mode the deformation
   * @param points the points, at least one, by rising stretch
   * @param weight how much the curve counts in a fit
   * @throws org.flexwright.InvalidInputException if there is no point, the stretches do not rise or
   *     the weight is not above 0
   */
  public TestCurve {
    points = List.copyOf(points);
    Require.atLeast("points of the test curve " + name, points.size(), 1);
    Require.positive("weight of the test curve " + name, weight, "");
    for (int i = 1; i < points.size(); i++) {
      Require.that(
          points.get(i).stretch() > points.get(i - 1).stretch(),
          "stretch of point " + (i + 1) + " of " + name,
          Text.number(points.get(i).stretch()),
          "above " + Text.number(points.get(i - 1).stretch()) + ", that of the point before",
          "sort the points, keep one branch of a cycle");
    }
  }

  /**
   * A curve that counts as others do.
   *
   * @param name a name for tables
   * @param mode the deformation
   * @param points the points by rising stretch
   * @return the curve
   */
  public static TestCurve of(String name, Deformation mode, List<Point> points) {
    return new TestCurve(name, mode, points, 1.0);
  }

  /**
   * A point.
   *
   * @param stretch deformed over reference length
   * @param nominal force per reference area
   * @return the point
   */
  public static Point at(double stretch, Pressure nominal) {
    return new Point(stretch, nominal);
  }

  /**
   * This curve with another weight.
   *
   * @param of how much the curve counts in a fit, above 0
   * @return the new curve
   */
  public TestCurve weight(double of) {
    return new TestCurve(name, mode, points, of);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return name
        + ", "
        + mode.name().toLowerCase(Locale.ROOT)
        + ", "
        + points.size()
        + " points, stretch "
        + Text.number(points.get(0).stretch())
        + " to "
        + Text.number(points.get(points.size() - 1).stretch());
  }
}
