package org.flexwright.law;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.flexwright.InvalidInputException;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * The stability of a law over a square of biaxial stretches.
 *
 * <p>Symbols: l1 and l2 the stretches of the two directions, the thickness has 1/(l1 l2). The map
 * is symmetric in both. Made by {@link Stability#map}, where the measures stand.
 *
 * <p>JShell: {@code Stability.of(law).map(0.5, 2, 4).table()}
 *
 * @param law the law in one line
 * @param stretches the stretches of both directions, rising
 * @param rows the states, a row for each first stretch
 */
public record StabilityMap(String law, List<Double> stretches, List<List<State>> rows) {

  /** What a state is; the worst that applies, by rising order. */
  public enum State {
    /** All three demands are met. */
    STABLE,
    /** Stable, but gives way under dead loads. */
    NOT_UNIQUE,
    /** The second derivative in Hencky strains is not positive definite. */
    UNSTABLE,
    /** Shear bands may form; stable or not. */
    NOT_ELLIPTIC,
    /** The law has no finite stress. */
    LOCKED;

    static State of(StateStiffness work) {
      double elliptic = work.elliptic();
      double drucker = work.drucker();
      double deadLoad = work.deadLoad();
      if (!Double.isFinite(elliptic + drucker + deadLoad)) {
        return LOCKED;
      }
      if (!(elliptic > 0.0)) {
        return NOT_ELLIPTIC;
      }
      if (!(drucker > 0.0)) {
        return UNSTABLE;
      }
      return deadLoad > 0.0 ? STABLE : NOT_UNIQUE;
    }
  }

  /**
   * Keeps the lists from being changed.
   *
   * @param law the law in one line
   * @param stretches the stretches of both directions, rising
   * @param rows the states, a row for each first stretch
   * @throws InvalidInputException if there is no stretch, or a row is missing or of another length
   */
  public StabilityMap {
    stretches = List.copyOf(stretches);
    rows = rows.stream().map(List::copyOf).toList();
    int count = stretches.size();
    Require.atLeast("stretches of the map", count, 1);
    Require.that(
        rows.size() == count && rows.stream().allMatch(row -> row.size() == count),
        "rows of the map",
        rows.size(),
        count + " rows of " + count + " states",
        "");
  }

  /**
   * How many states are of a kind.
   *
   * @param kind the kind
   * @return the count
   */
  public long count(State kind) {
    return rows.stream().flatMap(List::stream).filter(kind::equals).count();
  }

  /**
   * The map as text, a line for each first stretch, a column for each second.
   *
   * @return the table
   */
  public String table() {
    List<String[]> lines = new ArrayList<>();
    int columns = stretches.size() + 1;
    String[] head = new String[columns];
    head[0] = "l1 \\ l2";
    for (int j = 1; j < columns; j++) {
      head[j] = Text.number(stretches.get(j - 1));
    }
    lines.add(head);
    for (int i = 0; i < rows.size(); i++) {
      String[] line = new String[columns];
      line[0] = Text.number(stretches.get(i));
      for (int j = 1; j < columns; j++) {
        line[j] = rows.get(i).get(j - 1).name().toLowerCase(Locale.ROOT).replace('_', ' ');
      }
      lines.add(line);
    }
    return Text.table(lines);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return law
        + ": "
        + count(State.STABLE)
        + " of "
        + stretches.size() * stretches.size()
        + " states stable, stretches "
        + Text.number(stretches.get(0))
        + " to "
        + Text.number(stretches.get(stretches.size() - 1));
  }
}
