package org.flexwright.law;

import org.flexwright.internal.Require;

/**
 * A strain-energy law W(l1, l2, l3) of an incompressible isotropic elastomer.
 *
 * <p>Open to users: implement the three functions with exact derivatives and have {@link
 * LawCheck#of} judge them. This is the one public interface of the library on bare numbers, since
 * solvers call it in their innermost loops: stretches are dimensionless, energies and stresses are
 * in pascals. Implementations allocate nothing, keep no state and are thread-safe.
 *
 * <p>The law is a function of three independent stretches; incompressibility is imposed by whoever
 * uses it, through a pressure p: nominal stress P_i = dW/dl_i - p / l_i.
 */
public interface StrainEnergy {

  /**
   * The energy per reference volume, zero at rest.
   *
   * @param l1 first principal stretch, above 0
   * @param l2 second principal stretch, above 0
   * @param l3 third principal stretch, above 0
   * @return W in pascals
   */
  double energy(double l1, double l2, double l3);

  /**
   * The first derivatives dW/dl_i.
   *
   * @param l1 first principal stretch
   * @param l2 second principal stretch
   * @param l3 third principal stretch
   * @param out three places for dW/dl1, dW/dl2, dW/dl3 in pascals
   */
  void gradient(double l1, double l2, double l3, double[] out);

  /**
   * The second derivatives of W by the stretches.
   *
   * @param l1 first principal stretch
   * @param l2 second principal stretch
   * @param l3 third principal stretch
   * @param out six places for the 11, 22, 33, 12, 13, 23 derivatives in pascals
   */
  void hessian(double l1, double l2, double l3, double[] out);

  /**
   * First and second derivatives at once, as a solver asks for them. A law whose derivatives share
   * work may say so here; it must write what the other two methods write.
   *
   * @param l1 first principal stretch
   * @param l2 second principal stretch
   * @param l3 third principal stretch
   * @param gradient receives the three first derivatives
   * @param hessian receives the six second derivatives
   */
  default void derivatives(double l1, double l2, double l3, double[] gradient, double[] hessian) {
    gradient(l1, l2, l3, gradient);
    hessian(l1, l2, l3, hessian);
  }

  /**
   * The shear modulus at rest, G = E/3.
   *
   * @return G in pascals
   */
  double shearModulus();

  /**
   * The stretches up to which the law may be used: stable, below locking, inside its data.
   *
   * @return the range
   */
  StretchRange range();

  /**
   * Young's modulus at rest, E = 3 G.
   *
   * @return E in pascals
   */
  default double youngModulus() {
    return 3.0 * shearModulus();
  }

  /**
   * This law with every energy and stress multiplied by the same number, its shape unchanged.
   *
   * @param factor the number, above 0
   * @return the new law
   * @throws org.flexwright.InvalidInputException if the factor is not above 0
   */
  default StrainEnergy scaled(double factor) {
    Require.positive("stress factor", factor, "");
    return factor == 1.0 ? this : new ScaledLaw(this, factor);
  }
}
