package org.flexwright.hardness.contact;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Area;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;

/**
 * A rigid, smooth indenter of revolution pressed into an elastic half-space.
 *
 * <p>F = 2 E / (1 - nu^2) A, with A = int_0^d a(x) dx, the radius of contact summed over the depth.
 *
 * <p>F force; E Young's modulus at small strain; nu Poisson's ratio, 0 to 0.5; d depth; a radius of
 * contact. Every shape gives a(d) and A(d) in closed form; the law is linear in E, so force,
 * modulus and depth follow from one another.
 *
 * <p>Range: small strain. Durometers strain the surface by tens of per cent, so their moduli from
 * here are a convention that rubber keeps well and soft, locking materials do not. No friction, no
 * adhesion.
 *
 * <p>Source: I. N. Sneddon, Int. J. Eng. Sci. 3 (1965) 47; the shapes name their own.
 *
 * <pre>{@code
 * Indenter ball = new Ball(Length.mm(1.25));
 * ball.force(Length.mm(0.5), Pressure.mpa(2), 0.5)      // 1.406 N
 * }</pre>
 */
public sealed interface Indenter permits FlatPunch, Frustum, Cone, RoundedCone, Ball {

  /**
   * The radius of contact at a depth.
   *
   * @param depth the depth, not negative
   * @return the radius
   * @throws org.flexwright.InvalidInputException if the depth is negative
   */
  Length contactRadius(Length depth);

  /**
   * The depth at which the contact has a given radius.
   *
   * @param contactRadius the radius, not negative
   * @return the depth, nothing up to the radius of a flat face
   * @throws org.flexwright.InvalidInputException if the radius is negative
   */
  Length depthAt(Length contactRadius);

  /**
   * The force over twice the plane-strain modulus, F (1 - nu^2) / (2 E): the radius of contact
   * summed over the depth.
   *
   * @param depth the depth, not negative
   * @return the area A
   * @throws org.flexwright.InvalidInputException if the depth is negative
   */
  Area forceArea(Length depth);

  /**
   * The force that holds a depth.
   *
   * @param depth the depth, not negative
   * @param modulus Young's modulus, above zero
   * @param poisson Poisson's ratio, 0 to 0.5
   * @return the force
   * @throws org.flexwright.InvalidInputException if an input is out of its bounds
   */
  default Force force(Length depth, Pressure modulus, double poisson) {
    double e = Require.positive("modulus under the indenter", modulus.pa(), "Pa");
    return Force.newtons(2.0 * e / planeStrain(poisson) * forceArea(depth).m2());
  }

  /**
   * Young's modulus from a depth and its force.
   *
   * @param depth the depth, above zero
   * @param force the force, not negative
   * @param poisson Poisson's ratio, 0 to 0.5
   * @return the modulus
   * @throws org.flexwright.InvalidInputException if an input is out of its bounds
   */
  default Pressure modulus(Length depth, Force force, double poisson) {
    Require.positive("depth of the indenter", depth.m(), "m");
    double newtons = Require.notNegative("force on the indenter", force.newtons(), "N");
    return Pressure.pa(newtons * planeStrain(poisson) / (2.0 * forceArea(depth).m2()));
  }

  /**
   * The depth under a force, solved to twelve digits.
   *
   * @param force the force, above zero
   * @param modulus Young's modulus, above zero
   * @param poisson Poisson's ratio, 0 to 0.5
   * @return the depth
   * @throws org.flexwright.InvalidInputException if an input is out of its bounds or the depth
   *     would be outside 1e-12 m to 1e6 m
   */
  default Length depthUnder(Force force, Pressure modulus, double poisson) {
    double newtons = Require.positive("force on the indenter", force.newtons(), "N");
    double e = Require.positive("modulus under the indenter", modulus.pa(), "Pa");
    double target = Math.log(newtons * planeStrain(poisson) / (2.0 * e));
    double least = Math.log(1e-12);
    double most = Math.log(1e6);
    Require.that(
        target >= Math.log(forceArea(Length.m(1e-12)).m2())
            && target <= Math.log(forceArea(Length.m(1e6)).m2()),
        "force on the indenter",
        force,
        "a force that the modulus balances at a depth of 1e-12 m to 1e6 m",
        "check force and modulus");
    double log =
        new BrentSolver(1e-15, 1e-13)
            .solve(200, x -> Math.log(forceArea(Length.m(Math.exp(x))).m2()) - target, least, most);
    return Length.m(Math.exp(log));
  }

  /** 1 - nu^2. */
  private static double planeStrain(double poisson) {
    double nu = Require.between("Poisson's ratio", poisson, 0.0, 0.5, "");
    return 1.0 - nu * nu;
  }
}
