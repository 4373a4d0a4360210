package org.flexwright.lattice.cell;

import java.util.Optional;
import org.flexwright.evidence.Source;

/**
 * The body-centred cell. Nodes do not turn under any macroscopic strain, so with n the strut
 * directions and b = 12 I/(A L^2)/(1 + shear), C = rho1 <n n n n + b (sym(1 n n) - n n n n)>; for
 * the directions along the space diagonals K = rho1/9, C' = rho1 b/6, C44 = rho1 (1/9 + b/18).
 */
final class BodyCentred extends FrameCell {

  private static final CellShape SHAPE =
      new CellShape(
          "body-centred",
          Topology.ofEighths(0, 0, 0, 4, 4, 4).joinAll(48).build(),
          0.5 * Math.sqrt(3.0),
          Math.sqrt(0.5),
          0.75 * Math.sqrt(3.0) * Math.PI,
          2.25 * Math.sqrt(2.0));
  static final GuidedElastica STRUT = GuidedElastica.ofSine(1.0 / Math.sqrt(3.0));
  static final PeakStrain PEAK =
      new PeakStrain(
          1.5 * Math.sqrt(2.0),
          new double[] {0.0, 0.05, 0.1, 0.2, 0.3},
          new double[] {0.0, 0.106319, 0.210463, 0.398245, 0.54406});
  private static final JointStiffening JOINTS =
      new JointStiffening(
          new double[] {0.0, 0.1, 0.15, 0.2, 0.25, 0.3, 0.4},
          new double[] {1.0, 1.2690, 1.4545, 1.6932, 1.9850, 2.3545, 3.2190},
          new double[] {1.0, 1.1046, 1.1589, 1.2221, 1.2962, 1.3807, 1.5737},
          new double[] {1.0, 1.0343, 1.0499, 1.0695, 1.0955, 1.1221, 1.1688},
          1.15,
          1.47,
          0.69);

  BodyCentred() {
    super(
        SHAPE,
        Optional.of(JOINTS),
        Source.memory("Ushijima et al. 2011, J. Sandwich Struct. Mater. 13, 303 (Euler limit)"),
        Source.derived("affine strut networks with shear; union volume of the joints"),
        GuidedElastica.SOURCE);
  }

  @Override
  public CubicStiffness centreLine(double x, double poisson) {
    double rho = firstOrderDensity(x);
    Slenderness.poisson(poisson);
    double slope = 12.0 * Slenderness.inertia(x);
    double shear = slope * Slenderness.shearFlexibility(x, poisson);
    double b = slope / (1.0 + shear) / Slenderness.area(x);
    return new CubicStiffness(rho / 9.0, rho * b / 6.0, rho * (1.0 / 9.0 + b / 18.0));
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
