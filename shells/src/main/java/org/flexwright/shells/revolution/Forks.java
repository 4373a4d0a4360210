package org.flexwright.shells.revolution;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.quantity.Volume;

/** What must be said of a path that goes on where another one branches off. */
final class Forks {

  private static final Source SOURCE =
      Source.derived("inertia of the tangent while the driven value is held");

  private final List<Caveat> caveats = new ArrayList<>();
  private int ways;

  /** Sees a limit and where it is; the first loss of stability of a path is told. */
  void see(PathFollower.LimitPoint limit, String at) {
    if (limit.kind() != ShellPath.Limit.Kind.BIFURCATION) {
      return;
    }
    if (ways == 0 && limit.lost() > 0) {
      String message =
          "from "
              + at
              + " on another path branches off: equal parts give way one after the other, and a"
              + " real part takes that path, which is softer than this one";
      caveats.add(Caveat.note("symmetric path of a shell", message, SOURCE));
    }
    ways = Math.max(0, ways + limit.lost());
  }

  static String value(Drive.What what, double driven) {
    return switch (what) {
      case TRAVEL -> "travel " + Length.m(driven);
      case FORCE -> "force " + Force.newtons(driven);
      case PRESSURE -> "pressure " + Pressure.pa(driven);
      case VOLUME -> "volume " + Volume.m3(driven);
    };
  }

  List<Caveat> caveats() {
    return caveats;
  }
}
