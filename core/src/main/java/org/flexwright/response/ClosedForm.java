package org.flexwright.response;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Source;
import org.flexwright.grade.Grade;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Length;
import org.flexwright.run.RunControl;
import org.jspecify.annotations.Nullable;

/**
 * The quick way from a closed form to a {@link Response}: give load and peak strain as functions of
 * one size (a wall, a strut) and of the travel; path, exponents, bands and caveats follow.
 *
 * <p>Formula: load(u) = E_s(q e(t, u)) g(t, u), with E_s the secant modulus of the grade at the
 * working strain (see {@link org.flexwright.grade.WorkingStrain}). Symbols: t size (m), u travel
 * (m) or angle (rad), g load over modulus, e peak tensile strain, q working strain over peak
 * strain. A load that follows the grade's law itself is given as it is, see {@link #loadOfLaw}.
 *
 * <p>Exponents: the load follows the modulus with power 1; the power of the size is taken from the
 * formula itself at the state asked for. Of n like features in series (convolutions) the sizes
 * average, so the load follows the size scatter with 1/sqrt(n) of that power, while one thin
 * feature takes more than its share of the travel: its strain follows with its own power less (1 -
 * 1/n) times that of the load.
 *
 * <p>Caveats: those of the checks handed over; the peak strain above {@link #linearTo}; beyond the
 * range of the law, where the secant modulus at its end is used. Where a formula gives no positive
 * finite load the path ends, keeps what it has and says why.
 *
 * <p>Immutable and thread-safe as long as the formulas are. Source: derived.
 *
 * <p>JShell: {@code ClosedForm.of("hinge", mm(0.8)).spring(t -> 5e5 * t * t * t).strainSlope(t ->
 * 80 * t).working(0.65)}
 */
public final class ClosedForm {

  /** The largest bending strain to which a linear strain field is trusted. */
  public static final double SMALL_STRAIN = 0.1;

  static final Source LINEAR = Source.derived("linear strain field of a closed form");

  /** A formula of a size and of the travel (or angle), all SI. */
  @FunctionalInterface
  public interface Formula {

    /**
     * The value.
     *
     * @param size the size in metres
     * @param travel the travel in metres, or the angle in radians
     * @return the value
     */
    double at(double size, double travel);
  }

  /**
   * How the truth lies to a model, as ratios.
   *
   * @param low the least ratio, above 0, at most 1
   * @param high the greatest ratio, at least 1
   */
  public record Band(double low, double high) {

    /** An exact model. */
    public static final Band EXACT = new Band(1.0, 1.0);

    /**
     * Refuses a band that does not hold 1.
     *
     * @param low the least ratio, above 0, at most 1
     * @param high the greatest ratio, at least 1
     */
    public Band {
      Require.between("low end of the model band", low, Double.MIN_NORMAL, 1.0, "");
      Require.between("high end of the model band", high, 1.0, Double.MAX_VALUE, "");
    }
  }

  final String name;
  final Length size;
  Channel control = Channel.TRAVEL;
  Channel channel = Channel.FORCE;
  Formula load = (t, u) -> Double.NaN;
  boolean ofLaw;
  Formula strain = (t, u) -> Double.NaN;
  @Nullable DoubleUnaryOperator stiffness; // of a linear force, asked once for each response
  @Nullable DoubleUnaryOperator slope; // of a linear strain
  @Nullable Formula volume;
  double working;
  @Nullable Formula workingStrain;
  double linearTo = SMALL_STRAIN;
  int alike = 1;
  Band loadBand = Band.EXACT;
  Band strainBand = Band.EXACT;
  boolean crossesLayers;
  @Nullable DoubleUnaryOperator limit;
  @Nullable DoubleUnaryOperator most;
  String why = "";
  List<Source> sources = List.of();

  private ClosedForm(String name, Length size) {
    this.name = name;
    this.size = size;
  }

