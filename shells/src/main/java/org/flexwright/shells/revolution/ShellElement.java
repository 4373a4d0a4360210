package org.flexwright.shells.revolution;

/**
 * A two-node element of a shell of revolution, exact for any displacement and turn, with one point
 * along the meridian (which does not lock).
 *
 * <p>Unknowns of a node: radius r, height z, turn p of the director. At mid-length the line has the
 * stretch l and the angle a, the director the angle f = f0 + (p1 + p2)/2. The angle of shear, a -
 * f, counts by c = sqrt(5/6): e = l cos c(a - f), g = l sin c(a - f), which is the usual share of
 * shear for small angles and costs energy for every angle; a factor on the shear alone would let
 * the director fall over once the wall is stretched by two. The reference length is the chord, so
 * that the element is free of strain at rest. Energies are for the whole turn, 2 pi. Strains of the
 * wall: see {@link WallSection}.
 *
 * <p>Work space of one solver; not thread-safe.
 */
final class ShellElement {

  private static final int N = 6;
  private static final int S = WallSection.STRAINS;
  static final int ALL = 7; // e, k, r, q, g, height, angle
  private static final double TURN = 2.0 * Math.PI;
  static final double SHEAR = Math.sqrt(5.0 / 6.0);

  private final WallSection wall;
  private final double[] slopes = new double[ALL * N]; // strain by unknown
  private final double[] product = new double[ALL * N];
  private final double[] first = new double[ALL];
  private final double[] second = new double[ALL * ALL];
  private final double[] all = new double[ALL];
  private final Contact contact;

  final double[] force = new double[N];
  final double[] tangent = new double[N * N]; // upper half
  double energy;
  double touching; // potential of the contact pressure
  double e;
  double k;
  double r;
  double q;
  double g;
  private double cos;
  private double stretch;
  private double tr; // the line's direction
  private double tz;
  private double cosShear;
  private double sinShear;

  ShellElement(WallSection wall, Contact contact) {
    this.wall = wall;
    this.contact = contact;
  }

  /** Strains of element i in state x. */
  void strains(ShellMesh mesh, int i, double[] x) {
    int n = 3 * i;
    double length = mesh.length[i];
    double run = (x[n + 3] - x[n]) / length;
    double rise = (x[n + 4] - x[n + 1]) / length;
    double f = mesh.angle[i] + 0.5 * (x[n + 2] + x[n + 5]);
    cos = Math.cos(f);
    q = Math.sin(f);
    k = mesh.sections[i].curvature() + (x[n + 5] - x[n + 2]) / length;
    r = 0.5 * (x[n] + x[n + 3]);
    stretch = Math.sqrt(run * run + rise * rise);
    tr = run / stretch;
    tz = rise / stretch;
    double shear = SHEAR * Math.atan2(rise * cos - run * q, run * cos + rise * q);
    cosShear = Math.cos(shear);
    sinShear = Math.sin(shear);
    e = stretch * cosShear;
    g = stretch * sinShear;
  }

  /**
   * Energy, forces and tangent of element i in state x.
   *
   * @return whether the element can exist
   */
  boolean at(ShellMesh mesh, int i, double[] x) {
    strains(mesh, i, x);
    boolean crossed = x[3 * i] < 0.0 || x[3 * i + 3] < 0.0; // a node beyond the axis
    if (crossed || !(r > 0.0) || !wall.at(mesh.sections[i], e, k, r, q, g)) {
      return false;
    }
    double length = mesh.length[i];
    double scale = TURN * length;
    energy = scale * wall.energy;
    touching = 0.0;
    fillSlopes(length);
    int used = S;
    System.arraycopy(wall.first, 0, first, 0, S);
    if (contact.none()) {
      System.arraycopy(wall.second, 0, second, 0, S * S);
    } else {
      used = ALL;
      touch(mesh, i, x, scale);
    }
    for (int a = 0; a < N; a++) {
      double sum = 0.0;
      for (int s = 0; s < used; s++) {
        sum += first[s] * slopes[N * s + a];
      }
      force[a] = scale * sum;
    }
    for (int s = 0; s < used; s++) {
      for (int a = 0; a < N; a++) {
        double sum = 0.0;
        for (int t = 0; t < used; t++) {
          sum += second[used * s + t] * slopes[N * t + a];
        }
        product[N * s + a] = sum;
      }
    }
    for (int a = 0; a < N; a++) {
      for (int b = a; b < N; b++) {
        double sum = 0.0;
        for (int s = 0; s < used; s++) {
          sum += slopes[N * s + a] * product[N * s + b];
        }
        tangent[N * a + b] = scale * sum;
      }
    }
    addCurved(scale, length);
    return true;
  }

