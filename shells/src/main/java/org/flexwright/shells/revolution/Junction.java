package org.flexwright.shells.revolution;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.flexwright.decide.Survival;
import org.flexwright.decide.Verdict;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Factor;
import org.flexwright.evidence.Factors;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Grade;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Length;

/**
 * A place where a thin wall meets a thick one or a solid, and the strain at the fillet there. The
 * shell knows the stiffness of both walls but not the fillet: the local strain is its smooth one
 * times a notch factor.
 *
 * <p>Formula: strain = (1 + Kt m + Kb b)/sqrt(v) - 1, where 1 + m +- b = u sqrt(v) on the two
 * faces. Symbols: u and v stretches along the meridian and around the axis beside the step, so that
 * m and b are the stretching and the bending part of the strain less what the hoop strain alone
 * makes without stress; Kt, Kb notch factors of stepped bars in tension through the middle of the
 * thin wall and in bending. The part that relieves is not raised. A step on one face also bends;
 * that bending is in the shell, whose middle jumps there, and so in b.
 *
 * <p>Range: fillet 0.1 to 2 thin walls, thin wall up to 0.9 of the thick one, small strain, fillets
 * small against the radius of the shell, a thick part longer than it is thick. Steps and their
 * solids are of one material. The drawn step is smooth over the length b of its blend; a face drawn
 * so has the radius b^2/(6 h) at the foot of a step h. Band: {@link #LOW} to {@link #HIGH}.
 *
 * <p>Caveats: a sharp corner has no strain to give; a larger fillet counts as two walls; at large
 * strain the fillet opens: in a neo-Hookean bar (thin over thick 0.5, fillet 0.2) the linear factor
 * overstates by 3 % at a nominal strain of 0.1, 8 % at 0.3, 10 % at 0.45, and more where the law
 * stiffens; obstacles on the face. Corners of the drawn line itself are not looked at. Against
 * finite elements of revolution the strain was 4 % off at steps of sleeves, 7 % high at a solid;
 * finer meshes read the bending nearer to a solid, up to 6 % higher still.
 *
 * <p>Source: plane finite elements of ours; Pilkey and Pilkey 2008, charts 3.1 and 3.8, agree
 * within 6 % up to a fillet of 0.2 thin walls.
 *
 * <p>JShell: {@code path.last().junctions(mm(0.5)).get(0).survives(Survival.once(), grade,
 * BuildDirection.AXIS_UP)}
 *
 * @param at the wall beside the step, where the nominal strain is read
 * @param rest angle of the meridian there at rest, from the outward radial direction
 * @param thin the thin wall
 * @param thick the thick wall; empty at a solid
 * @param step the faces that carry a fillet
 * @param inner whether the fillet strained most is on the inner face
 * @param stretching part of the nominal strain that is even through the wall
 * @param bending part that bending adds at that face
 * @param notch the factors and the local strain; empty at a sharp corner
 * @param caveats what must be said
 */
public record Junction(
    Station at,
    Angle rest,
    Length thin,
    Optional<Length> thick,
    Step step,
    boolean inner,
    double stretching,
    double bending,
    Optional<Notch> notch,
    List<Caveat> caveats) {

  /** True over computed strain, lower end. */
  public static final double LOW = 0.8;

  /** True over computed strain, upper end. */
  public static final double HIGH = 1.1;

  private static final double STEEP = Math.sin(Math.toRadians(30.0)); // to the layers

  /** The faces of the wall that step. */
  public enum Step {
    /** The face to the left of the meridian. */
    INNER,
    /** The face to the right. */
    OUTER,
    /** Both. */
    BOTH
  }

  /**
   * What a fillet makes of the nominal strain.
   *
   * @param tension factor on the stretching part
   * @param bending factor on the bending part
   * @param strain local strain along the meridian at the fillet, negative in compression
   */
  public record Notch(double tension, double bending, double strain) {}

  /**
   * Keeps the list from being changed.
   *
   * @param at the wall beside the step
   * @param rest angle of the meridian there at rest
   * @param thin the thin wall
   * @param thick the thick wall; empty at a solid
   * @param step the faces that carry a fillet
   * @param inner whether the fillet strained most is on the inner face
   * @param stretching part of the nominal strain that is even through the wall
   * @param bending part that bending adds at that face
   * @param notch the factors and the local strain
   * @param caveats what must be said
   */
  public Junction {
    caveats = List.copyOf(caveats);
  }

  /**
   * The strain along the meridian that the shell finds at this face beside the step.
   *
   * @return the strain, without the fillet
   */
  public double nominal() {
    return (inner ? at.inner() : at.outer()).meridianStretch() - 1.0;
  }

  /**
   * Whether the strain pulls printed layers apart: whether the meridian is steeper to them than 30
   * degrees, anywhere around.
   *
   * @param build how the part stands in the printer
   * @return true if it does
   */
  public boolean crossesLayers(BuildDirection build) {
    double across = build == BuildDirection.AXIS_UP ? Math.sin(rest.rad()) : Math.cos(rest.rad());
    return Math.abs(across) > STEEP;
  }

  /**
   * Whether a grade bears the local strain of this state, as it was computed at the grade's nominal
   * law. A sharp corner is not decidable, unless the nominal strain alone is too much.
   *
   * @param demand how often, and with what safety
   * @param grade the grade
   * @param build how the part stands in the printer
   * @return meets or fails over the whole band of model, strength and life; else not decidable
   */
  public Verdict survives(Survival demand, Grade grade, BuildDirection build) {
    double strain = notch.map(Notch::strain).orElse(nominal());
    if (strain <= 0.0) {
      return notch.isPresent() || stretching + bending <= 0.0
          ? Verdict.MEETS
          : Verdict.NOT_DECIDABLE;
    }
    Factors factors = grade.factors(thin);
    double allowed = grade.strainAtBreak(crossesLayers(build)) / demand.safety();
    Verdict once = verdict(Math.log(allowed / strain), factors.sigma(Factor.STRENGTH), 1.0, false);
    Verdict all = once;
    if (demand.cycles() > 1.0) {
      double room = Math.log(demand.law().medianCycles(strain) / demand.cycles());
      double sigma = Math.hypot(demand.law().logSigma(), factors.sigma(Factor.LIFE));
      double slope = -demand.law().logSlope(strain);
      Verdict life = verdict(room, sigma, slope, demand.law().placeholder());
      all = life.compareTo(once) > 0 ? life : once; // the worse one
    }
    return all == Verdict.MEETS && notch.isEmpty() ? Verdict.NOT_DECIDABLE : all;
  }

  private static Verdict verdict(double room, double sigma, double slope, boolean placeholder) {
    double scatter = Factors.COVERAGE * sigma;
    if (room >= Math.hypot(scatter, slope * Math.log(HIGH))) {
      return Verdict.MEETS;
    }
    boolean fails = room < -Math.hypot(scatter, slope * Math.log(LOW));
    return fails && !placeholder ? Verdict.FAILS : Verdict.NOT_DECIDABLE;
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "piece "
        + at.piece()
        + " at "
        + at.radius()
        + ", "
        + at.height()
        + ": "
        + thin
        + thick.map(t -> " to " + t).orElse(" to a solid")
        + ", step "
        + step.toString().toLowerCase(Locale.ROOT)
        + ", nominal strain "
        + Text.percent(nominal())
        + notch.map(n -> ", at the fillet " + Text.percent(n.strain())).orElse(", sharp corner");
  }
}
