package org.flexwright.shells.revolution;

/**
 * What pushes a shell: a load factor times a pressure inside and times a dead force on one unknown,
 * on top of a standing pressure and a standing force on one unknown.
 *
 * @param standing pressure that does not change, pascals
 * @param pressure pressure per load factor
 * @param held force that does not change, newtons over the whole circumference
 * @param force force per load factor
 * @param at the unknown that both forces push
 */
record Loading(double standing, double pressure, double held, double force, int at) {

  static Loading ofPressure() {
    return new Loading(0.0, 1.0, 0.0, 0.0, 0);
  }

  static Loading ofForce(int at) {
    return new Loading(0.0, 0.0, 0.0, 1.0, at);
  }

  Loading under(double of) {
    return new Loading(of, pressure, held, force, at);
  }

  Loading holding(double newtons, int unknown) {
    return new Loading(standing, pressure, newtons, force, unknown);
  }
}
