package org.flexwright.hardness;

import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.quantity.Pressure;

/**
 * A relation from a hardness reading to Young's modulus at small strain. Open: bring your own by
 * implementing the five methods without a body; the inverse and the sensitivity follow.
 *
 * <p>Contract: {@link #modulus} answers for every reading strictly between 0 and 100 points of its
 * scale, inside or outside {@link #range()}, with a finite modulus above zero that rises with the
 * reading; readings off the scale are refused (call {@link #requireOnScale}). The range is for the
 * caller, who turns it into a caveat. Immutable and thread-safe.
 *
 * <pre>{@code
 * record HouseRule() implements HardnessRelation {
 *   public String name() { return "house rule"; }
 *   public Class<ShoreA> scale() { return ShoreA.class; }
 *   public Source source() { return Source.assumption("twelve test prints"); }
 *   public ValidityRange range() {
 *     return new ValidityRange(name(), "Shore A", 60, 95, "points", source());
 *   }
 *   public Pressure modulus(double points) {
 *     return Pressure.mpa(0.2 * Math.exp(0.05 * HardnessRelation.requireOnScale("Shore A", points)));
 *   }
 * }
 * }</pre>
 */
public interface HardnessRelation {

  /**
   * The name: authors and year, or words of your own.
   *
   * @return a short name
   */
  String name();

  /**
   * The scale that the relation reads.
   *
   * @return {@link ShoreA}, {@link ShoreD} or {@link Irhd}
   */
  Class<? extends HardnessReading> scale();

  /**
   * The range in which the relation was fitted, derived or checked, in points of its scale.
   *
   * @return the range
   */
  ValidityRange range();

  /**
   * Where the relation comes from.
   *
   * @return the source
   */
  Source source();

  /**
   * Young's modulus at small strain.
   *
   * @param points the reading, strictly between 0 and 100 points of the scale
   * @return the modulus
   * @throws InvalidInputException if the reading is off the scale
   */
  Pressure modulus(double points);

  /**
   * The reading that has a given modulus. Unless overridden, solved on the open scale by bracketing
   * to 1e-10 points.
   *
   * @param modulus Young's modulus
   * @return the reading in points, strictly between 0 and 100
   * @throws InvalidInputException if no reading of the scale has this modulus
   */
  default double points(Pressure modulus) {
    return Scale.solve(name(), this::modulus, modulus);
  }

  /**
   * The sensitivity d ln E / dS: by which fraction the modulus rises per point. Unless overridden,
   * by a central difference of fourth order.
   *
   * @param points the reading, strictly between 0 and 100 points
   * @return per point
   * @throws InvalidInputException if the reading is off the scale
   */
  default double logSlope(double points) {
    requireOnScale(name(), points);
    double h = 1e-3 * Math.min(points, 100.0 - points);
    double near = Math.log(modulus(points + h).ratioTo(modulus(points - h)));
    double far = Math.log(modulus(points + 2.0 * h).ratioTo(modulus(points - 2.0 * h)));
    return (8.0 * near - far) / (12.0 * h);
  }

  /**
   * Refuses a reading that is off its scale; for implementations.
   *
   * @param scale the name of the scale or of the relation, for the message
   * @param points the reading
   * @return the reading
   * @throws InvalidInputException unless strictly between 0 and 100
   */
  static double requireOnScale(String scale, double points) {
    return Scale.points(scale, points);
  }

  /**
   * The relation as one readable line, for implementations of {@code toString}.
   *
   * @param relation the relation
   * @return name, range and source
   */
  static String describe(HardnessRelation relation) {
    return relation.name() + ", " + relation.range() + ", " + relation.source();
  }
}
