package org.flexwright.shells.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Exponents;
import org.flexwright.evidence.Factor;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.grade.Grade;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Length;
import org.flexwright.response.Channel;
import org.flexwright.response.LoadCase;
import org.flexwright.response.LoadPath;
import org.flexwright.response.LogSlope;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.response.ScaledValue;
import org.flexwright.run.Progress;
import org.flexwright.run.RunControl;
import org.flexwright.run.Termination;

/**
 * A bent wall as a spring: the response of any closed form with force = E x shape(wall) x travel
 * and peak strain = slope(wall) x travel.
 *
 * <p>Formula: F(u) = E_s(q s(t) u) k(t) u, with E_s the grade's secant modulus at the working
 * strain (see {@link org.flexwright.grade.WorkingStrain}). Symbols: u travel (m), t wall (m), k
 * stiffness over modulus (m), s peak tensile strain over travel (1/m), q working strain over peak
 * strain.
 *
 * <p>Exponents: the load follows the modulus with power 1; the power of the wall is taken from the
 * formula itself at the travel asked for. Of n like walls in series (convolutions) the sizes
 * average, so the load follows the size scatter with 1/sqrt(n) of that power, while one thin wall
 * takes more than its share of the travel: its strain follows with the power of s less (1 - 1/n)
 * times that of the load.
 *
 * <p>Caveats: above 10 % bending strain the linear field is left; beyond the range of the law the
 * secant modulus at its end is used. Source: derived. Open to users as the quick way to write a
 * part of their own from a closed form.
 *
 * <p>JShell: {@code new WallSpring("hinge", mm(0.8), t -> 5e5 * t * t * t, t -> 80 * t, 0.65)}
 *
 * @param name what the messages call the model
 * @param wall the wall
 * @param stiffness k(t), stiffness over modulus (m) from a wall in metres
 * @param strain s(t), peak strain over travel (1/m) from a wall in metres
 * @param working q, the working strain over the peak strain, not negative
 * @param walls n, like walls in series, at least 1
 * @param stiffnessBand true stiffness over that of the model
 * @param strainBand true strain over that of the model
 * @param crossesLayers whether the peak strain pulls printed layers apart
 * @param sources where the formulas come from
 */
