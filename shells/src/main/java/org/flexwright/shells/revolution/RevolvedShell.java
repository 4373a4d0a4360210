package org.flexwright.shells.revolution;

import java.util.List;
import org.flexwright.grade.Grade;
import org.flexwright.internal.Require;
import org.flexwright.law.StrainEnergy;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Volume;
import org.flexwright.response.Lever;
import org.flexwright.run.RunControl;

/**
 * A part of revolution, meshed and held at its ends, ready to be pushed, pulled and inflated.
 *
 * <p>Finite strain and any turn, the wall's volume kept exactly; see the package for the kinematics
 * and their limits. The first end stays where it is along the axis; the last one is what a {@link
 * Drive} moves or loads. Space between the meridian and the axis is what a pressure fills; flat
 * lids at the ends are taken as closed, and the thrust on a lid pushes the last end where it is
 * free.
 *
 * <p>Immutable and thread-safe: the mesh is made once and shared by all runs. Results carry a
 * caveat where the law leaves its range.
 *
 * <p>Source: Reissner 1969, stationary principle for finite axisymmetric bending of shells (from
 * memory); the wall's kinematics are ours and checked against full continuum mechanics.
 *
 * <p>JShell: {@code RevolvedShell.of(Meridian.from(mm(10), mm(0)).lineTo(mm(10), mm(30)).wall(
 * mm(1))).run(law, Drive.pressure(kpa(20)))}
 */
public final class RevolvedShell {

  private static final int LAYERS = 5;

  private final ShellMesh mesh;
  private final Meridian meridian;
  private final double fineness;
  private final End first;
  private final End last;
  private final List<Obstacle> obstacles;
  private final List<Load> loads;

  private RevolvedShell(
      ShellMesh mesh,
      Meridian meridian,
      double fineness,
      End first,
      End last,
      List<Obstacle> obstacles,
      List<Load> loads) {
    this.mesh = mesh;
    this.meridian = meridian;
    this.fineness = fineness;
    this.first = first;
    this.last = last;
    this.obstacles = obstacles;
    this.loads = loads;
  }

  /**
   * A shell built into rigid solids at both ends.
   *
   * @param meridian its meridian
   * @return the shell
   */
  public static RevolvedShell of(Meridian meridian) {
    ShellMesh mesh = meridian.mesh(1.0);
    return new RevolvedShell(mesh, meridian, 1.0, End.BUILT_IN, End.BUILT_IN, List.of(), List.of());
  }

  /**
   * This shell with its first end held otherwise.
   *
   * @param by how
   * @return the new shell
   */
  public RevolvedShell first(End by) {
    return new RevolvedShell(mesh, meridian, fineness, by, last, obstacles, loads);
  }

  /**
   * This shell with its last end held otherwise.
   *
   * @param by how
   * @return the new shell
   */
  public RevolvedShell last(End by) {
    return new RevolvedShell(mesh, meridian, fineness, first, by, obstacles, loads);
  }

  /**
   * This shell among obstacles.
   *
   * @param all everything it may press against
   * @return the new shell
   */
  public RevolvedShell against(Obstacle... all) {
    return new RevolvedShell(mesh, meridian, fineness, first, last, List.of(all), loads);
  }

  /**
   * This shell under loads that stay on: they are put on before the first leg, with the last end
   * held where it is.
   *
   * @param all everything it bears; one liquid at most
   * @return the new shell
   * @throws org.flexwright.InvalidInputException if no piece has the name of a ring load, or there
   *     are two liquids
   */
  public RevolvedShell under(Load... all) {
    long liquids = 0;
    for (Load load : all) {
      liquids += load instanceof Load.Fill ? 1 : 0;
      if (load instanceof Load.Ring ring) {
        List<String> names = meridian.pieces().stream().map(Meridian.Piece::name).toList();
        Require.that(
            names.contains(ring.piece()),
            "piece of a ring load",
            ring.piece(),
            "one of " + names,
            "name the piece at whose start it acts");
      }
    }
    Require.that(liquids <= 1, "liquids", liquids, "one at most", "give the heavier one");
    return new RevolvedShell(mesh, meridian, fineness, first, last, obstacles, List.of(all));
  }

