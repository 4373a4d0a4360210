package org.flexwright.grade;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.flexwright.condition.Condition;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Estimate;
import org.flexwright.evidence.Factor;
import org.flexwright.evidence.Factors;
import org.flexwright.evidence.Source;
import org.flexwright.fit.FittedLaw;
import org.flexwright.fit.TestCurve;
import org.flexwright.hardness.HardnessReading;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.law.Deformation;
import org.flexwright.law.StrainEnergy;
import org.flexwright.quantity.Density;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;

/**
 * An elastomer grade as printed: its law, density, strain limits, process and uncertainty factors.
 *
 * <p>Closed forms use the secant modulus of the uniaxial curve, E(e) = s(e)/e with e the Hencky
 * strain, at the energy-weighted strain of the state asked for; solvers use the law itself.
 *
 * <p>Immutable and thread-safe.
 *
 * <p>JShell: {@code Grade.polyurethane(ShoreA.of(95).plusMinus(3)).printedBy(PrintProcess.beads(
 * mm(0.45)))}
 */
public final class Grade {

  private final String name;
  private final StrainEnergy law;
  private final Density density;
  private final double poisson;
  private final double strainAtBreak;
  private final Factors factors;
  private final PrintProcess process;
  private final boolean generic;
  private final List<Source> sources;
  private final List<Caveat> caveats;
  private final Set<Deformation> tested;

  Grade(GradeBuilder b) {
    name = b.name;
    law = b.law;
    density = b.density;
    poisson = b.poisson;
    strainAtBreak = b.strainAtBreak;
    factors = b.factors;
    process = b.process;
    generic = b.generic;
    sources = List.copyOf(b.sources);
    caveats = List.copyOf(b.caveats);
    Set<Deformation> inOrder = EnumSet.noneOf(Deformation.class);
    inOrder.addAll(b.tested);
    tested = Collections.unmodifiableSet(inOrder); // unlike Set.copyOf always in the same order
  }

  private Grade with(Consumer<GradeBuilder> change) {
    GradeBuilder b = new GradeBuilder(this);
    change.accept(b);
    return new Grade(b);
  }

  /**
   * A generic thermoplastic polyurethane known by its hardness alone (60 to 95 Shore A and beyond,
   * with caveats outside 30 to 55 Shore D). Its modulus factor holds the scatter of the fits and
   * the tolerance of the reading.
   *
   * @param reading Shore A or D, with the tolerance of the reading
   * @return the grade, marked generic
   */
  public static Grade polyurethane(HardnessReading reading) {
    return new Grade(GenericPolyurethane.of(reading));
  }

  /**
   * A vulcanised rubber known by its hardness alone: the neo-Hookean law with the modulus of the
   * relations that apply, its band in the modulus factor.
   *
   * @param reading the hardness
   * @return the grade, marked generic
   */
  public static Grade rubber(HardnessReading reading) {
    return new Grade(GenericRubber.of(reading));
  }

  /**
   * A soft platinum silicone known by its hardness alone (10 to 40 Shore A, with a caveat outside):
   * neo-Hookean to 50 % strain, 0.44 of Gent's modulus.
   *
   * @param reading the hardness
   * @return the grade, marked generic
   */
  public static Grade silicone(HardnessReading reading) {
    return new Grade(GenericSilicone.of(reading));
  }

  /**
   * A grade from the figures of its datasheet, exact at each of them.
   *
   * @param sheet the figures, at least one modulus or one stress
   * @return the grade, with a caveat for every figure that had to be filled
   * @throws org.flexwright.InvalidInputException if the figures do not suffice
   */
  public static Grade ofDatasheet(Datasheet sheet) {
    return new Grade(DatasheetCurve.grade(sheet));
  }

  /**
   * A grade from measured curves: the law of the uniaxial ones, made to rise by isotonic
   * regression, good to the last point. Curves of other modes, and compression beside tension, test
   * that one curve serves every state: the largest disagreement is a caveat and, where it is more
   * than x/ 1.1, widens the band. The strain at break is the last point of the tension.
   *
   * @param name a name for tables
   * @param curves first loadings, one uniaxial one at least; repeats are pooled by weight
   * @return the grade, its modulus within x/ 1.1 joined with the scatter and the disagreement
   * @throws org.flexwright.InvalidInputException if no branch has two uniaxial points or the stress
   *     does not rise
   */
  public static Grade ofCurve(String name, TestCurve... curves) {
    return new Grade(MeasuredCurve.grade(name, List.of(curves)));
  }