  /** Widens the derivatives to height and angle and adds what obstacles do. */
  private void touch(ShellMesh mesh, int i, double[] x, double scale) {
    for (int a = 0; a < ALL; a++) {
      for (int b = 0; b < ALL; b++) {
        second[ALL * a + b] = a < S && b < S ? wall.second[S * a + b] : 0.0;
      }
    }
    first[S] = 0.0;
    first[S + 1] = 0.0;
    all[0] = e;
    all[1] = k;
    all[2] = r;
    all[3] = q;
    all[4] = g;
    all[5] = 0.5 * (x[3 * i + 1] + x[3 * i + 4]);
    all[6] = mesh.angle[i] + 0.5 * (x[3 * i + 2] + x[3 * i + 5]);
    WallSection.Section rest = mesh.sections[i];
    for (int side = -1; side <= 1; side += 2) {
      wall.face(rest, 0.5 * side * rest.thickness(), e, k, r, q);
      touching += scale * contact.add(i, side, wall, all, first, second);
    }
  }

  private void fillSlopes(double length) {
    set(5, 0.0, 0.5, 0.0, 0.0, 0.5, 0.0);
    set(6, 0.0, 0.0, 0.5, 0.0, 0.0, 0.5);
    line(0, cosShear, -SHEAR * sinShear, SHEAR * g, length);
    set(1, 0.0, 0.0, -1.0 / length, 0.0, 0.0, 1.0 / length);
    set(2, 0.5, 0.0, 0.0, 0.5, 0.0, 0.0);
    set(3, 0.0, 0.0, 0.5 * cos, 0.0, 0.0, 0.5 * cos);
    line(4, sinShear, SHEAR * cosShear, -SHEAR * e, length);
  }

  /** A strain by its slopes along the line, across it and by the director's angle. */
  private void line(int strain, double along, double across, double turn, double length) {
    double byR = (along * tr - across * tz) / length;
    double byZ = (along * tz + across * tr) / length;
    set(strain, -byR, -byZ, 0.5 * turn, byR, byZ, 0.5 * turn);
  }

  private void set(int strain, double r1, double z1, double p1, double r2, double z2, double p2) {
    int i = N * strain;
    slopes[i] = r1;
    slopes[i + 1] = z1;
    slopes[i + 2] = p1;
    slopes[i + 3] = r2;
    slopes[i + 4] = z2;
    slopes[i + 5] = p2;
  }

  /** What the strains' own second derivatives add to the tangent. */
  private void addCurved(double scale, double length) {
    double we = scale * first[0];
    double wg = scale * first[4];
    double c = SHEAR;
    // second derivatives along (t), across (n) the line and by the director's angle (p); the
    // others are zero
    double nn = (1.0 - c * c) / stretch * (we * cosShear + wg * sinShear);
    double tp = c * (we * sinShear - wg * cosShear);
    double np = c * c * (we * cosShear + wg * sinShear);
    double pp = -c * c * (we * e + wg * g) - scale * first[3] * q;
    double inverse = 1.0 / length;
    double nr = -tz * inverse;
    double nz = tr * inverse;
    double ur = tr * inverse;
    double uz = tz * inverse;
    double rr = nn * nr * nr;
    double rz = nn * nr * nz;
    double zz = nn * nz * nz;
    double rp = 0.5 * (tp * ur + np * nr);
    double zp = 0.5 * (tp * uz + np * nz);
    double quarter = 0.25 * pp;
    add(0, 0, rr);
    add(0, 1, rz);
    add(1, 1, zz);
    add(0, 3, -rr);
    add(0, 4, -rz);
    add(1, 3, -rz);
    add(1, 4, -zz);
    add(3, 3, rr);
    add(3, 4, rz);
    add(4, 4, zz);
    add(0, 2, -rp);
    add(0, 5, -rp);
    add(1, 2, -zp);
    add(1, 5, -zp);
    add(2, 3, rp);
    add(2, 4, zp);
    add(3, 5, rp);
    add(4, 5, zp);
    add(2, 2, quarter);
    add(2, 5, quarter);
    add(5, 5, quarter);
  }

  private void add(int a, int b, double value) {
    tangent[N * a + b] += value;
  }
}
