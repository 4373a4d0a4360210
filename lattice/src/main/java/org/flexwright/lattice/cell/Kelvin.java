package org.flexwright.lattice.cell;

import java.util.Optional;
import org.flexwright.evidence.Source;

/**
 * The Kelvin cell. With t = GJ/(EI) = 1/(1 + nu): 1/E100 = L^4/(6 sqrt2 EI) + sqrt2 L^2 (1/(EA) +
 * 1/(kappa GA)), K = rho1/9, 1/C44 = (8 + t)/(5 + t) L^4/(3 sqrt2 EI) + 2 sqrt2 L^2 (1/(EA) +
 * 1/(kappa GA)).
 */
final class Kelvin extends FrameCell {

  private static final double ROOT2 = Math.sqrt(2.0);
  private static final CellShape SHAPE =
      new CellShape(
          "Kelvin",
          Topology.ofEighths(
                  2, 0, 4, 2, 4, 0, 0, 2, 4, 4, 2, 0, 0, 4, 2, 4, 0, 2, //
                  6, 0, 4, 6, 4, 0, 0, 6, 4, 4, 6, 0, 0, 4, 6, 4, 0, 6)
              .joinAll(8)
              .build(),
          0.25 * ROOT2,
          1.0,
          3.0 * ROOT2 * Math.PI / 16.0,
          1.0 / 3.0);
  static final GuidedElastica STRUT = GuidedElastica.ofSine(1.0 / ROOT2);
  private static final PeakStrain PEAK =
      new PeakStrain(
          3.0,
          new double[] {0.0, 0.05, 0.1, 0.2, 0.3},
          new double[] {0.0, 0.150763, 0.298689, 0.563506, 0.76452});
  private static final JointStiffening JOINTS =
      new JointStiffening(
          new double[] {0.0, 0.1, 0.15, 0.2, 0.3, 0.4},
          new double[] {1.0, 1.1200, 1.1969, 1.3101, 1.5324, 1.7654},
          new double[] {1.0, 1.0449, 1.0746, 1.1088, 1.1650, 1.2331},
          new double[] {1.0, 1.0295, 1.0726, 1.1237, 1.2090, 1.3103},
          1.055,
          1.267,
          0.98);

  Kelvin() {
    super(
        SHAPE,
        Optional.of(JOINTS),
        Source.memory("Zhu, Knott and Mills 1997, J. Mech. Phys. Solids 45, 319"),
        Source.memory("Warren and Kraynik 1997, J. Appl. Mech. 64, 787"),
        Source.derived("Kelvin frame with stretch and shear; union volume of the joints"),
        GuidedElastica.SOURCE);
  }

  @Override
  public CubicStiffness centreLine(double x, double poisson) {
    double rho = firstOrderDensity(x);
    Slenderness.poisson(poisson);
    double bend = 1.0 / (ROOT2 * Slenderness.inertia(x));
    double rest = 1.0 / Slenderness.area(x) + Slenderness.shearFlexibility(x, poisson);
    double t = 1.0 / (1.0 + poisson);
    double young = 1.0 / (bend / 6.0 + ROOT2 * rest);
    double c44 = 1.0 / ((8.0 + t) / (5.0 + t) * bend / 3.0 + 2.0 * ROOT2 * rest);
    return CubicStiffness.ofYoung(young, rho / 9.0, c44);
  }

  @Override
  double peak(double x) {
    return PEAK.at(x);
  }

  @Override
  public CompressionPath path(double x) {
    Slenderness.check(this, x);
    return STRUT;
  }
}
