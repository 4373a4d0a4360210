package org.flexwright.shells.revolution;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.response.Channel;
import org.flexwright.response.LoadPath;
import org.flexwright.run.Termination;

/**
 * The path of a shell: every state found, how it ended, where load or drive turned round and where
 * it forked.
 *
 * @param states the states, that of rest first
 * @param limits the limit points and forks passed
 * @param termination how it ended; if not complete, the states before are kept
 * @param caveats what must be said about them
 */
public record ShellPath(
    List<ShellState> states, List<Limit> limits, Termination termination, List<Caveat> caveats) {

  /**
   * A state where the load or what is driven turns round, or where the path forks.
   *
   * @param kind what happens there
   * @param leg the leg it was found on, from 0; -1 while the standing loads were put on
   * @param load the force in newtons or pressure in pascals there; of standing loads their share
   * @param driven the driven value there, in SI units
   */
  public record Limit(Kind kind, int leg, double load, double driven) {

    /** What happens at a limit. */
    public enum Kind {
      /** The load turns round: under a dead load the part snaps on. */
      LIMIT_POINT,
      /** What is driven turns round: the part snaps though travel or volume is held. */
      SNAP_BACK,
      /**
       * Another path branches off though load and drive go on: equal parts no longer move alike. A
       * real part takes the other path.
       */
      BIFURCATION
    }
  }

  /**
   * Keeps the lists from being changed.
   *
   * @param states the states, that of rest first
   * @param limits the limit points and forks passed
   * @param termination how it ended
   * @param caveats what must be said about them
   */
  public ShellPath {
    states = List.copyOf(states);
    limits = List.copyOf(limits);
    caveats = List.copyOf(caveats);
  }

  ShellPath with(List<Caveat> more) {
    List<Caveat> all = new ArrayList<>(caveats);
    all.addAll(more);
    return new ShellPath(states, limits, termination, all);
  }

  /**
   * The last state.
   *
   * @return the state
   */
  public ShellState last() {
    return states.get(states.size() - 1);
  }

  /**
   * Travel, force, pressure, volume and peak strain of all states.
   *
   * @return the path of these figures
   */
  public LoadPath figures() {
    LoadPath.Builder path =
        LoadPath.of(
            states.size(),
            Channel.TRAVEL,
            Channel.FORCE,
            Channel.PRESSURE,
            Channel.VOLUME,
            Channel.STRAIN);
    for (ShellState s : states) {
      path.add(
          s.travel().m(),
          s.force().newtons(),
          s.pressure().pa(),
          s.volume().m3(),
          s.peak().strain());
    }
    return path.end(termination);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return states.size()
        + " states to "
        + last()
        + (termination.complete() ? "" : " (" + termination + ")");
  }
}
