package org.flexwright.law;

import org.flexwright.internal.Require;
import org.flexwright.quantity.Pressure;

/**
 * The homogeneous deformations of an incompressible elastomer that tests are made of.
 *
 * <p>Formulas, with W_i = dW/dl_i at the stretches named: uniaxial (l, l^-1/2, l^-1/2), P = (l1 W_1
 * - l2 W_2)/l; equibiaxial (l, l, l^-2), P = (l1 W_1 - l3 W_3)/l; planar (l, 1, 1/l), P = (l1 W_1 -
 * l3 W_3)/l. True stress s = l P.
 *
 * <p>JShell: {@code Deformation.UNIAXIAL.nominalStress(NeoHookean.of(mpa(0.4)), 2)}
 */
public enum Deformation {
  /** One direction pulled or pushed, sides free. */
  UNIAXIAL,
  /** Two directions alike, thickness free. */
  EQUIBIAXIAL,
  /** One direction pulled, one held, thickness free (pure shear). */
  PLANAR;

  /**
   * The nominal stress: force per reference area.
   *
   * @param law the law
   * @param stretch the stretch, above 0
   * @return P
   * @throws org.flexwright.InvalidInputException if the stretch is not above 0
   */
  public Pressure nominalStress(StrainEnergy law, double stretch) {
    return Pressure.pa(trueStressPa(law, stretch) / stretch);
  }

  /**
   * The true stress: force per deformed area.
   *
   * @param law the law
   * @param stretch the stretch, above 0
   * @return s
   * @throws org.flexwright.InvalidInputException if the stretch is not above 0
   */
  public Pressure trueStress(StrainEnergy law, double stretch) {
    return Pressure.pa(trueStressPa(law, stretch));
  }

  private double trueStressPa(StrainEnergy law, double stretch) {
    Require.positive("stretch", stretch, "");
    double[] g = new double[3];
    switch (this) {
      case UNIAXIAL -> {
        double side = 1.0 / Math.sqrt(stretch);
        law.gradient(stretch, side, side, g);
        return stretch * g[0] - side * g[1];
      }
      case EQUIBIAXIAL -> {
        double thin = 1.0 / (stretch * stretch);
        law.gradient(stretch, stretch, thin, g);
        return stretch * g[0] - thin * g[2];
      }
      case PLANAR -> {
        law.gradient(stretch, 1.0, 1.0 / stretch, g);
        return stretch * g[0] - g[2] / stretch;
      }
    }
    throw new AssertionError(this);
  }

  /**
   * The three principal stretches of this deformation.
   *
   * @param stretch the stretch, above 0
   * @return a fresh array of three stretches
   */
  public double[] stretches(double stretch) {
    Require.positive("stretch", stretch, "");
    return switch (this) {
      case UNIAXIAL -> new double[] {stretch, 1.0 / Math.sqrt(stretch), 1.0 / Math.sqrt(stretch)};
      case EQUIBIAXIAL -> new double[] {stretch, stretch, 1.0 / (stretch * stretch)};
      case PLANAR -> new double[] {stretch, 1.0, 1.0 / stretch};
    };
  }
}
