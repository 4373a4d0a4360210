package org.flexwright.shells.revolution;

import java.util.List;
import org.flexwright.grade.Grade;
import org.flexwright.internal.Require;
import org.flexwright.law.StrainEnergy;
import org.flexwright.quantity.Volume;
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
  private final Volume printed;
  private final Meridian meridian;
  private final End first;
  private final End last;
  private final List<Obstacle> obstacles;

  private RevolvedShell(
      ShellMesh mesh, Meridian meridian, End first, End last, List<Obstacle> obstacles) {
    this.mesh = mesh;
    this.meridian = meridian;
    this.first = first;
    this.last = last;
    this.obstacles = obstacles;
    this.printed = meridian.printedVolume();
  }

  /**
   * A shell built into rigid solids at both ends.
   *
   * @param meridian its meridian
   * @return the shell
   */
  public static RevolvedShell of(Meridian meridian) {
    return new RevolvedShell(meridian.mesh(1.0), meridian, End.BUILT_IN, End.BUILT_IN, List.of());
  }

  /**
   * This shell with its first end held otherwise.
   *
   * @param by how
   * @return the new shell
   */
  public RevolvedShell first(End by) {
    return new RevolvedShell(mesh, meridian, by, last, obstacles);
  }

  /**
   * This shell with its last end held otherwise.
   *
   * @param by how
   * @return the new shell
   */
  public RevolvedShell last(End by) {
    return new RevolvedShell(mesh, meridian, first, by, obstacles);
  }

  /**
   * This shell among obstacles.
   *
   * @param all everything it may press against
   * @return the new shell
   */
  public RevolvedShell against(Obstacle... all) {
    return new RevolvedShell(mesh, meridian, first, last, List.of(all));
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
    return new RevolvedShell(meridian.mesh(times), meridian, first, last, obstacles);
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
    return new Journey(mesh, first, last, LAYERS, law, obstacles);
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
    return printed;
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
