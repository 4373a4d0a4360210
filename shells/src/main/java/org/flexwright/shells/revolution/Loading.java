package org.flexwright.shells.revolution;

/**
 * What pushes a shell: a load factor times a pressure inside, dead forces on unknowns and the
 * weight of a liquid, on top of what stands.
 */
final class Loading {

  private final double standing;
  private final double pressure;
  private final double[] held;
  private final double[] force;
  private final double standingHead;
  private final double head;

  /**
   * A loading.
   *
   * @param standing pressure that does not change, pascals
   * @param pressure pressure per load factor
   * @param held forces that do not change, newtons over the whole circumference, one per unknown
   * @param force forces per load factor
   */
  Loading(double standing, double pressure, double[] held, double[] force) {
    this(standing, pressure, held, force, 0.0, 0.0);
  }

  private Loading(
      double standing,
      double pressure,
      double[] held,
      double[] force,
      double standingHead,
      double head) {
    this.standingHead = standingHead;
    this.head = head;
    this.standing = standing;
    this.pressure = pressure;
    this.held = held.clone();
    this.force = force.clone();
  }

  static Loading pressure(int unknowns) {
    return new Loading(0.0, 1.0, new double[unknowns], new double[unknowns]);
  }

  static Loading force(int unknowns, int at) {
    double[] force = new double[unknowns];
    force[at] = 1.0;
    return new Loading(0.0, 0.0, new double[unknowns], force);
  }

  Loading under(double of) {
    return new Loading(of, pressure, held, force, standingHead, head);
  }

  /** With one more standing force. */
  Loading holding(double newtons, int at) {
    double[] more = held.clone();
    more[at] += newtons;
    return new Loading(standing, pressure, more, force, standingHead, head);
  }

  /** A load factor times forces and the weight of the liquid. */
  static Loading growing(double[] forces) {
    return new Loading(0.0, 0.0, new double[forces.length], forces, 0.0, 1.0);
  }

  /** With standing forces and the weight of the liquid. */
  Loading carrying(double[] forces) {
    double[] more = held.clone();
    for (int i = 0; i < more.length; i++) {
      more[i] += forces[i];
    }
    return new Loading(standing, pressure, more, force, 1.0, head);
  }

  /** The share of the liquid's weight at a load factor. */
  double headAt(double factor) {
    return standingHead + factor * head;
  }

  double headPerFactor() {
    return head;
  }

  /** The pressure at a load factor. */
  double pressureAt(double factor) {
    return standing + factor * pressure;
  }

  double perFactor() {
    return pressure;
  }

  /** Adds the dead forces at a load factor. */
  void addForces(double factor, double[] out) {
    for (int i = 0; i < out.length; i++) {
      out[i] += held[i] + factor * force[i];
    }
  }

  /** Adds what the dead forces grow by per load factor. */
  void addPattern(double[] out) {
    for (int i = 0; i < out.length; i++) {
      out[i] += force[i];
    }
  }
}
