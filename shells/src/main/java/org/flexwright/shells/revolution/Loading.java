package org.flexwright.shells.revolution;

/**
 * What pushes a shell: a load factor times a pressure inside and times dead forces on unknowns, on
 * top of a standing pressure and standing forces.
 *
 * @param standing pressure that does not change, pascals
 * @param pressure pressure per load factor
 * @param held forces that do not change, newtons over the whole circumference, one per unknown
 * @param force forces per load factor
 */
@SuppressWarnings("ArrayRecordComponent") // seen by this package only, never compared
record Loading(double standing, double pressure, double[] held, double[] force) {

  static Loading pressure(int unknowns) {
    return new Loading(0.0, 1.0, new double[unknowns], new double[unknowns]);
  }

  static Loading force(int unknowns, int at) {
    double[] force = new double[unknowns];
    force[at] = 1.0;
    return new Loading(0.0, 0.0, new double[unknowns], force);
  }

  Loading under(double of) {
    return new Loading(of, pressure, held, force);
  }
}
