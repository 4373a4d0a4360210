package org.flexwright.lattice.scaling;

import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Estimate;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Pressure;
import org.flexwright.response.LogSlope;

/**
 * A law from relative density to one property of a lattice. Open: bring your own formula.
 *
 * <p>Formula: property = solid's property x f(rho); most laws are f = C rho^n. Symbols: rho
 * relative density, volume of material over volume of space, between 0 and 1; C, n constants
 * (dimensionless).
 *
 * <p>Outside the range of density the law answers with a caveat. The band is the law's own, as
 * ratios of the truth to it.
 *
 * <p>Immutable and thread-safe as long as the formula is.
 *
 * <p>JShell: {@code ScalingLaws.OPEN_FOAM.of(mpa(47), 0.1)}
 *
 * @param name what tables call it
 * @param property what it gives
 * @param formula the formula in words
 * @param ratio f, from a relative density between 0 and 1
 * @param low the least density it was made for
 * @param high the greatest density it was made for
 * @param bandLow true value over that of the law, at most 1
 * @param bandHigh true value over that of the law, at least 1
 * @param source where it comes from
 */
public record ScalingLaw(
    String name,
    LatticeProperty property,
    String formula,
    DoubleUnaryOperator ratio,
    double low,
    double high,
    double bandLow,
    double bandHigh,
    Source source) {

  /**
   * Refuses a range or a band that makes no sense.
   *
   * @param name what tables call it
   * @param property what it gives
   * @param formula the formula in words
   * @param ratio f, from a relative density between 0 and 1
   * @param low the least density it was made for
   * @param high the greatest density it was made for
   * @param bandLow true value over that of the law, at most 1
   * @param bandHigh true value over that of the law, at least 1
   * @param source where it comes from
   * @throws org.flexwright.InvalidInputException if the densities are not in order between 0 and 1
   *     or the band does not hold 1
   */
  public ScalingLaw {
    Require.between("least density of the law", low, 0.0, 1.0, "");
    Require.between("greatest density of the law", high, low, 1.0, "");
    Require.between("low end of the band", bandLow, Double.MIN_NORMAL, 1.0, "");
    Require.between("high end of the band", bandHigh, 1.0, Double.MAX_VALUE, "");
  }

  /**
   * A power law C rho^n without a band of its own.
   *
   * @param name what tables call it
   * @param property what it gives
   * @param constant C, above 0
   * @param exponent n, above 0
   * @param low the least density it was made for
   * @param high the greatest density it was made for
   * @param source where it comes from
   * @return the law
   */
  public static ScalingLaw power(
      String name,
      LatticeProperty property,
      double constant,
      double exponent,
      double low,
      double high,
      Source source) {
    Require.positive("constant of the law", constant, "");
    Require.positive("exponent of the law", exponent, "");
    String words = Text.number(constant) + " rho^" + Text.number(exponent);
    return new ScalingLaw(
        name,
        property,
        words,
        rho -> constant * Math.pow(rho, exponent),
        low,
        high,
        1.0,
        1.0,
        source);
  }

  /**
   * This law with a band.
   *
   * @param least true value over that of the law, at most 1
   * @param most true value over that of the law, at least 1
   * @return the new law
   */
  public ScalingLaw band(double least, double most) {
    return new ScalingLaw(name, property, formula, ratio, low, high, least, most, source);
  }

  /**
   * The property over that of the solid.
   *
   * @param density relative density, above 0, below 1
   * @return f(rho)
   * @throws org.flexwright.InvalidInputException if the density is not between 0 and 1
   */
  public double relative(double density) {
    return Require.finite(name, ratio.applyAsDouble(checked(density)), "");
  }

  /**
   * The local exponent d ln f/d ln rho.
   *
   * @param density relative density, above 0, below 1
   * @return n at this density
   */
  public double exponent(double density) {
    return LogSlope.at(ratio, checked(density));
  }

  /**
   * The property.
   *
   * @param solid the property of the solid: modulus, yield stress, modulus of rupture
   * @param density relative density, above 0, below 1
   * @return the estimate, with a caveat outside the range of density
   */
  public Estimate<Pressure> of(Pressure solid, double density) {
    Require.positive("property of the solid", solid.pa(), "Pa");
    Pressure nominal = solid.times(relative(density));
    List<Caveat> caveats = range().check(density).map(List::of).orElse(List.of());
    return new Estimate<>(
        nominal.times(bandLow),
        nominal,
        nominal.times(bandHigh),
        Estimate.Band.BRACKET,
        List.of(source),
        caveats);
  }

  /**
   * The densities it was made for.
   *
   * @return the range
   */
  public ValidityRange range() {
    return new ValidityRange(name, "relative density", low, high, "", source);
  }

  private static double checked(double density) {
    Require.that(
        density > 0.0 && density < 1.0,
        "relative density",
        density,
        "above 0 and below 1",
        "it is the volume of material over the volume of space");
    return density;
  }

  /** One readable line. */
  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%s, %s: %s, %s", name, property, formula, range());
  }
}