  /**
   * This shell in finer or coarser elements.
   *
   * @param times as fine as the usual, from 0.25 to 16
   * @return the new shell
   * @throws org.flexwright.InvalidInputException if the number is outside 0.25 to 16
   */
  public RevolvedShell fineness(double times) {
    Require.between("fineness", times, 0.25, 16.0, "");
    return new RevolvedShell(meridian.mesh(times), meridian, times, first, last, obstacles, loads);
  }

  /**
   * This shell with another meridian, held and cut as this one is.
   *
   * @param other the meridian
   * @return the new shell
   */
  public RevolvedShell meridian(Meridian other) {
    return new RevolvedShell(other.mesh(fineness), other, fineness, first, last, obstacles, loads);
  }

  /**
   * Drives the shell through legs, one after the other.
   *
   * @param law the law of its material
   * @param run progress and stop request
   * @param legs the legs, at least one
   * @return the path; if a leg could not be finished, the states up to there and the reason
   */
  public ShellPath run(StrainEnergy law, RunControl run, Drive... legs) {
    Require.atLeast("legs", legs.length, 1);
    return journey(law).run(List.of(legs), run);
  }

  /**
   * A journey whose legs are chosen on the way, from the states found.
   *
   * @param law the law of its material
   * @return the journey, at rest
   */
  public Journey journey(StrainEnergy law) {
    return new Journey(mesh, first, last, LAYERS, law, obstacles).under(loads, meridian.pieces());
  }

  /**
   * The same without watching it.
   *
   * @param law the law of its material
   * @param legs the legs, at least one
   * @return the path
   */
  public ShellPath run(StrainEnergy law, Drive... legs) {
    return run(law, RunControl.none(), legs);
  }

  /**
   * The same for a grade; the path carries the grade's caveats, too.
   *
   * @param grade the grade
   * @param run progress and stop request
   * @param legs the legs, at least one
   * @return the path at the grade's nominal law
   */
  public ShellPath run(Grade grade, RunControl run, Drive... legs) {
    return run(grade.law(), run, legs).with(grade.caveats());
  }

  /**
   * Makes this shell ready to be asked for many values of a lever, quickly.
   *
   * @param lever what will change, {@link Meridian#WALL} or that of a name
   * @param law the law of its material
   * @param legs the legs of its journey, at least one
   * @return the prepared shell
   */
  public PreparedShell prepare(Lever<Meridian> lever, StrainEnergy law, Drive... legs) {
    return new PreparedShell(this, lever, law, List.of(legs));
  }

  List<Obstacle> obstacles() {
    return obstacles;
  }

  /**
   * One place across the wall, by its two faces.
   *
   * @param outerRadius distance of the face to the right of the run from the axis
   * @param outerHeight its place along the axis
   * @param innerRadius distance of the face to the left of the run from the axis
   * @param innerHeight its place along the axis
   */
  public record Across(
      Length outerRadius, Length outerHeight, Length innerRadius, Length innerHeight) {}

  /**
   * The wall in a state of this shell, with its thickness as deformed; the set-back of a built-in
   * end belongs to the solid and is left out.
   *
   * @param state a state of a run of this shell
   * @return the wall at the first end, at the middle of each element and at the last end
   * @throws org.flexwright.InvalidInputException if it is the state of another shell
   */
  public List<Across> wall(ShellState state) {
    Require.that(
        state.nodes() == mesh.nodes(),
        "nodes of the state",
        state.nodes(),
        () -> mesh.nodes() + ", those of this shell",
        "ask the shell that was run");
    return new Faces(mesh, BuiltIn.of(mesh, first, last)).of(state);
  }

  /**
   * The meridian as drawn.
   *
   * @return the meridian
   */
  public Meridian meridian() {
    return meridian;
  }

  /**
   * The elements the meridian was cut into.
   *
   * @return how many
   */
  public int elements() {
    return mesh.elements();
  }

  /**
   * The volume of the wall.
   *
   * @return the volume to be printed
   */
  public Volume printedVolume() {
    return meridian.printedVolume();
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "shell of revolution, "
        + meridian
        + ", "
        + first
        + " to "
        + last
        + ", "
        + elements()
        + " elements";
  }
}
