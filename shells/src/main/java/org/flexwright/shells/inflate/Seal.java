package org.flexwright.shells.inflate;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Grade;
import org.flexwright.internal.Require;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.run.RunControl;
import org.flexwright.shells.revolution.End;
import org.flexwright.shells.revolution.Meridian;
import org.flexwright.shells.revolution.Obstacle;
import org.flexwright.shells.revolution.RevolvedShell;
import org.flexwright.shells.revolution.ShellState;

/**
 * A thick-and-thin part of revolution that inflates in a rigid bore, seals it and holds: a sleeve
 * between solid ends, a finger, a dome.
 *
 * <p>Formula: the shell of revolution at finite strain with contact, see {@link RevolvedShell};
 * touch at the least gap g = 0. Holding force at most mu N, N the sum of the contact pressures over
 * the area. Leak margin: pc/pm, pc the largest mean of the contact pressure over a length of two
 * walls, two walls at either edge of the contact left out. A seal holds where somewhere along the
 * contact pc is above pm; 1.2 to 1.5 is usual (common practice). Symbols: g gap (m), mu friction, N
 * normal force (N), pc contact pressure, pm pressure of the medium over that on the other side
 * (Pa).
 *
 * <p>The edges are left out on the safe side: there a shell has a line load, whose spread along the
 * contact it does not resolve. Peak and mean pressures of the contact hold it.
 *
 * <p>Where the pressure passes a limit point before the touch, a supply of pressure snaps the part
 * to the bore: the touch then has the pressure of the limit point, and the states between are those
 * of a held volume. The first end stays; the last one is held to it by a core, or slides with the
 * thrust of the pressure on it, as the tip of a finger does.
 *
 * <p>Range: as for the shell; a contact of at least two walls, its edges not far up a wall step.
 * Caveats: those of the shell and of the grade; a snap; a short contact; a contact that has climbed
 * a wall step; a conical bore; a largest strain at an edge of the part, which still grows as the
 * elements shrink (20, 26 and 29 % at 1, 2 and 4 times the usual fineness, sharp ends). Left out:
 * friction while the contact spreads, which keeps the wall from sliding along the bore, and the
 * medium's own pressure on the free part beside the contact, which shortens the contact on that
 * side. The strain limit is the strain at break of the grade, across the layers where the strain
 * runs more across them than along.
 *
 * <p>Read the cautions of this package before pressurising anything. Source: derived; margins:
 * common practice.
 *
 * <p>JShell: {@code Seal.of(Meridian.from(mm(10), mm(0)).lineTo(mm(10), mm(30)).wall(mm(0.8)),
 * Bore.of(mm(21)).friction(0.4, 0.1)).inflate(Grade.rubber(ShoreA.of(40)), kpa(150)).table()}
 *
 * <p>Immutable and thread-safe.
 */
public final class Seal {

  private final Meridian meridian;
  private final Bore bore;
  private final Angle widening;
  private final RevolvedShell shell;
  private final boolean sliding;
  private final BuildDirection build;

  private Seal(
      Meridian meridian,
      Bore bore,
      Angle widening,
      RevolvedShell shell,
      boolean sliding,
      BuildDirection build) {
    this.meridian = meridian;
    this.bore = bore;
    this.widening = widening;
    this.shell = shell;
    this.sliding = sliding;
    this.build = build;
  }

  /**
   * A part in a bore, built into solids at its ends, built axis up. An end on the axis is a tip and
   * lets the last end slide; otherwise a core holds the ends apart.
   *
   * @param meridian the part, drawn upwards, ends and all
   * @param bore the bore, wider than the part even at its narrowest
   * @return the seal
   * @throws org.flexwright.InvalidInputException if the part does not go into the bore
   */
  public static Seal of(Meridian meridian, Bore bore) {
    RevolvedShell shell = RevolvedShell.of(meridian);
    ShellState rest = rest(shell);
    boolean tip = rest.radius(0).m() == 0.0 || rest.radius(rest.nodes() - 1).m() == 0.0;
    return new Seal(meridian, bore, Angle.rad(0.0), shell, tip, BuildDirection.AXIS_UP).fitting();
  }

  private static ShellState rest(RevolvedShell shell) {
    return shell.journey(NeoHookean.of(Pressure.mpa(1.0))).last();
  }

  private Seal fitting() {
    Obstacle narrow = new Obstacle.Bore(bore.narrowest().times(0.5), widening);
    Length gap = rest(shell.against(narrow)).touches().get(0).nearest().gap();
    Require.that(
        gap.m() > 0.0,
        "gap of the part in the narrowest bore",
        gap,
        "above 0",
        "the part would not go in: take a wider bore, a tighter tolerance or a narrower part");
    return this;
  }

  /**
   * This seal with its first end held otherwise.
   *
   * @param by how
   * @return the new seal
   */
  public Seal first(End by) {
    return new Seal(meridian, bore, widening, shell.first(by), sliding, build);
  }

  /**
   * This seal with its last end held otherwise.
   *
   * @param by how
   * @return the new seal
   */
  public Seal last(End by) {
    return new Seal(meridian, bore, widening, shell.last(by), sliding, build);
  }

