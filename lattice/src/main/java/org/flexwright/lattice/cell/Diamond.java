package org.flexwright.lattice.cell;

import java.util.Optional;
import org.flexwright.evidence.Source;

/**
 * The diamond cell and the cell of rhombic dodecahedra, whose frame is two of diamond's: at equal
 * slenderness it is m = 2 times as stiff (m = 1 for diamond). 1/E100 = (2/9 L^4/(EI) + 4/3 L^2/(EA)
 * + 8/3 L^2/(kappa GA))/(sqrt3 m), 1/C44 = (2/9 L^4/(EI) + 16/3 L^2/(EA) + 8/3 L^2/(kappa
 * GA))/(sqrt3 m), K = rho1/9.
 */
final class Diamond extends FrameCell {

  private static final double ROOT3 = Math.sqrt(3.0);
  private final double frames;

  private Diamond(CellShape shape, double frames, JointStiffening joints) {
    super(
        shape,
        Optional.of(joints),
        Source.derived("diamond frame with stretch and shear; union volume of the joints"),
        GuidedElastica.SOURCE);
    this.frames = frames;
  }

  static Diamond diamond() {
    return new Diamond(
        new CellShape(
            "diamond",
            Topology.ofEighths(
                    0, 0, 0, 4, 4, 0, 4, 0, 4, 0, 4, 4, //
                    2, 2, 2, 6, 6, 2, 6, 2, 6, 2, 6, 6)
                .joinAll(12)
                .build(),
            0.25 * ROOT3,
            Math.sqrt(2.0),
            3.0 * ROOT3 * Math.PI / 16.0,
            9.0 * Math.sqrt(2.0) / 32.0),
        1.0,
        new JointStiffening(
            new double[] {0.0, 0.15, 0.2, 0.3},
            new double[] {1.0, 1.094, 1.1712, 1.2967},
            new double[] {1.0, 1.0845, 1.1136, 1.1761},
            new double[] {1.0, 1.1786, 1.2837, 1.4527},
            0.805,
            1.237,
            1.012));
  }

  static Diamond rhombic() {
    return new Diamond(
        new CellShape(
            "rhombic dodecahedral",
            Topology.ofEighths(
                    4, 0, 0, 0, 4, 0, 0, 0, 4, 4, 4, 4, //
                    2, 2, 2, 2, 2, 6, 2, 6, 2, 2, 6, 6, 6, 2, 2, 6, 2, 6, 6, 6, 2, 6, 6, 6)
                .joinAll(12)
                .build(),
            0.25 * ROOT3,
            Math.sqrt(0.5),
            3.0 * ROOT3 * Math.PI / 8.0,
            27.0 * Math.sqrt(2.0) / 32.0),
        2.0,
        new JointStiffening(
            new double[] {0.0, 0.1, 0.2, 0.3},
            new double[] {1.0, 1.1438, 1.3754, 1.7284},
            new double[] {1.0, 1.0712, 1.157, 1.2766},
            new double[] {1.0, 1.1839, 1.4351, 1.7382}));
  }

  @Override
  public CubicStiffness centreLine(double x, double poisson) {
    double rho = firstOrderDensity(x);
    Slenderness.poisson(poisson);
    double bend = 2.0 / 9.0 / Slenderness.inertia(x);
    double shear = 8.0 / 3.0 * Slenderness.shearFlexibility(x, poisson);
    double stretch = 4.0 / 3.0 / Slenderness.area(x);
    double young = frames * ROOT3 / (bend + stretch + shear);
    double c44 = frames * ROOT3 / (bend + 4.0 * stretch + shear);
    return CubicStiffness.ofYoung(young, rho / 9.0, c44);
  }

  @Override
  double peak(double x) {
    return BodyCentred.PEAK.at(x); // the same strut at the same angle
  }

  @Override
  public CompressionPath path(double x) {
    Slenderness.check(this, x);
    return BodyCentred.STRUT;
  }
}
