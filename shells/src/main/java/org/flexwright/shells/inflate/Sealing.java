package org.flexwright.shells.inflate;

import java.util.List;
import java.util.Optional;
import org.flexwright.evidence.Caveat;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.response.Channel;
import org.flexwright.response.LoadPath;
import org.flexwright.run.Termination;
import org.flexwright.shells.revolution.ShellState;
import org.flexwright.shells.revolution.Touch;

/**
 * How a {@link Seal} went into its bore: every state from rest on, where it touched, what it was
 * asked for, and what ended it.
 *
 * <p>Endings: complete, the supply or what was asked for was reached; limit point, the part runs
 * away under its pressure and no bore stops it; no further state, the strain limit of the grade is
 * reached, with the place in words; not converged; stopped. The states before are kept.
 *
 * <p>JShell: {@code Seal.of(Meridian.from(mm(10), mm(0)).lineTo(mm(10), mm(30)).wall(mm(0.8)),
 * Bore.of(mm(21))).inflate(Grade.rubber(ShoreA.of(40)), kpa(150))}
 *
 * @param states the states in the order of the path, that of rest first
 * @param touch where and at what pressure it first touches, if it does
 * @param wanted the state that holds or seals as asked, if that was asked for and reached
 * @param termination what ended it
 * @param caveats what must be said about it
 */
public record Sealing(
    List<State> states,
    Optional<First> touch,
    Optional<State> wanted,
    Termination termination,
    List<Caveat> caveats) {

  /**
   * Keeps the lists from being changed.
   *
   * @param states the states in the order of the path
   * @param touch where it first touches
   * @param wanted the state asked for
   * @param termination what ended it
   * @param caveats what must be said about it
   */
  public Sealing {
    states = List.copyOf(states);
    caveats = List.copyOf(caveats);
  }

  /**
   * The first touch.
   *
   * @param supply the supply pressure at which it happens
   * @param pressure the pressure in the part at the touch: that of the supply, or less if the part
   *     passes a limit point before and snaps to the bore
   * @param height of the place on the part as drawn
   */
  public record First(Pressure supply, Pressure pressure, Length height) {

    /**
     * Whether the part snaps to the bore.
     *
     * @return true if it touches beyond a limit point of its pressure
     */
    public boolean snaps() {
      return pressure.compareTo(supply) < 0;
    }

    /** One readable line. */
    @Override
    public String toString() {
      return "touches at "
          + supply
          + " at the height "
          + height
          + (snaps() ? ", by a snap that ends at " + pressure + " if the volume is held" : "");
    }
  }

  /**
   * The place along a contact that seals best.
   *
   * @param pressure the contact pressure there, its mean over the length of two walls, the edges of
   *     the contact left out
   * @param height of the place on the part as drawn
   */
  public record Place(Pressure pressure, Length height) {}

  /**
   * One state of the part in its bore.
   *
   * @param bore the bore
   * @param shell shape, strains and volume
   * @param contact how it presses on the bore: length, mean and peak pressure, normal force, gap
   * @param best the place along the contact that seals best
   * @param demand largest strain over the strain at break of the grade in its direction
   * @param held whether a supply of pressure passes it: only a held volume stays there
   */
  public record State(
      Bore bore, ShellState shell, Touch contact, Place best, double demand, boolean held) {

    /** {@return the pressure inside} */
    public Pressure pressure() {
      return shell.pressure();
    }

    /**
     * The most that the usual friction holds along the bore: friction times normal force.
     *
     * @return the force, an upper bound
     */
    public Force holding() {
      return contact.holds(bore.friction());
    }

    /**
     * The same with the low friction of the bore.
     *
     * @return the force
     */
    public Force holdingLow() {
      return contact.holds(bore.lowFriction());
    }

    /**
     * How surely this state keeps a medium back and stays.
     *
     * @param medium pressure of the medium over that on the other side, above 0
     * @return leak margin at the best place, holding force, blow-out force
     */
    public SealMargins margins(Pressure medium) {
      Require.positive("pressure of the medium", medium.pa(), "Pa");
      double radius = 0.5 * bore.diameter().m();
      return new SealMargins(
          best.pressure().ratioTo(medium),
          holding(),
          Force.newtons(medium.pa() * Math.PI * radius * radius));
    }

    /** One readable line. */
    @Override
    public String toString() {
      return pressure()
          + ": contact "
          + contact.length()
          + ", mean "
          + contact.mean()
          + ", best "
          + best.pressure()
          + ", holds "
          + holding()
          + ", strain "
          + Text.percent(shell.peak().strain())
          + (held ? ", at a held volume only" : "");
    }
  }

  /**
   * The last state.
   *
   * @return the state
   */
  public State last() {
    return states.get(states.size() - 1);
  }

  /**
   * Pressure, volume, holding force by the usual friction and peak strain of all states; other
   * figures stand in the states.
   *
   * @return the path
   */
  public LoadPath figures() {
    LoadPath.Builder path =
        LoadPath.of(states.size(), Channel.FORCE, Channel.PRESSURE, Channel.VOLUME, Channel.STRAIN);
    for (State s : states) {
      path.add(
          s.holding().newtons(),
          s.pressure().pa(),
          s.shell().volume().m3(),
          s.shell().peak().strain());
    }
    return path.end(termination);
  }

  /**
   * Every state as a line of text.
   *
   * @return the lines
   */
  public String table() {
    StringBuilder lines = new StringBuilder();
    states.forEach(s -> lines.append(s).append('\n'));
    return lines.toString();
  }

  /** One readable line. */
  @Override
  public String toString() {
    return touch.map(First::toString).orElse("does not touch")
        + "; "
        + last()
        + (termination.complete() ? "" : " (" + termination + ")");
  }
}
