package org.flexwright.shells.inflate;

import java.util.Optional;
import java.util.StringJoiner;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Pressure;

/**
 * Where an inflated tube bulges, and whether the bulge then runs along it.
 *
 * <p>Formula. Initiation: the Jacobian of pressure and axial force by bore and axial stretch is
 * zero; with closed ends that is the maximum of the pressure. Propagation, closed ends: the bulged
 * and the thin part live side by side at the pressure at which both have the same energy less work
 * for each reference length, which is Maxwell's equal area in the pressure-volume diagram. A law
 * that does not stiffen again has no bulged state: the bulge grows until the tube bursts.
 *
 * <p>Range: long tubes of an even wall; a weak spot starts a bulge earlier. Stretches are those of
 * the bore. Held ends: propagation depends on the length of the tube and is not given. Source:
 * Kyriakides and Chang 1991, Int. J. Solids Struct. 27; Fu, Pearce and Liu 2008 (from memory,
 * values computed independently).
 *
 * <p>JShell: {@code InflatedTube.of(mm(20), mm(200), mm(1)).bulging(grade)}
 *
 * @param initiation where a bulge starts, if it does
 * @param thin the tube beside a standing bulge, if there is one
 * @param bulge the standing bulge, if there is one
 * @param reason why something is missing, or that nothing is
 */
public record Bulging(
    Optional<State> initiation, Optional<State> thin, Optional<State> bulge, String reason) {

  /**
   * A uniform state of the tube.
   *
   * @param bore bore stretch
   * @param axial axial stretch
   * @param pressure the pressure
   */
  public record State(double bore, double axial, Pressure pressure) {

    /** One readable line. */
    @Override
    public String toString() {
      return pressure + " (bore " + Text.number(bore) + ", axial " + Text.number(axial) + ")";
    }
  }

  /**
   * The pressure at which a bulge runs along the tube; it is below that of initiation.
   *
   * @return the propagation pressure, if there is a standing bulge
   */
  public Optional<Pressure> propagation() {
    return bulge.map(State::pressure);
  }

  static Bulging of(TubePath path, TubeEnds ends) {
    Optional<State> start = path.initiation().map(p -> state(path, p.stretch()));
    if (start.isEmpty()) {
      return new Bulging(
          start, Optional.empty(), Optional.empty(), "no bulge up to the end of the law");
    }
    if (ends != TubeEnds.CLOSED) {
      return new Bulging(
          start,
          Optional.empty(),
          Optional.empty(),
          "how a bulge spreads is known for closed ends only");
    }
    Optional<double[]> phases = path.phases(path.limits());
    return new Bulging(
        start,
        phases.map(p -> state(path, p[0])),
        phases.map(p -> state(path, p[1])),
        phases.isEmpty()
            ? "no standing bulge within the law: it grows until the tube bursts"
            : "a bulge starts and then runs at the lower propagation pressure");
  }

  private static State state(TubePath path, double bore) {
    return new State(bore, path.axial(bore), Pressure.pa(path.pressure(bore)));
  }

  /** One readable line. */
  @Override
  public String toString() {
    StringJoiner line = new StringJoiner("; ");
    initiation.ifPresent(s -> line.add("bulges at " + s));
    bulge.ifPresent(s -> line.add("bulge stands at " + s));
    return line.add(reason).toString();
  }
}