public record WallSpring(
    String name,
    Length wall,
    DoubleUnaryOperator stiffness,
    DoubleUnaryOperator strain,
    double working,
    int walls,
    Band stiffnessBand,
    Band strainBand,
    boolean crossesLayers,
    List<Source> sources) {

  /** States of a path after the one at rest. */
  private static final int STATES = 16;

  /** Hencky strain that no wall bears; keeps the laws within numbers. */
  private static final double LARGEST = 6.0;

  /** The bending strain up to which a linear strain field is used without a caveat. */
  public static final double SMALL_STRAIN = 0.1;

  private static final Source LINEAR =
      Source.assumption("linear strain field; its error grows with the square of the strain");

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

  /**
   * Keeps the sources from being changed.
   *
   * @param name what the messages call the model
   * @param wall the wall
   * @param stiffness k(t), stiffness over modulus (m) from a wall in metres
   * @param strain s(t), peak strain over travel (1/m) from a wall in metres
   * @param working q, the working strain over the peak strain, not negative
   * @param walls n, like walls in series, at least 1
   * @param stiffnessBand true stiffness over that of the model
   * @param strainBand true strain over that of the model
   * @param crossesLayers whether the peak strain pulls printed layers apart
   * @param sources where the formulas come from
   */
  public WallSpring {
    Require.positive("wall", wall.m(), "m");
    Require.notNegative("working share", working, "");
    Require.atLeast("walls in series", walls, 1);
    sources = List.copyOf(sources);
  }

  /**
   * A single wall with an exact model, its strain in the layers.
   *
   * @param name what the messages call the model
   * @param wall the wall
   * @param stiffness stiffness over modulus (m) from a wall in metres
   * @param strain peak strain over travel (1/m) from a wall in metres
   * @param working the working strain over the peak strain
   */
  public WallSpring(
      String name,
      Length wall,
      DoubleUnaryOperator stiffness,
      DoubleUnaryOperator strain,
      double working) {
    this(name, wall, stiffness, strain, working, 1, Band.EXACT, Band.EXACT, false, List.of());
  }

  /**
   * This spring of another count of like walls in series; the operators already hold the count.
   *
   * @param count at least 1
   * @return the new spring
   */
  public WallSpring walls(int count) {
    return new WallSpring(
        name,
        wall,
        stiffness,
        strain,
        working,
        count,
        stiffnessBand,
        strainBand,
        crossesLayers,
        sources);
  }

  /**
   * This spring with the bands of its model.
   *
   * @param ofStiffness true stiffness over that of the model
   * @param ofStrain true strain over that of the model
   * @return the new spring
   */
  public WallSpring bands(Band ofStiffness, Band ofStrain) {
    return new WallSpring(
        name,
        wall,
        stiffness,
        strain,
        working,
        walls,
        ofStiffness,
        ofStrain,
        crossesLayers,
        sources);
  }

  /**
   * This spring with its strain in or across the layers.
   *
   * @param crosses whether the peak strain pulls printed layers apart
   * @return the new spring
   */
  public WallSpring crossesLayers(boolean crosses) {
    return new WallSpring(
        name, wall, stiffness, strain, working, walls, stiffnessBand, strainBand, crosses, sources);
  }

  /**
   * This spring with its sources.
   *
   * @param from where the formulas come from
   * @return the new spring
   */
  public WallSpring sources(List<Source> from) {
    return new WallSpring(
        name,
        wall,
        stiffness,
        strain,
        working,
        walls,
        stiffnessBand,
        strainBand,
        crossesLayers,
        from);
  }

  /**
   * The response to a travel.
   *
   * @param grade the material
   * @param load a travel
   * @param run progress and stop
   * @param reservations caveats of the geometry and the travel
   * @return the response
   * @throws InvalidInputException if the load is no travel
   */
  public Response respond(Grade grade, LoadCase load, RunControl run, List<Caveat> reservations) {
    double travel = travel(load);
    LoadPath.Builder states =
        LoadPath.of(STATES + 1, Channel.TRAVEL, Channel.FORCE, Channel.STRAIN);
    states.add(0.0, 0.0, 0.0);
    double slope = strain.applyAsDouble(wall.m());
    Termination end = Termination.completed();
    double u = 0.0;
    for (int i = 1; i <= STATES; i++) {
      u = travel * i / STATES;
      states.add(u, force(grade, wall.m(), u), slope * u);
      run.progress(new Progress(name, (double) i / STATES));
      if (i < STATES && run.stopRequested()) {
        end = Termination.stopped("state " + i + " of " + STATES);
        break;
      }
    }
    List<Caveat> caveats = new ArrayList<>(reservations);
    small().check(slope * u).ifPresent(caveats::add);
    grade.law().range().of("law of the grade").check(Math.exp(slope * u)).ifPresent(caveats::add);
    return new Response(
        states.end(end),
        load(grade, u),
        peak(slope * u, grade, u),
        crossesLayers,
        sources,
        caveats);
  }

  /**
   * The travel of a load case.
   *
   * @param load the load case
   * @return the travel in metres
   * @throws InvalidInputException if the load is no travel
   */
  private static double travel(LoadCase load) {
    if (load instanceof LoadCase.ToTravel to) {
      return to.travel().m();
    }
    throw new InvalidInputException(
        Part.LOAD_CASE,
        load.toString(),
        "a travel",
        "ask with LoadCase.toTravel(...), or take an inflated part");
  }

  private double force(Grade grade, double t, double u) {
    double working = Math.min(this.working * strain.applyAsDouble(t) * u, end(grade));
    double modulus = grade.secantModulus(working).pa();
    return modulus * stiffness.applyAsDouble(t) * u;
  }

  /** The strain whose secant modulus stands for all above it, where the law itself ends. */
  private static double end(Grade grade) {
    return Math.min(LARGEST, Math.log(grade.law().range().high()));
  }

  private double loadPower(Grade grade, double u) {
    return LogSlope.at(t -> force(grade, t, u), wall.m());
  }

  private ScaledValue load(Grade grade, double u) {
    double power = loadPower(grade, u);
    Exponents exponents =
        Exponents.none()
            .with(Factor.MODULUS, 1.0)
            .with(Factor.SIZE_BIAS, power)
            .with(Factor.SIZE_SCATTER, power / Math.sqrt(walls));
    return ScaledValue.of(Channel.FORCE, force(grade, wall.m(), u), exponents)
        .model(stiffnessBand.low(), stiffnessBand.high());
  }

  private ScaledValue peak(double value, Grade grade, double u) {
    double power = LogSlope.at(strain, wall.m());
    double uneven = (1.0 - 1.0 / walls) * loadPower(grade, u);
    Exponents exponents =
        Exponents.none().with(Factor.SIZE_BIAS, power).with(Factor.SIZE_SCATTER, power - uneven);
    return ScaledValue.of(Channel.STRAIN, value, exponents)
        .model(strainBand.low(), strainBand.high());
  }

  private ValidityRange small() {
    return new ValidityRange(name, "peak strain", 0.0, SMALL_STRAIN, "", LINEAR);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "spring of a bent wall, " + name + ", wall " + wall;
  }
}
