package org.flexwright.shells.inflate;

import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Grade;
import org.flexwright.internal.Text;
import org.flexwright.run.Termination;
import org.flexwright.shells.revolution.ShellState;

/**
 * The strain of a state over the strain at break of its grade, in the layers or across them.
 *
 * <p>Built axis up, layers lie across the axis: a strain around it runs in them, one along the
 * meridian across them where the meridian climbs by more than 30 degrees. Built axis lying, a
 * strain around the axis pulls layers apart somewhere, one along the meridian where the meridian
 * leaves the axis by more than 30 degrees.
 */
final class Demand {

  private static final double ACROSS = 0.5; // sine of 30 degrees

  private final Grade grade;
  private final BuildDirection build;
  private final ShellState rest;

  Demand(Grade grade, BuildDirection build, ShellState rest) {
    this.grade = grade;
    this.build = build;
    this.rest = rest;
  }

  double of(ShellState s) {
    return Math.max(share(s.peak(true)), share(s.peak(false)));
  }

  private double share(ShellState.Peak peak) {
    return peak.strain() / grade.strainAtBreak(across(peak));
  }

  private boolean across(ShellState.Peak peak) {
    if (peak.hoop()) {
      return build == BuildDirection.AXIS_LYING;
    }
    int i = peak.element();
    double dr = rest.radius(i + 1).m() - rest.radius(i).m();
    double dz = rest.height(i + 1).m() - rest.height(i).m();
    double part = build == BuildDirection.AXIS_LYING ? dr : dz;
    return Math.abs(part) > ACROSS * Math.hypot(dr, dz);
  }

  /** The ending of a path at a state whose demand is 1. */
  Termination reached(ShellState s) {
    ShellState.Peak peak =
        share(s.peak(true)) > share(s.peak(false)) ? s.peak(true) : s.peak(false);
    return new Termination(
        Termination.Kind.NO_FURTHER_STATE,
        "strain of "
            + Text.percent(peak.strain())
            + (peak.hoop() ? " around the axis" : " along the meridian")
            + " reaches the strain at break "
            + (across(peak) ? "across" : "in")
            + " the layers, at the height "
            + rest.height(peak.element())
            + " on the "
            + (peak.inner() ? "inner" : "outer")
            + " face");
  }
}
