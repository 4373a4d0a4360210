package org.flexwright.shells.inflate;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.flexwright.law.StrainEnergy;

/**
 * A sleeve with numbers in SI: what its states are, for a wall and a modulus factor that may be
 * varied.
 */
final class Grip {

  private static final int ITERATIONS = 200;

  private final double outer;
  private final double span;
  private final double wall;
  private final double boreRadius;
  private final double friction;
  private final HeldEnds ends;
  private final StrainEnergy law;
  private final double modulus;
  private final double decay;
  private final double tube;
  private final double boreStretch;

  Grip(
      StrainEnergy law,
      double modulus,
      double poisson,
      double outer,
      double span,
      double wall,
      double boreRadius,
      double friction) {
    this.law = law;
    this.modulus = modulus;
    this.outer = outer;
    this.span = span;
    this.wall = wall;
    this.boreRadius = boreRadius;
    this.friction = friction;
    double middle = outer - 0.5 * wall;
    decay = Math.sqrt(Math.sqrt(3.0 * (1.0 - poisson * poisson)) / (middle * wall));
    ends = new HeldEnds(decay * span, poisson);
    boreStretch = stretchAt(boreRadius);
    tube = tube(boreStretch);
  }

  private Grip(Grip of, double factor) {
    law = of.law;
    modulus = of.modulus * factor;
    outer = of.outer;
    span = of.span;
    wall = of.wall;
    boreRadius = of.boreRadius;
    friction = of.friction;
    decay = of.decay;
    ends = of.ends;
    boreStretch = of.boreStretch;
    tube = of.tube * factor;
  }

  /** The same sleeve of a material stiffer by a factor: pressures follow it. */
  Grip stiffer(double factor) {
    return new Grip(this, factor);
  }

  private double tube(double stretch) {
    return modulus * ThickTube.pressure(law, outer - wall, outer, stretch, 1.0);
  }

  /** Bore stretch of the long tube when its outside is at a radius. */
  private double stretchAt(double outside) {
    double grown = (outside - outer) * (outside + outer);
    double inner = outer - wall;
    return Math.sqrt(1.0 + grown / (inner * inner));
  }

  double gap() {
    return boreRadius - outer;
  }

  /** The share of the gap that the middle has closed when the tube strain is taken. */
  double hoop(double share) {
    return stretchAt(outer + share * gap()) - 1.0;
  }

  double hoop() {
    return boreStretch - 1.0;
  }

  /** Pressure at which a long tube touches. */
  double tube() {
    return tube;
  }

  /** Pressure at which the middle of the sleeve touches. */
  double touch() {
    return tube * ends.touch();
  }

  /** Pressure at which the middle has closed a share of the gap. */
  double growth(double share) {
    if (share == 1.0) {
      return touch();
    }
    return tube(stretchAt(outer + share * gap())) * ends.touch();
  }

  /** b L. */
  double lengths() {
    return decay * span;
  }

  double longestFree() {
    return ends.longestFree();
  }

  double pressure(double free) {
    return tube * ends.pressure(free);
  }

  double contact(double free) {
    return ends.contact(free) / decay;
  }

  /** Force held by friction: contact pressure above that of the long tube, edges left out. */
  double force(double free) {
    double above = Math.max(0.0, pressure(free) - tube);
    return friction * above * 2.0 * Math.PI * boreRadius * contact(free);
  }

  /**
   * The part of the pressure that follows the modulus while the force is held: d p / d ln(modulus)
   * with force = modulus x g, g = (q - 1) c, q the pressure and c the contact of this free length.
   */
  double following(double free) {
    double q = ends.pressure(free);
    double step = 1e-5 * free;
    double steep = (ends.pressure(free - step) - ends.pressure(free + step)) / (2.0 * step);
    double spread = steep * ends.contact(free);
    return tube * (spread + 2.0 * q * (q - 1.0)) / (spread + 2.0 * (q - 1.0));
  }

  /** Bending strain of the surface at the built-in end. */
  double edge(double free) {
    return ends.curvature(free) * decay * decay * gap() * 0.5 * wall;
  }

  double edgeAtTouch() {
    return ends.touchCurvature() * decay * decay * gap() * 0.5 * wall;
  }

  /** The free length, in units of 1/b, at which a force is held. */
  double freeToHold(double asked) {
    double high = longestFree();
    double low = high;
    do {
      low *= 0.5;
    } while (force(low) < asked);
    // in logarithms: the force runs over many decades of the free length
    double log =
        new BrentSolver(1e-14, 1e-14)
            .solve(ITERATIONS, x -> scaledForce(Math.exp(x), asked), Math.log(low), Math.log(high));
    return Math.exp(log);
  }

  private double scaledForce(double free, double asked) {
    return force(free) / asked - 1.0;
  }

  /** The free length at a pressure, the longest if the pressure is lower than any contact's. */
  double freeAt(double pressure) {
    double high = longestFree();
    if (pressure <= pressure(high)) {
      return high;
    }
    double low = high;
    do {
      low *= 0.5;
    } while (pressure(low) < pressure);
    return new BrentSolver(1e-14, 1e-14)
        .solve(ITERATIONS, x -> pressure(x) / pressure - 1.0, low, high);
  }
}
