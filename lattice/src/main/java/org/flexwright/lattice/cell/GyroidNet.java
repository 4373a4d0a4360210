package org.flexwright.lattice.cell;

import java.util.Optional;
import org.flexwright.evidence.Source;

/**
 * The net along the channels of the gyroid: three struts at a node, all in one plane. With t =
 * GJ/(EI) = 1/(1 + nu): 1/C' = sqrt2 ((7 + 3 t)/(2 (1 + 3 t)) L^4/(EI) + 2 L^2/(EA) + 6 L^2/(kappa
 * GA)), 1/C44 = sqrt2 ((5 + 2 t)/(6 (1 + t)) L^4/(EI) + 4 L^2/(EA) + 4 L^2/(kappa GA)), K = rho1/9.
 */
final class GyroidNet extends FrameCell {

  private static final double ROOT2 = Math.sqrt(2.0);
  private static final PeakStrain PEAK =
      new PeakStrain(
          1.15947,
          new double[] {0.0, 0.01, 0.05, 0.1, 0.2, 0.3},
          new double[] {0.0, 0.0116202, 0.0584866, 0.117382, 0.232794, 0.339771});
  private static final CellShape SHAPE =
      new CellShape(
          "gyroid net",
          Topology.ofEighths(
                  1, 1, 1, 3, 7, 5, 7, 5, 3, 5, 3, 7, //
                  5, 5, 5, 7, 3, 1, 3, 1, 7, 1, 7, 3)
              .joinAll(8)
              .build(),
          0.25 * ROOT2,
          Math.sqrt(3.0),
          3.0 * ROOT2 * Math.PI / 32.0,
          Math.sqrt(6.0) / 24.0);

  private final CompressionPath path;

  GyroidNet() {
    super(
        SHAPE,
        Optional.empty(),
        Source.derived("gyroid net frame, its two shear compliances; union volume of the joints"),
        Source.memory(
            "Khaderi, Deshpande and Fleck 2014, Int. J. Solids Struct. 51, 3866, E100 = 0.426 rho^2"));
    path = new BorrowedPath(name(), Kelvin.STRUT);
  }

  @Override
  public CubicStiffness centreLine(double x, double poisson) {
    double rho = firstOrderDensity(x);
    Slenderness.poisson(poisson);
    double bend = 1.0 / Slenderness.inertia(x);
    double stretch = 1.0 / Slenderness.area(x);
    double shear = Slenderness.shearFlexibility(x, poisson);
    double t = 1.0 / (1.0 + poisson);
    double soft = (7.0 + 3.0 * t) / (2.0 * (1.0 + 3.0 * t)) * bend + 2.0 * stretch + 6.0 * shear;
    double along = (5.0 + 2.0 * t) / (6.0 * (1.0 + t)) * bend + 4.0 * stretch + 4.0 * shear;
    return new CubicStiffness(rho / 9.0, 1.0 / (ROOT2 * soft), 1.0 / (ROOT2 * along));
  }

  @Override
  double peak(double x) {
    return PEAK.at(x);
  }

  @Override
  public CompressionPath path(double x) {
    Slenderness.check(this, x);
    return path;
  }
}
