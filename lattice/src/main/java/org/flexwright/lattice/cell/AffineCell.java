package org.flexwright.lattice.cell;

import java.util.List;
import java.util.Optional;
import org.flexwright.evidence.Source;

/**
 * A cell whose nodes all lie at centres of inversion, so that they move with the mean strain.
 *
 * <p>With rho_k the first-order density of a family, b = 12 I/(A L^2)/(1 + p), p = 12 EI/(kappa GA
 * L^2): C11 = sum rho_k (a4 + b (1/3 - a4)), C12 = sum rho_k b4 (1 - b), C44 = sum rho_k (b4 + b h
 * (1/6 - b4)), K = rho1/9. Under shear along the edges, nodes in the middle of faces turn until
 * their moments balance, which leaves of the bending part h = 1 - 3/(4 + p + t (1 + p)) if the four
 * struts of a face node all lie in the face, h = 1 - 3/(8 + 5 p + t (1 + p)) in the octahedral cell
 * (eight struts, whose other ends turn too), with t = GJ/(EI) = 1/(1 + nu); h = 1 if no node turns.
 *
 * <p>Pushed along z with Poisson's ratio v of the cell, a strut stretches by n e n and its ends are
 * offset by w = |e n - n (n e n)|: peak strain |n e n| + 3 x w/(1 + p).
 */
final class AffineCell extends FrameCell {

  /**
   * The struts of one family in a cell.
   *
   * @param family their directions
   * @param c1 first-order density over x^2, x of the shortest struts
   * @param slender their slenderness over that of the shortest struts
   */
  record Struts(StrutFamily family, double c1, double slender) {}

  /** What turns when the cell is sheared along its edges. */
  enum Turning {
    NONE,
    FACE_NODES,
    OCTAHEDRA;

    /** The part of the bending stiffness that is left. */
    double left(double p, double poisson) {
      double t = (1.0 + p) / (1.0 + poisson);
      return switch (this) {
        case NONE -> 1.0;
        case FACE_NODES -> 1.0 - 3.0 / (4.0 + p + t);
        case OCTAHEDRA -> 1.0 - 3.0 / (8.0 + 5.0 * p + t);
      };
    }
  }

  /**
   * When the struts buckle.
   *
   * @param stress critical stress over Es rho1^2; 0 to estimate with Euler's strain, ends pinned
   * @param source where it comes from
   */
  record Buckling(double stress, Source source) {}

  static final double STRAIN_POISSON = 0.3; // of the tabled strut strains and buckling loads

  private final List<Struts> struts;
  private final Turning turning;
  private final Buckling buckling;

  AffineCell(
      CellShape shape,
      List<Struts> struts,
      Turning turning,
      Optional<JointStiffening> joints,
      Buckling buckling,
      Source... sources) {
    super(shape, joints, sources);
    this.struts = List.copyOf(struts);
    this.turning = turning;
    this.buckling = buckling;
  }

  @Override
  public CubicStiffness centreLine(double x, double poisson) {
    Slenderness.check(this, x);
    Slenderness.poisson(poisson);
    double bulk = 0.0;
    double tetragonal = 0.0;
    double c44 = 0.0;
    for (Struts s : struts) {
      double rho = s.c1() * x * x;
      double p = shear(s, x, poisson);
      double b = bending(s, x) / (1.0 + p);
      double a4 = s.family().fourth();
      double b4 = s.family().mixed();
      bulk += rho / 9.0;
      tetragonal += 0.5 * rho * (a4 - b4 + b * (1.0 / 3.0 - a4 + b4));
      // only struts along face diagonals end at nodes that turn
      double left = s.family() == StrutFamily.FACE_DIAGONALS ? turning.left(p, poisson) : 1.0;
      c44 += rho * (b4 + b * left * (1.0 / 6.0 - b4));
    }
    return new CubicStiffness(bulk, tetragonal, c44);
  }

  private static double bending(Struts s, double x) {
    double own = x * s.slender();
    return 0.75 * own * own; // 12 I/(A L^2)
  }

  private static double shear(Struts s, double x, double poisson) {
    return Slenderness.shearNumber(x * s.slender(), poisson);
  }

  /** The law is exact for the frame, so it holds up to merging. */
  @Override
  double peakLimit() {
    return mergingSlenderness();
  }

  @Override
  double peak(double x) {
    double v = centreLine(x, STRAIN_POISSON).poisson12();
    double most = 0.0;
    for (Struts s : struts) {
      double[] stretch = s.family().stretches(v);
      double[] offset = s.family().offsets(v);
      double bend = 3.0 * x * s.slender() / (1.0 + shear(s, x, STRAIN_POISSON));
      for (int i = 0; i < stretch.length; i++) {
        most = Math.max(most, Math.abs(stretch[i]) + bend * offset[i]);
      }
    }
    return most;
  }

  @Override
  public double axialStrain(double x) {
    double v = centreLine(x, STRAIN_POISSON).poisson12();
    double most = 0.0;
    for (Struts s : struts) {
      most = Math.max(most, s.family().stretches(v)[0]);
    }
    return most;
  }

  @Override
  public CompressionPath path(double x) {
    CubicStiffness beams = centreLine(x, STRAIN_POISSON);
    double rho = firstOrderDensity(x);
    double stretch = axialStrain(x);
    boolean estimated = buckling.stress() == 0.0;
    double critical =
        estimated ? pinned(x, beams) : buckling.stress() * rho * rho / beams.young100();
    double thickest = struts.stream().mapToDouble(Struts::slender).max().orElse(1.0);
    return new BucklingPath(
        name(), critical, estimated, peak(x), stretch, x * thickest, buckling.source());
  }

  /** The least macroscopic strain at which a strut with pinned ends buckles. */
  private double pinned(double x, CubicStiffness beams) {
    double v = beams.poisson12();
    double least = GuidedElastica.MOST;
    for (Struts s : struts) {
      least = Math.min(least, eulerStrain(x * s.slender(), 1.0) / s.family().stretches(v)[0]);
    }
    return least;
  }
}