  /**
   * A grade from a law of the user's own; for a law that was fitted see {@link #ofFit}.
   *
   * @param name a name for tables
   * @param law the law, see {@link org.flexwright.law.LawCheck}
   * @return the grade, with an exactly known law; say how well it is known with {@link #known}
   */
  public static Grade ofLaw(String name, StrainEnergy law) {
    return new Grade(new GradeBuilder(name, law));
  }

  /**
   * A grade from a fitted law: it ends at its data, knows in which deformations it was tested and
   * carries the caveats of the fit.
   *
   * @param name a name for tables
   * @param fitted the law with its evidence
   * @return the grade, its modulus within x/ 1.1 joined with the rms of the worst curve
   */
  public static Grade ofFit(String name, FittedLaw fitted) {
    return new Grade(GradeBuilder.ofFit(name, fitted));
  }

  /**
   * This grade made by a process.
   *
   * @param by the process
   * @return the new grade
   */
  public Grade printedBy(PrintProcess by) {
    return with(b -> b.process = by);
  }

  /**
   * This grade with one factor known to a band: 1.1 means from 1/1.1 to 1.1 of the nominal, about
   * 95 % of cases. The band given for {@link Factor#MODULUS} is that of the material before the
   * process adds its own.
   *
   * @param factor which factor; size errors belong to the process
   * @param band the end of the band, at least 1
   * @return the new grade
   * @throws org.flexwright.InvalidInputException if the factor is a size error or the band below 1
   */
  public Grade known(Factor factor, double band) {
    Require.that(
        factor != Factor.SIZE_BIAS && factor != Factor.SIZE_SCATTER,
        "factor",
        factor,
        "modulus, strength or life",
        "size errors belong to the printing process");
    return with(b -> b.factors = factors.withBand(factor, band));
  }

  /**
   * This grade with its modulus measured on prints of the same process: the band is that of the
   * measurement and the process adds none.
   *
   * @param factor the measured stiffness over that of this grade, above 0
   * @param band the end of the band of the measurement, at least 1
   * @return the new grade
   */
  public Grade measuredModulus(double factor, double band) {
    Require.positive("measured modulus ratio", factor, "");
    return with(
        b -> {
          b.law = law.scaled(factor);
          b.factors = factors.withBand(Factor.MODULUS, band);
          b.process = new KnownProcess(process, process.bias(), process.scatter(), 1.0);
        });
  }

  /**
   * This grade with the size errors of its process measured on prints.
   *
   * @param bias half the band of the mean size
   * @param scatter half the band from place to place
   * @return the new grade
   */
  public Grade measuredSizes(Length bias, Length scatter) {
    Require.notNegative("size bias", bias.m(), "m");
    Require.notNegative("size scatter", scatter.m(), "m");
    return with(b -> b.process = new KnownProcess(process, bias, scatter, process.stiffnessBand()));
  }

  /**
   * This grade under a condition of service, for instance held for a day or warm: its law is the
   * law under the condition, its modulus band wider by that of the condition.
   *
   * @param condition the condition; a second one acts on what the first left
   * @return the new grade
   */
  public Grade under(Condition condition) {
    return with(b -> b.under(condition));
  }

  /**
   * {@return this grade with another density}
   *
   * @param of the density
   */
  public Grade density(Density of) {
    Require.positive("density", of.kgPerM3(), "kg/m3");
    return with(b -> b.density = of);
  }

  /**
   * This grade with another Poisson ratio for the linear closed forms.
   *
   * @param ratio above 0, at most 0.5
   * @return the new grade
   * @throws org.flexwright.InvalidInputException if the ratio is outside 0 to 0.5
   */
  public Grade poisson(double ratio) {
    Require.that(
        ratio > 0.0 && ratio <= 0.5,
        "Poisson ratio",
        Text.number(ratio),
        "above 0 and at most 0.5",
        "elastomers have 0.48 to 0.5");
    return with(b -> b.poisson = ratio);
  }

