package org.flexwright.law;

import java.util.List;
import java.util.Optional;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * A law whose constants are still open: what a fit varies, what a file names.
 *
 * <p>Open to users: a family of one's own is fitted, compared and saved like the built-in ones of
 * {@link org.flexwright.law.classical.LawFamilies}. Like {@link StrainEnergy} it works on bare
 * numbers, stresses in pascals. Implementations are immutable and thread-safe.
 *
 * <p>JShell: {@code LawFamilies.MOONEY_RIVLIN.constants()}
 */
public interface LawFamily {

  /**
   * The name in tables and files: letters, digits and hyphens.
   *
   * @return the name
   */
  String name();

  /**
   * The constants in their order.
   *
   * @return the constants
   */
  List<Constant> constants();

  /**
   * The law of these constants.
   *
   * @param values one value for each constant, stresses in pascals
   * @return the law
   * @throws org.flexwright.InvalidInputException if there is no law with these values
   */
  StrainEnergy law(double[] values);

  /**
   * The constants of a law, if it is one of this family.
   *
   * @param law any law
   * @return its values in the order of {@link #constants}, empty if it is of another family
   */
  Optional<double[]> values(StrainEnergy law);

  /**
   * One constant of a family.
   *
   * @param name its name: letters and digits
   * @param kind stress or plain number
   * @param low the least value with which the law is sound, may be minus infinity
   * @param high the greatest, may be plus infinity
   * @param usualLow where a search starts from, in shear moduli of the data for a stress
   * @param usualHigh where a search starts to
   */
  record Constant(
      String name, Kind kind, double low, double high, double usualLow, double usualHigh) {

    /** What a constant measures. */
    public enum Kind {
      /** Held in pascals. */
      STRESS,
      /** Without dimension. */
      NUMBER
    }

    /**
     * Refuses a search that leaves the bounds.
     *
     * @param name its name: letters and digits
     * @param kind stress or plain number
     * @param low the least value with which the law is sound, may be minus infinity
     * @param high the greatest, may be plus infinity
     * @param usualLow where a search starts from, in shear moduli of the data for a stress
     * @param usualHigh where a search starts to
     * @throws org.flexwright.InvalidInputException if the range of the search is empty or outside
     */
    public Constant {
      Require.that(
          low <= usualLow && usualLow < usualHigh && usualHigh <= high,
          "search range of " + name,
          Text.number(usualLow) + " to " + Text.number(usualHigh),
          "a range inside the bounds " + low + " to " + high,
          "");
    }

    /**
     * A stress.
     *
     * @param name its name
     * @param low the least sound value in pascals
     * @param usualLow where a search starts from, in shear moduli of the data
     * @param usualHigh where a search starts to, in shear moduli of the data
     * @return the constant, without an upper bound
     */
    public static Constant stress(String name, double low, double usualLow, double usualHigh) {
      return new Constant(name, Kind.STRESS, low, Double.POSITIVE_INFINITY, usualLow, usualHigh);
    }

    /**
     * A number without dimension.
     *
     * @param name its name
     * @param low the least sound value
     * @param high the greatest sound value
     * @param usualLow where a search starts from
     * @param usualHigh where a search starts to
     * @return the constant
     */
    public static Constant number(
        String name, double low, double high, double usualLow, double usualHigh) {
      return new Constant(name, Kind.NUMBER, low, high, usualLow, usualHigh);
    }
  }
}