  private ClosedForm(ClosedForm of) {
    this(of.name, of.size);
    control = of.control;
    channel = of.channel;
    load = of.load;
    ofLaw = of.ofLaw;
    strain = of.strain;
    stiffness = of.stiffness;
    slope = of.slope;
    volume = of.volume;
    working = of.working;
    workingStrain = of.workingStrain;
    linearTo = of.linearTo;
    alike = of.alike;
    loadBand = of.loadBand;
    strainBand = of.strainBand;
    crossesLayers = of.crossesLayers;
    limit = of.limit;
    most = of.most;
    why = of.why;
    sources = of.sources;
  }

  /**
   * Starts a closed form that is asked for a travel and answers with a force.
   *
   * @param name what the messages call the model
   * @param size the size whose errors the load follows, above 0
   * @return the form, without formulas yet
   */
  public static ClosedForm of(String name, Length size) {
    Require.positive("size of " + name, size.m(), "m");
    return new ClosedForm(name, size);
  }

  /**
   * Asked for an angle instead of a travel.
   *
   * @return the new form
   */
  public ClosedForm turned() {
    ClosedForm c = new ClosedForm(this);
    c.control = Channel.ANGLE;
    return c;
  }

  /**
   * A linear force: stiffness over modulus.
   *
   * @param stiffness k(t), force over travel and modulus (m), from a size in metres
   * @return the new form
   */
  public ClosedForm spring(DoubleUnaryOperator stiffness) {
    ClosedForm c = load(Channel.FORCE, (t, u) -> stiffness.applyAsDouble(t) * u);
    c.stiffness = stiffness;
    return c;
  }

  /**
   * The load over the modulus.
   *
   * @param of force, pressure or moment
   * @param formula load over modulus, from a size and a travel
   * @return the new form
   */
  public ClosedForm load(Channel of, Formula formula) {
    ClosedForm c = new ClosedForm(this);
    c.channel = of;
    c.load = formula;
    c.stiffness = null;
    c.ofLaw = false;
    return c;
  }

  /**
   * The load from the grade's law itself; the law, not a secant modulus, carries the strain.
   *
   * @param of force, pressure or moment
   * @param formula the load in SI, from a size and a travel
   * @return the new form
   */
  public ClosedForm loadOfLaw(Channel of, Formula formula) {
    ClosedForm c = load(of, formula);
    c.ofLaw = true;
    c.linearTo = Double.POSITIVE_INFINITY;
    return c;
  }

  /**
   * A linear peak strain.
   *
   * @param slope s(t), peak tensile strain over travel (1/m), from a size in metres
   * @return the new form
   */
  public ClosedForm strainSlope(DoubleUnaryOperator slope) {
    ClosedForm c = strain((t, u) -> slope.applyAsDouble(t) * u);
    c.slope = slope;
    return c;
  }

  /**
   * The peak tensile strain.
   *
   * @param formula the strain, from a size and a travel
   * @return the new form
   */
  public ClosedForm strain(Formula formula) {
    ClosedForm c = new ClosedForm(this);
    c.strain = formula;
    c.slope = null;
    return c;
  }

  /**
   * The volume taken in, as one more channel of the path; pressure times its growth is the work.
   *
   * @param formula the volume in m3, from a size and a travel
   * @return the new form
   */
  public ClosedForm volume(Formula formula) {
    ClosedForm c = new ClosedForm(this);
    c.volume = formula;
    return c;
  }

  /**
   * The working strain over the peak strain, at which the secant modulus is taken.
   *
   * @param share q, not negative
   * @return the new form
   */
  public ClosedForm working(double share) {
    ClosedForm c = new ClosedForm(this);
    c.working = Require.notNegative("working share", share, "");
    return c;
  }

  /**
   * The working strain where it is no fixed share of the peak strain.
   *
   * @param formula the strain at which the secant modulus is taken, from a size and a travel
   * @return the new form
   */
  public ClosedForm workingStrain(Formula formula) {
    ClosedForm c = new ClosedForm(this);
    c.workingStrain = formula;
    return c;
  }

