package org.flexwright.shells.revolution;

import java.util.List;
import java.util.Optional;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Energy;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.quantity.Volume;

/**
 * One state of a shell: what is driven and what follows, and the shape.
 *
 * <p>Immutable; arrays are copied on the way out.
 */
public final class ShellState {

  private final double[] x;
  private final double travel;
  private final double force;
  private final double pressure;
  private final double volume;
  private final double energy;
  private final Peak along;
  private final Peak around;
  private final List<Touch> touches;
  private final Optional<SelfTouch> self;
  private final boolean stable;
  private final Profile profile;
  private final double[] pressed;

  ShellState(
      double[] x,
      double travel,
      double force,
      double pressure,
      double volume,
      double energy,
      Peak along,
      Peak around,
      List<Touch> touches,
      Optional<SelfTouch> self,
      boolean stable,
      Profile profile,
      double[] pressed) {
    this.profile = profile;
    this.pressed = pressed.clone();
    this.x = x.clone();
    this.travel = travel;
    this.force = force;
    this.pressure = pressure;
    this.volume = volume;
    this.energy = energy;
    this.along = along;
    this.around = around;
    this.touches = List.copyOf(touches);
    this.self = self;
    this.stable = stable;
  }

  /**
   * The largest tensile strain of a state and where it is.
   *
   * @param strain nominal strain, stretch less one
   * @param element the element, counted from the first end
   * @param inner whether it is on the face towards the axis
   * @param hoop whether it runs around the axis
   */
  public record Peak(double strain, int element, boolean inner, boolean hoop) {

    Peak at(int number) {
      return new Peak(strain, number, inner, hoop);
    }
  }

  /**
   * How a shell presses on itself, one of each two faces that meet counted.
   *
   * @param length length of the touching meridian as deformed
   * @param mean mean pressure
   * @param peak largest pressure of an element
   * @param normal the sum of all normal forces, without regard to their directions
   */
  public record SelfTouch(Length length, Pressure mean, Pressure peak, Force normal) {

    /** One readable line. */
    @Override
    public String toString() {
      return "touches itself over " + length + ", mean " + mean + ", " + normal;
    }
  }

  /**
   * Travel of the last end towards the first.
   *
   * @return the travel
   */
  public Length travel() {
    return Length.m(travel);
  }

  /**
   * Force on the last end towards the first.
   *
   * @return the force
   */
  public Force force() {
    return Force.newtons(force);
  }

  /**
   * Pressure inside over outside.
   *
   * @return the pressure
   */
  public Pressure pressure() {
    return Pressure.pa(pressure);
  }

  /**
   * Volume taken in since rest.
   *
   * @return the volume
   */
  public Volume volume() {
    return Volume.m3(volume);
  }

  /**
   * Energy stored in the wall.
   *
   * @return the energy
   */
  public Energy energy() {
    return Energy.joules(energy);
  }

  /**
   * The largest tensile strain and where it is.
   *
   * @return the peak
   */
  public Peak peak() {
    return around.strain() > along.strain() ? around : along;
  }

  /**
   * The largest tensile strain that runs one way, for a print that is weaker across its layers.
   *
   * @param hoop around the axis, otherwise along the meridian
   * @return the peak, of no strain at the first element if there is no tension
   */
  public Peak peak(boolean hoop) {
    return hoop ? around : along;
  }

  /**
   * How the shell presses against each obstacle, in the order they were given.
   *
   * @return one entry for each obstacle
   */
  public List<Touch> touches() {
    return touches;
  }

  /**
   * How the shell presses on itself, as bellows do that are pushed solid.
   *
   * @return empty if no faces of it touch
   */
  public Optional<SelfTouch> self() {
    return self;
  }

  /**
   * Whether the state is stable while what drives it is held.
   *
   * @return true if stable
   */
  public boolean stable() {
    return stable;
  }

  /**
   * The wall along the meridian: stretches, stresses, forces and moments, one station at the middle
   * of each element that gives way. Computed anew at each call.
   *
   * @return the stations from the first end on
   */
  public List<Station> profile() {
    return profile.stations(x, pressure, pressed);
  }

  /**
   * The nodes of the mid-surface, from the first end on.
   *
   * @return how many
   */
  public int nodes() {
    return x.length / 3;
  }

  /**
   * Distance of a node from the axis.
   *
   * @param node counted from 0 at the first end
   * @return the radius
   * @throws org.flexwright.InvalidInputException if there is no such node
   */
  public Length radius(int node) {
    return Length.m(at(node, 0));
  }

  /**
   * Place of a node along the axis.
   *
   * @param node counted from 0 at the first end
   * @return the height
   * @throws org.flexwright.InvalidInputException if there is no such node
   */
  public Length height(int node) {
    return Length.m(at(node, 1));
  }

  /**
   * Turn of the wall at a node since rest.
   *
   * @param node counted from 0 at the first end
   * @return the turn
   * @throws org.flexwright.InvalidInputException if there is no such node
   */
  public Angle turn(int node) {
    return Angle.rad(at(node, 2));
  }

  private double at(int node, int which) {
    Require.that(
        node >= 0 && node < nodes(), "node", node, "0 to " + (nodes() - 1), "ask nodes() first");
    return x[3 * node + which];
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "travel "
        + travel()
        + ", force "
        + force()
        + ", pressure "
        + pressure()
        + ", peak strain "
        + Text.percent(peak().strain)
        + (stable ? "" : ", unstable");
  }
}
