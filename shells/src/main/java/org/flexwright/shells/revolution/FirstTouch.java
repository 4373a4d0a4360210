package org.flexwright.shells.revolution;

import java.util.Optional;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.quantity.Volume;

/**
 * Notes where on its path a shell first touches itself: the smallest gap of the last two states
 * that were open, carried on in a straight line, but not beyond the first state that touches.
 *
 * <p>Of one run; not thread-safe.
 */
final class FirstTouch {

  private static final Source SOURCE =
      Source.derived("gap between faces, carried on linearly from the last two open states");

  private final SelfContact self;
  private double[] open = {};
  private double[] earlier = {};
  private Optional<ShellState> first = Optional.empty();
  private Optional<ShellState> before = Optional.empty();
  private Optional<Caveat> caveat = Optional.empty();

  FirstTouch(SelfContact self) {
    this.self = self;
  }

  /** Looks at the next state of a path, the one of rest first. */
  void look(ShellState now, Drive.What driven, double[] x) {
    if (caveat.isPresent()) {
      return;
    }
    if (now.self().isPresent()) {
      double at = at(value(now, driven), driven);
      caveat =
          Optional.of(
              Caveat.note(
                  "shell of revolution",
                  "faces of the shell touch each other from a "
                      + named(driven, at)
                      + " on: friction and sticking between them are left out",
                  SOURCE));
    }
    earlier = open;
    open = x.clone();
    first = before;
    before = Optional.of(now);
  }

  private double at(double touching, Drive.What driven) {
    if (earlier.length == 0) {
      return touching;
    }
    double gap = self.least(open);
    double wider = self.least(earlier);
    double one = first.map(s -> value(s, driven)).orElse(touching);
    double two = before.map(s -> value(s, driven)).orElse(touching);
    double at = two + (two - one) * gap / (wider - gap);
    boolean known = gap > 0.0 && wider > gap && wider < Double.POSITIVE_INFINITY;
    return known && Math.abs(at - two) < Math.abs(touching - two) ? at : touching;
  }

  private static double value(ShellState s, Drive.What driven) {
    return switch (driven) {
      case TRAVEL -> s.travel().m();
      case FORCE -> s.force().newtons();
      case PRESSURE -> s.pressure().pa();
      case VOLUME -> s.volume().m3();
    };
  }

  private static String named(Drive.What driven, double at) {
    return switch (driven) {
      case TRAVEL -> "travel of " + Length.m(at);
      case FORCE -> "force of " + Force.newtons(at);
      case PRESSURE -> "pressure of " + Pressure.pa(at);
      case VOLUME -> "volume taken in of " + Volume.m3(at);
    };
  }

  /** What must be said, if the shell has touched itself. */
  Optional<Caveat> caveat() {
    return caveat;
  }
}
