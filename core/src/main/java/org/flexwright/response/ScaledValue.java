package org.flexwright.response;

import org.flexwright.evidence.Exponents;
import org.flexwright.evidence.Factor;
import org.flexwright.evidence.Factors;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * A result at the end of a path together with how it moves: value = offset + (nominal - offset) x
 * product of factor_i^exponent_i x model error.
 *
 * <p>At a fixed shape of the law the modulus factor scales every load exactly; the offset is the
 * part that does not follow the factors, such as the contact pressure that friction asks for.
 *
 * @param channel what it is
 * @param nominal the value at factors of 1, in SI, above the offset
 * @param offset the part that follows no factor, in SI, not negative
 * @param exponents the powers
 * @param modelLow the low end of the model's own band as a ratio, above 0, at most 1
 * @param modelHigh the high end of the model's own band as a ratio, at least 1
 */
public record ScaledValue(
    Channel channel,
    double nominal,
    double offset,
    Exponents exponents,
    double modelLow,
    double modelHigh) {

  /**
   * Refuses values that make no sense.
   *
   * @param channel what it is
   * @param nominal the value at factors of 1, in SI, above the offset
   * @param offset the part that follows no factor, in SI, not negative
   * @param exponents the powers
   * @param modelLow the low end of the model's own band as a ratio, above 0, at most 1
   * @param modelHigh the high end of the model's own band as a ratio, at least 1
   * @throws org.flexwright.InvalidInputException if the nominal is not above the offset or the
   *     model band does not hold 1
   */
  public ScaledValue {
    Require.finite(channel.toString(), nominal, channel.unit());
    Require.notNegative("offset of the load", offset, channel.unit());
    Require.that(
        nominal > offset, channel.toString(), nominal, () -> "above its offset " + offset, "");
    Require.positive("low end of the model band", modelLow, "");
    Require.positive("high end of the model band", modelHigh, "");
    Require.that(modelLow <= 1.0, "low end of the model band", modelLow, "at most 1", "");
    Require.that(modelHigh >= 1.0, "high end of the model band", modelHigh, "at least 1", "");
  }

  /**
   * A value without offset.
   *
   * @param channel what it is
   * @param nominal the value in SI, above 0
   * @param exponents the powers
   * @return the scaled value, with an exact model
   */
  public static ScaledValue of(Channel channel, double nominal, Exponents exponents) {
    return new ScaledValue(channel, nominal, 0.0, exponents, 1.0, 1.0);
  }

  /**
   * This value with the model's own band.
   *
   * @param low the low end as a ratio, at most 1
   * @param high the high end as a ratio, at least 1
   * @return the new value
   */
  public ScaledValue model(double low, double high) {
    return new ScaledValue(channel, nominal, offset, exponents, low, high);
  }

  /**
   * The value at other factors.
   *
   * @param factor which factor
   * @param value its value, above 0
   * @return the result in SI
   */
  public double at(Factor factor, double value) {
    return offset + (nominal - offset) * Math.pow(value, exponents.of(factor));
  }

  /**
   * The low end of the whole band: factors and model error taken together as independent.
   *
   * @param factors the uncertainty
   * @return the value in SI
   */
  public double low(Factors factors) {
    return offset + (nominal - offset) * Math.exp(-half(factors, -Math.log(modelLow)));
  }

  /**
   * The high end of the whole band: factors and model error taken together as independent.
   *
   * @param factors the uncertainty
   * @return the value in SI
   */
  public double high(Factors factors) {
    return offset + (nominal - offset) * Math.exp(half(factors, Math.log(modelHigh)));
  }

  private double half(Factors factors, double model) {
    return Math.hypot(Factors.COVERAGE * factors.sigmaOf(exponents), model);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return channel
        + " "
        + channel.show(nominal)
        + ", "
        + exponents
        + ", model "
        + Text.number(modelLow, 3)
        + " to "
        + Text.number(modelHigh, 3);
  }
}