  /**
   * This grade with another strain at break in the plane of the layers.
   *
   * @param strain elongation over length: 5 means 500 %
   * @return the new grade
   */
  public Grade strainAtBreak(double strain) {
    Require.positive("strain at break", strain, "");
    return with(b -> b.strainAtBreak = strain);
  }

  /**
   * This grade with the deformations in which its law was measured or confirmed, which is what
   * {@link #caveatsIn} goes by.
   *
   * @param in the deformations; empty if nobody knows
   * @return the new grade
   */
  public Grade tested(Set<Deformation> in) {
    return with(b -> b.tested = in);
  }

  /** {@return the deformations in which the law was measured or confirmed, empty if not known} */
  public Set<Deformation> tested() {
    return tested;
  }

  /**
   * What must be said of the law in a state of stretch: beyond its range in any principal stretch,
   * or too stiff in a deformation in which nobody tested it.
   *
   * @param mode the deformation
   * @param stretch its stretch, above 0
   * @return the caveats, those of the grade itself not among them
   * @throws org.flexwright.InvalidInputException if the law is known to rest on other deformations
   *     alone and cannot be meant for this one
   */
  public List<Caveat> caveatsIn(Deformation mode, double stretch) {
    return ModeCheck.caveats(this, mode, stretch);
  }

  /**
   * The law as a test curve, for a comparison with the classical laws: {@code
   * FitComparison.of(List.of(grade.curve(Deformation.UNIAXIAL)))}.
   *
   * @param mode the deformation
   * @return 24 points evenly spaced in ln stretch, to the end of the law's range or to break
   */
  public TestCurve curve(Deformation mode) {
    return ModeCheck.sampled(this, mode);
  }

  Factors materialFactors() {
    return factors;
  }

  /** {@return the name for tables} */
  public String name() {
    return name;
  }

  /** {@return the law} */
  public StrainEnergy law() {
    return law;
  }

  /** {@return the process the parts are made by} */
  public PrintProcess process() {
    return process;
  }

  /** {@return the density} */
  public Density density() {
    return density;
  }

  /** {@return the Poisson ratio for linear closed forms} */
  public double poisson() {
    return poisson;
  }

  /** {@return whether the grade is a generic default rather than a measured material} */
  public boolean generic() {
    return generic;
  }

  /**
   * {@return the secant modulus of the uniaxial curve, s(e)/e}
   *
   * @param strain Hencky strain, not negative; zero gives the modulus at rest
   */
  public Pressure secantModulus(double strain) {
    return GradeFigures.secantModulus(law, strain);
  }

  /** {@return Young's modulus at rest} */
  public Pressure modulusAtRest() {
    return Pressure.pa(law.youngModulus());
  }

  /**
   * {@return the secant modulus with the band of the modulus factor}
   *
   * @param strain Hencky strain, not negative
   */
  public Estimate<Pressure> modulusAt(double strain) {
    return GradeFigures.modulusAt(this, strain);
  }

  /**
   * {@return the strain at break, elongation over length: 5 means 500 %}
   *
   * @param acrossLayers whether the strain pulls layers apart
   */
  public double strainAtBreak(boolean acrossLayers) {
    return acrossLayers ? strainAtBreak * process.acrossLayers() : strainAtBreak;
  }

  /**
   * The uncertainty factors for a feature of a given size: the material's own, the printed
   * stiffness of the process in the modulus, and its size errors over the size.
   *
   * @param size the drawn size of the thinnest feature
   * @return the factors
   */
  public Factors factors(Length size) {
    Require.positive("feature size", size.m(), "m");
    return GradeFigures.factors(this, size);
  }

  /** {@return the sources of the figures} */
  public List<Source> sources() {
    return sources;
  }

  /** {@return the reservations that every answer with this grade carries} */
  public List<Caveat> caveats() {
    return caveats;
  }

  /** One readable line. */
  @Override
  public String toString() {
    return GradeFigures.line(this);
  }
}