  /**
   * The peak strain above which a caveat is due.
   *
   * @param strain the strain; 0.1 unless told otherwise
   * @return the new form
   */
  public ClosedForm linearTo(double strain) {
    ClosedForm c = new ClosedForm(this);
    c.linearTo = strain;
    return c;
  }

  /**
   * Like features in series; the formulas already hold the count.
   *
   * @param count at least 1
   * @return the new form
   */
  public ClosedForm alike(int count) {
    ClosedForm c = new ClosedForm(this);
    c.alike = Require.atLeast("like features in series", count, 1);
    return c;
  }

  /**
   * The bands of the model.
   *
   * @param ofLoad true load over that of the model
   * @param ofStrain true strain over that of the model
   * @return the new form
   */
  public ClosedForm bands(Band ofLoad, Band ofStrain) {
    ClosedForm c = new ClosedForm(this);
    c.loadBand = ofLoad;
    c.strainBand = ofStrain;
    return c;
  }

  /**
   * Strain in or across the layers.
   *
   * @param crosses whether the peak strain pulls printed layers apart
   * @return the new form
   */
  public ClosedForm crossesLayers(boolean crosses) {
    ClosedForm c = new ClosedForm(this);
    c.crossesLayers = crosses;
    return c;
  }

  /**
   * The travel at which the part gives way, for {@link LoadCase.ToLimit}.
   *
   * @param travel the travel (or angle) at the limit, from a size in metres; not a number if a part
   *     of this size never gives way, which is then refused
   * @return the new form
   */
  public ClosedForm limit(DoubleUnaryOperator travel) {
    ClosedForm c = new ClosedForm(this);
    c.limit = travel;
    return c;
  }

  /**
   * Where the path ends for good.
   *
   * @param travel the largest travel (or angle), from a size in metres
   * @param reason one sentence
   * @return the new form
   */
  public ClosedForm until(DoubleUnaryOperator travel, String reason) {
    ClosedForm c = new ClosedForm(this);
    c.most = travel;
    c.why = reason;
    return c;
  }

  /**
   * Where the formulas come from.
   *
   * @param from the sources
   * @return the new form
   */
  public ClosedForm sources(Source... from) {
    ClosedForm c = new ClosedForm(this);
    c.sources = List.of(from);
    return c;
  }

  /**
   * The travel (or angle) at the end of a load case, for checks that need it.
   *
   * @param load the load case
   * @return the travel in metres or the angle in radians, above 0
   * @throws InvalidInputException naming {@link Part#LOAD_CASE} if this form cannot be asked that,
   *     or the limit load if there is none
   */
  public double end(LoadCase load) {
    if (load instanceof LoadCase.ToTravel to && control == Channel.TRAVEL) {
      return to.travel().m();
    }
    if (load instanceof LoadCase.ToAngle to && control == Channel.ANGLE) {
      return to.angle().rad();
    }
    if (load instanceof LoadCase.ToLimit && limit != null) {
      double u = limit.applyAsDouble(size.m());
      if (u > 0.0 && Double.isFinite(u)) {
        return u;
      }
      throw new InvalidInputException(
          "limit load", "none", "a part that gives way", name + " never does, as it is");
    }
    throw new InvalidInputException(
        Part.LOAD_CASE,
        load.toString(),
        limit == null ? asked() : asked() + " or the limit",
        "ask with LoadCase."
            + (control == Channel.TRAVEL ? "toTravel(...)" : "toAngle(...)")
            + (limit == null ? "" : " or LoadCase.toLimit()"));
  }

  private String asked() {
    return control == Channel.TRAVEL ? "a travel" : "an angle";
  }

  /**
   * The response.
   *
   * @param grade the material
   * @param load what is asked
   * @param run progress and stop
   * @param checks the checks of the case; ranges of this form are added to them
   * @return the response
   * @throws InvalidInputException if this form cannot be asked that
   */
  public Response respond(Grade grade, LoadCase load, RunControl run, Checks checks) {
    return new ClosedFormRun(this, grade, load instanceof LoadCase.ToLimit)
        .respond(end(load), run, checks);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "closed form of " + name + ", " + channel + " by " + control + ", size " + size;
  }
}