  /**
   * This seal with its last end free to slide along the axis, or held by a core.
   *
   * @param free true to let it slide under the thrust of the pressure
   * @return the new seal
   */
  public Seal sliding(boolean free) {
    return new Seal(meridian, bore, widening, shell, free, build);
  }

  /**
   * This seal in another cylindrical bore, or in the bore at its height 0 if it is conical.
   *
   * @param of the bore
   * @return the new seal
   * @throws org.flexwright.InvalidInputException if the part does not go in
   */
  public Seal into(Bore of) {
    return new Seal(meridian, of, widening, shell, sliding, build).fitting();
  }

  /**
   * This seal in a conical bore, whose diameter is that at height 0.
   *
   * @param half half the angle of the cone, positive if it widens upwards
   * @return the new seal
   * @throws org.flexwright.InvalidInputException if the part does not go in
   */
  public Seal widening(Angle half) {
    return new Seal(meridian, bore, half, shell, sliding, build).fitting();
  }

  /**
   * This seal built another way.
   *
   * @param of how it stands in the printer
   * @return the new seal
   */
  public Seal build(BuildDirection of) {
    return new Seal(meridian, bore, widening, shell, sliding, of);
  }

  /**
   * This seal in finer or coarser elements.
   *
   * @param times as fine as the usual, from 0.25 to 16
   * @return the new seal
   * @throws org.flexwright.InvalidInputException if the number is outside 0.25 to 16
   */
  public Seal fineness(double times) {
    return new Seal(meridian, bore, widening, shell.fineness(times), sliding, build);
  }

  /**
   * This seal in the widest and in the narrowest bore, both with the low friction.
   *
   * @return two seals, each in an exact bore
   */
  public List<Seal> extremes() {
    return List.of(into(bore.worst(bore.widest())), into(bore.worst(bore.narrowest())));
  }

  /**
   * Inflates it to a supply pressure.
   *
   * @param grade the material; {@link Grade#ofLaw} for a law alone
   * @param supply the pressure of the supply, above 0
   * @param run progress and stop request
   * @return the states, and what ended it
   * @throws org.flexwright.InvalidInputException if the pressure is not above 0
   */
  public Sealing inflate(Grade grade, Pressure supply, RunControl run) {
    return filled(grade, supply, run, s -> -1.0);
  }

  /**
   * The same without watching it.
   *
   * @param grade the material
   * @param supply the pressure of the supply, above 0
   * @return the states, and what ended it
   * @throws org.flexwright.InvalidInputException if the pressure is not above 0
   */
  public Sealing inflate(Grade grade, Pressure supply) {
    return inflate(grade, supply, RunControl.none());
  }

  /**
   * Inflates it until the usual friction holds a force.
   *
   * @param grade the material
   * @param force the force to hold, above 0
   * @param most the most pressure there is, above 0
   * @param run progress and stop request
   * @return the states; the last one holds the force unless something ended it before
   * @throws org.flexwright.InvalidInputException if the force or the pressure is not above 0
   */
  public Sealing toHold(Grade grade, Force force, Pressure most, RunControl run) {
    double asked = Require.positive("holding force", force.newtons(), "N");
    return filled(grade, most, run, s -> s.holding().newtons() / asked - 1.0);
  }

  /**
   * Inflates it until it keeps a medium back with a margin.
   *
   * @param grade the material
   * @param medium pressure of the medium over that on the other side, above 0
   * @param margin the leak margin, above 0; see {@link SealMargins#USUAL_LEAK}
   * @param most the most pressure there is, above 0
   * @param run progress and stop request
   * @return the states; the last one has the margin unless something ended it before
   * @throws org.flexwright.InvalidInputException if a pressure or the margin is not above 0
   */
  public Sealing toSeal(
      Grade grade, Pressure medium, double margin, Pressure most, RunControl run) {
    double asked = Require.positive("leak margin", margin, "");
    Require.positive("pressure of the medium", medium.pa(), "Pa");
    return filled(grade, most, run, s -> s.margins(medium).leak() / asked - 1.0);
  }

  private Sealing filled(
      Grade grade, Pressure supply, RunControl run, ToDoubleFunction<Sealing.State> goal) {
    Require.positive("supply pressure", supply.pa(), "Pa");
    return new Filling(this, grade, supply.pa(), run, goal).sealing();
  }

  /**
   * The part as drawn.
   *
   * @return its meridian
   */
  public Meridian meridian() {
    return meridian;
  }

  /** Its shell in the bore made wider by a length on the radius. */
  RevolvedShell among(Length wider) {
    return shell.against(new Obstacle.Bore(bore.diameter().times(0.5).plus(wider), widening));
  }

  Bore bore() {
    return bore;
  }

  Angle widening() {
    return widening;
  }

  boolean sliding() {
    return sliding;
  }

  BuildDirection build() {
    return build;
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "seal, " + meridian + (sliding ? ", last end sliding" : "") + ", in " + bore;
  }
}
