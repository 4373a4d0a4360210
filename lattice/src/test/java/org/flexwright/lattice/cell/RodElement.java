package org.flexwright.lattice.cell;

import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;

/**
 * A short piece of a geometrically exact rod (Reissner 1972; Simo 1985) between two sections that
 * move and turn by any amount.
 *
 * <p>With R_a, R_b the turns of the end sections, third axis along the rod, and d from one to the
 * other: bend and twist are psi/h, where R_b = R_a exp(psi); shear and stretch are R_m^T d/h - e3
 * in the section halfway, R_m = R_a exp(psi/2). The energy is h/2 times the squares by their
 * stiffness, so a rigid turn of both ends stores nothing. Its nine forces belong to d and to a turn
 * of a and of b about axes that stay in space.
 */
final class RodElement {

  /** Stiffness of a section: EA, kappa GA, EI, GJ. */
  record Section(double stretch, double shear, double bend, double twist) {

    /** A round rod of diameter d in units of EI; shear factor of Cowper 1966. */
    static Section round(double d, double poisson) {
      double stretch = 16.0 / (d * d); // A/I
      double g = 0.5 / (1.0 + poisson);
      double kappa = 6.0 * (1.0 + poisson) / (7.0 + 6.0 * poisson);
      return new Section(stretch, kappa * g * stretch, 1.0, 2.0 * g);
    }

    /**
     * With the residual bending flexibility (MacNeal 1978, from memory) in the shear of an element
     * of length h: the answer at small strain is then that of the beam for any h.
     */
    Section corrected(double h) {
      return new Section(stretch, 1.0 / (1.0 / shear + h * h / (12.0 * bend)), bend, twist);
    }

    Vector3D force(Vector3D strain) {
      return new Vector3D(shear * strain.getX(), shear * strain.getY(), stretch * strain.getZ());
    }

    Vector3D moment(Vector3D curvature) {
      return new Vector3D(
          bend * curvature.getX(), bend * curvature.getY(), twist * curvature.getZ());
    }
  }

  private static final RotationConvention ACTIVE = RotationConvention.VECTOR_OPERATOR;
  private static final double STEP = 1e-6; // error of the tangent 1e-6 of it, of the forces none

  private final Section section;
  private final double h;

  RodElement(Section section, double h) {
    this.section = section;
    this.h = h;
  }

  /** The turn of a rotation vector. */
  static Rotation exp(Vector3D turn) {
    double angle = turn.getNorm();
    return angle == 0.0 ? Rotation.IDENTITY : new Rotation(turn, angle, ACTIVE);
  }

  /** A turn after another. */
  static Rotation after(Vector3D turn, Rotation r) {
    return exp(turn).compose(r, ACTIVE);
  }

  private static Vector3D between(Rotation a, Rotation b) {
    Rotation q = a.revert().compose(b, ACTIVE);
    return q.getAxis(ACTIVE).scalarMultiply(q.getAngle());
  }

  private Vector3D strain(Vector3D d, Rotation a, Vector3D psi) {
    Rotation mid = a.compose(exp(psi.scalarMultiply(0.5)), ACTIVE);
    return mid.applyInverseTo(d).scalarMultiply(1.0 / h).subtract(Vector3D.PLUS_K);
  }

  double energy(Vector3D d, Rotation a, Rotation b) {
    Vector3D psi = between(a, b);
    Vector3D strain = strain(d, a, psi);
    Vector3D curvature = psi.scalarMultiply(1.0 / h);
    return 0.5
        * h
        * (section.force(strain).dotProduct(strain)
            + section.moment(curvature).dotProduct(curvature));
  }

  /** The slopes of the energy: by d, by a turn of a, by a turn of b. */
  double[] forces(Vector3D d, Rotation a, Rotation b) {
    Vector3D psi = between(a, b);
    Vector3D half = psi.scalarMultiply(0.5);
    Vector3D n = a.applyTo(exp(half).applyTo(section.force(strain(d, a, psi))));
    Vector3D lever = n.crossProduct(d); // belongs to a turn of the section halfway
    Vector3D moment = section.moment(psi.scalarMultiply(1.0 / h));
    Vector3D onMid = jacobian(half.negate(), a.applyInverseTo(lever)).scalarMultiply(0.5);
    Vector3D atB = a.applyTo(inverseJacobian(psi.negate(), onMid.add(moment)));
    Vector3D atA = lever.subtract(atB);
    return new double[] {
      n.getX(), n.getY(), n.getZ(), //
      atA.getX(), atA.getY(), atA.getZ(), //
      atB.getX(), atB.getY(), atB.getZ()
    };
  }

  /** The slopes of the forces, by central differences. */
  double[][] tangent(Vector3D d, Rotation a, Rotation b) {
    double[][] k = new double[9][9];
    for (int j = 0; j < 9; j++) {
      double[] up = moved(d, a, b, j, STEP);
      double[] down = moved(d, a, b, j, -STEP);
      for (int i = 0; i < 9; i++) {
        k[i][j] = (up[i] - down[i]) / (2.0 * STEP);
      }
    }
    return k;
  }

  private double[] moved(Vector3D d, Rotation a, Rotation b, int j, double by) {
    double[] axis = new double[3];
    axis[j % 3] = by;
    Vector3D v = new Vector3D(axis);
    return switch (j / 3) {
      case 0 -> forces(d.add(v), a, b);
      case 1 -> forces(d, after(v, a), b);
      default -> forces(d, a, after(v, b));
    };
  }

  /** What the turn exp(p) turns further by if p grows by v: exp(p + v) = exp(J v) exp(p). */
  private static Vector3D jacobian(Vector3D p, Vector3D v) {
    double t2 = p.getNormSq();
    double t = Math.sqrt(t2);
    double c1 = t < 1e-3 ? 0.5 - t2 / 24.0 : (1.0 - Math.cos(t)) / t2;
    double c2 = t < 1e-3 ? 1.0 / 6.0 - t2 / 120.0 : (t - Math.sin(t)) / (t2 * t);
    Vector3D pv = p.crossProduct(v);
    return new Vector3D(1.0, v, c1, pv, c2, p.crossProduct(pv));
  }

  private static Vector3D inverseJacobian(Vector3D p, Vector3D v) {
    double t2 = p.getNormSq();
    double t = Math.sqrt(t2);
    double c = t < 1e-3 ? 1.0 / 12.0 + t2 / 720.0 : (1.0 - 0.5 * t / Math.tan(0.5 * t)) / t2;
    Vector3D pv = p.crossProduct(v);
    return new Vector3D(1.0, v, -0.5, pv, c, p.crossProduct(pv));
  }
}
