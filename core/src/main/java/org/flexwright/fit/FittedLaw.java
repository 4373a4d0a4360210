package org.flexwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.law.Deformation;
import org.flexwright.law.LawFamily;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.StretchRange;
import org.flexwright.run.Termination;

/**
 * A law fitted to test curves, with the evidence for it.
 *
 * <p>{@link #law} is the bare law of the family with its own range; {@link #inData} is the same law
 * with a range that ends where the tests ended, which is the one to give to a grade.
 *
 * <p>Formula: AICc = n ln(S/n) + 2 k + 2 k (k + 1)/(n - k - 1), n points, S the objective, k
 * constants plus one for the variance. It compares families on the same curves with the same
 * weighting, the lower the better, and nothing else. There is no R2: it is not meaningful for laws
 * that are not linear in their constants.
 *
 * <p>JShell: {@code LawFit.of(LawFamilies.MOONEY_RIVLIN).fit(curves).caveats()}
 */
public final class FittedLaw {

  private final LawFit fit;
  private final StrainEnergy law;
  private final List<Value> constants;
  private final List<CurveError> errors;
  private final Identifiability identifiability;
  private final double objective;
  private final int points;
  private final Optional<String> instability;
  private final Reach reach;
  private final List<Caveat> caveats;
  private final Termination termination;

  /**
   * A constant as fitted.
   *
   * @param constant the constant of the family
   * @param value its value, in pascals for a stress
   * @param standardError its standard error in the same unit, nothing if the data do not give one
   * @param atBound whether it is held at a bound of the family
   */
  public record Value(
      LawFamily.Constant constant, double value, OptionalDouble standardError, boolean atBound) {

    /** One readable line. */
    @Override
    public String toString() {
      boolean stress = constant.kind() == LawFamily.Constant.Kind.STRESS;
      double unit = stress ? 1e6 : 1.0;
      StringBuilder text = new StringBuilder(constant.name()).append(' ');
      text.append(Text.number(value / unit));
      standardError.ifPresent(e -> text.append(" +- ").append(Text.number(e / unit, 2)));
      text.append(stress ? " MPa" : "").append(atBound ? " (at its bound)" : "");
      return text.toString();
    }
  }

  FittedLaw(
      LawFit fit,
      Search.Outcome outcome,
      List<Value> constants,
      List<CurveError> errors,
      Identifiability identifiability,
      Reach reach,
      List<Caveat> caveats) {
    this.fit = fit;
    law = outcome.law();
    objective = outcome.point().cost();
    instability = outcome.instability();
    termination = outcome.termination();
    this.constants = List.copyOf(constants);
    this.errors = List.copyOf(errors);
    this.identifiability = identifiability;
    this.reach = reach;
    this.caveats = List.copyOf(caveats);
    points = errors.stream().mapToInt(CurveError::points).sum();
  }

  /**
   * The settings of the fit.
   *
   * @return the fit
   */
  public LawFit fit() {
    return fit;
  }

  /**
   * The law with its own range.
   *
   * @return a law of the family
   */
  public StrainEnergy law() {
    return law;
  }

  /**
   * The law with the common part of its own range and that of the data: the principal stretches met
   * in any of the tests. A deformation that was tested less far than another is watched by {@link
   * #beyondData}.
   *
   * @return the same law, ending at its data
   */
  public StrainEnergy inData() {
    return LawInData.of(law, reach.principal());
  }

  /**
   * The stretches of the tests of one deformation, the state of rest included.
   *
   * @param mode the deformation
   * @return the stretches, nothing if it was not tested
   */
  public Optional<StretchRange> tested(Deformation mode) {
    return reach.tested(mode);
  }

  /**
   * What to say when the law is used at a stretch.
   *
   * @param mode the deformation
   * @param stretch the stretch, above 0
   * @return a caveat if this deformation was not tested, or not as far
   * @throws org.flexwright.InvalidInputException if the stretch is not above 0
   */
  public Optional<Caveat> beyondData(Deformation mode, double stretch) {
    Require.positive("stretch", stretch, "");
    String name = mode.name().toLowerCase(Locale.ROOT);
    StretchRange range =
        tested(mode).orElse(new StretchRange(1.0, 1.0, "not tested", Evidence.SOURCE));
    return new ValidityRange(
            "law fitted to tests", name + " stretch", range.low(), range.high(), "", range.source())
        .check(stretch);
  }

  /**
   * The constants in the order of the family.
   *
   * @return the constants with their errors
   */
  public List<Value> constants() {
    return constants;
  }

  /**
   * The value of one constant.
   *
   * @param name its name
   * @return the value, in pascals for a stress
   * @throws org.flexwright.InvalidInputException if the family has no such constant
   */
  public double value(String name) {
    for (Value each : constants) {
      if (each.constant().name().equals(name)) {
        return each.value();
      }
    }
    throw new InvalidInputException(
        "name of a constant",
        name,
        "one of " + constants.stream().map(c -> c.constant().name()).toList(),
        "");
  }

  /**
   * How far the law is off each curve.
   *
   * @return one entry for each curve, in their order
   */
  public List<CurveError> errors() {
    return errors;
  }

  /**
   * What the data say about the constants.
   *
   * @return covariance, rank and what cannot be told apart
   */
  public Identifiability identifiability() {
    return identifiability;
  }

  /**
   * The weighted sum of squares that was made least.
   *
   * @return S, without dimension for relative weighting, in MPa^2 for absolute
   */
  public double objective() {
    return objective;
  }

  /**
   * The corrected information criterion of Akaike.
   *
   * @return AICc, nothing if there are too few points for the correction
   */
  public OptionalDouble aicc() {
    int k = constants.size() + 1;
    int left = points - k - 1;
    // an exact fit would be minus infinity; no measured curve is that good
    double mean = Math.max(objective / points, Double.MIN_NORMAL);
    return left > 0
        ? OptionalDouble.of(points * Math.log(mean) + 2.0 * k + 2.0 * k * (k + 1) / left)
        : OptionalDouble.empty();
  }

  /**
   * Where the law is not stable (Drucker) within the reach of the data. A deformation without a
   * test counts as far as it takes to the greatest I1 of the tests.
   *
   * @return deformation and stretch in words, nothing if it is stable
   */
  public Optional<String> instability() {
    return instability;
  }

  /**
   * What must be said about this law.
   *
   * @return the caveats
   */
  public List<Caveat> caveats() {
    return caveats;
  }

  /**
   * How the search ended.
   *
   * @return completed, or stopped by the caller
   */
  public Termination termination() {
    return termination;
  }

  /** The constants, the errors and the caveats, a line each. */
  @Override
  public String toString() {
    List<String> lines = new ArrayList<>();
    lines.add(
        fit.family().name()
            + ": "
            + String.join(", ", constants.stream().map(Value::toString).toList()));
    errors.forEach(e -> lines.add("  " + e));
    caveats.forEach(c -> lines.add("  " + c));
    return String.join("\n", lines);
  }
}
