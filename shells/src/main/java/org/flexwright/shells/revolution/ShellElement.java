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
  private static final double SMALL = 0.04; // series are exact to the last digit below it

  private final WallSection wall;
  private final double[] slopes = new double[ALL * N]; // strain by difference and mean
  private final double[] product = new double[ALL * N];
  private final double[] first = new double[ALL];
  private final double[] second = new double[ALL * ALL];
  private final double[] all = new double[ALL];
  private final double[] inner = new double[N * N]; // by differences and means of r, z, p
  private final Contact contact;

  final double[] force = new double[N];
  final double[] tangent = new double[N * N];
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
    shear(rise * cos - run * q, run * cos + rise * q);
    e = stretch * cosShear;
    g = stretch * sinShear;
  }

  /** Energy of element i in state x. */
  double energy(ShellMesh mesh, int i, double[] x) {
    strains(mesh, i, x);
    return TURN * mesh.length[i] * wall.energy(i, e, k, r, q, g);
  }

  /** Cosine and sine of the share of an angle given by its opposite and adjacent side. */
  private void shear(double opposite, double adjacent) {
    if (Math.abs(opposite) < SMALL * adjacent) {
      double t = opposite / adjacent;
      double p = t * t;
      double sum = 1.0 / 9.0 - p * (1.0 / 11.0 - p * (1.0 / 13.0));
      double a = SHEAR * t * (1.0 - p * (1.0 / 3.0 - p * (1.0 / 5.0 - p * (1.0 / 7.0 - p * sum))));
      double b = a * a;
      sinShear = a * (1.0 - b / 6.0 * (1.0 - b / 20.0 * (1.0 - b / 42.0 * (1.0 - b / 72.0))));
      cosShear = 1.0 - b / 2.0 * (1.0 - b / 12.0 * (1.0 - b / 30.0 * (1.0 - b / 56.0)));
      return;
    }
    double angle = SHEAR * Math.atan2(opposite, adjacent);
    cosShear = Math.cos(angle);
    sinShear = Math.sin(angle);
  }

  /**
   * Energy, forces and tangent of element i in state x.
   *
   * @return whether the element can exist
   */
  boolean at(ShellMesh mesh, int i, double[] x) {
    strains(mesh, i, x);
    boolean crossed = x[3 * i] < 0.0 || x[3 * i + 3] < 0.0; // a node beyond the axis
    if (crossed || !(r > 0.0) || !wall.at(i, e, k, r, q, g)) {
      return false;
    }
    double length = mesh.length[i];
    double scale = TURN * length;
    touching = 0.0;
    double[] w = wall.first;
    // slopes of e and g by the differences of r and z and the mean turn
    double byLength = 1.0 / length;
    double en = -SHEAR * sinShear * byLength;
    double gn = SHEAR * cosShear * byLength;
    double ea = cosShear * byLength;
    double ga = sinShear * byLength;
    double er = ea * tr - en * tz;
    double ez = ea * tz + en * tr;
    double ep = SHEAR * g;
    double gr = ga * tr - gn * tz;
    double gz = ga * tz + gn * tr;
    double gp = -SHEAR * e;
    if (contact.none() || !touch(mesh, i, x, scale)) {
      plain(er, ez, ep, gr, gz, gp, byLength);
      spread(
          scale * (w[0] * er + w[4] * gr),
          scale * (w[0] * ez + w[4] * gz),
          scale * w[1] * byLength,
          scale * w[2],
          0.0,
          scale * (w[0] * ep + w[3] * cos + w[4] * gp));
    } else {
      pressed(er, ez, ep, gr, gz, gp, byLength);
      double[] f = first;
      spread(
          scale * (f[0] * er + f[4] * gr),
          scale * (f[0] * ez + f[4] * gz),
          scale * f[1] * byLength,
          scale * f[2],
          scale * f[5],
          scale * (f[0] * ep + f[3] * cos + f[4] * gp + f[6]));
      w = first;
    }
    addCurved(w, byLength);
    fill(scale);
    return true;
  }

  /** Second derivatives by differences and means where nothing presses on the wall. */
  private void plain(double er, double ez, double ep, double gr, double gz, double gp, double kp) {
    double[] s = wall.second;
    double[] o = inner;
    // by e, k, r, q, g and one of the differences or means
    double er0 = s[0] * er + s[4] * gr;
    double er4 = s[4] * er + s[24] * gr;
    double ez0 = s[0] * ez + s[4] * gz;
    double ez4 = s[4] * ez + s[24] * gz;
    double p0 = s[0] * ep + s[3] * cos + s[4] * gp;
    double p3 = s[3] * ep + s[18] * cos + s[19] * gp;
    double p4 = s[4] * ep + s[19] * cos + s[24] * gp;
    o[0] = er0 * er + er4 * gr;
    o[1] = er0 * ez + er4 * gz;
    o[2] = (s[1] * er + s[9] * gr) * kp;
    o[3] = s[2] * er + s[14] * gr;
    o[5] = p0 * er + p4 * gr;
    o[7] = ez0 * ez + ez4 * gz;
    o[8] = (s[1] * ez + s[9] * gz) * kp;
    o[9] = s[2] * ez + s[14] * gz;
    o[11] = p0 * ez + p4 * gz;
    o[14] = s[6] * kp * kp;
    o[15] = s[7] * kp;
    o[17] = (s[1] * ep + s[8] * cos + s[9] * gp) * kp;
    o[21] = s[12];
    o[23] = s[2] * ep + s[13] * cos + s[14] * gp;
    o[35] = p0 * ep + p3 * cos + p4 * gp;
    o[4] = 0.0;
    o[10] = 0.0;
    o[16] = 0.0;
    o[22] = 0.0;
    o[28] = 0.0;
    o[29] = 0.0;
  }

  /** Widens the derivatives to height and angle and adds what obstacles do, if they press. */
  private boolean touch(ShellMesh mesh, int i, double[] x, double scale) {
    for (int a = 0; a < ALL; a++) {
      for (int b = a; b < ALL; b++) {
        double value = b < S ? wall.second[S * a + b] : 0.0;
        second[ALL * a + b] = value;
        second[ALL * b + a] = value;
      }
    }
    System.arraycopy(wall.first, 0, first, 0, S);
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
      PressedFace.at(wall, rest, 0.5 * side * rest.thickness(), e, k, r, q);
      touching += scale * contact.add(i, side, wall, all, first, second);
    }
    return true;
  }

  /** The same with what obstacles do. */
  private void pressed(
      double er, double ez, double ep, double gr, double gz, double gp, double kp) {
    set(0, er, ez, 0.0, 0.0, 0.0, ep);
    set(1, 0.0, 0.0, kp, 0.0, 0.0, 0.0);
    set(2, 0.0, 0.0, 0.0, 1.0, 0.0, 0.0);
    set(3, 0.0, 0.0, 0.0, 0.0, 0.0, cos);
    set(4, gr, gz, 0.0, 0.0, 0.0, gp);
    set(5, 0.0, 0.0, 0.0, 0.0, 1.0, 0.0);
    set(6, 0.0, 0.0, 0.0, 0.0, 0.0, 1.0);
    for (int s = 0; s < ALL; s++) {
      for (int a = 0; a < N; a++) {
        double sum = 0.0;
        for (int t = 0; t < ALL; t++) {
          sum += second[ALL * s + t] * slopes[N * t + a];
        }
        product[N * s + a] = sum;
      }
    }
    for (int a = 0; a < N; a++) {
      for (int b = a; b < N; b++) {
        double sum = 0.0;
        for (int s = 0; s < ALL; s++) {
          sum += slopes[N * s + a] * product[N * s + b];
        }
        inner[N * a + b] = sum;
      }
    }
  }

  private void set(int strain, double dr, double dz, double dp, double r, double z, double p) {
    int i = N * strain;
    slopes[i] = dr;
    slopes[i + 1] = dz;
    slopes[i + 2] = dp;
    slopes[i + 3] = r;
    slopes[i + 4] = z;
    slopes[i + 5] = p;
  }

  /** The forces of the nodes from those on differences and means. */
  private void spread(double dr, double dz, double dp, double r, double z, double p) {
    force[0] = 0.5 * r - dr;
    force[1] = 0.5 * z - dz;
    force[2] = 0.5 * p - dp;
    force[3] = 0.5 * r + dr;
    force[4] = 0.5 * z + dz;
    force[5] = 0.5 * p + dp;
  }

  /** What the strains' own second derivatives add, by their first ones. */
  private void addCurved(double[] w, double byLength) {
    double we = w[0];
    double wg = w[4];
    double c = SHEAR;
    // along (t), across (n) the line and by the director's angle (p); the others are zero
    double nn = (1.0 - c * c) / stretch * (we * cosShear + wg * sinShear);
    double tp = c * (we * sinShear - wg * cosShear);
    double np = c * c * (we * cosShear + wg * sinShear);
    double nr = -tz * byLength;
    double nz = tr * byLength;
    inner[0] += nn * nr * nr;
    inner[1] += nn * nr * nz;
    inner[7] += nn * nz * nz;
    inner[5] += tp * nz + np * nr;
    inner[11] += np * nz - tp * nr;
    inner[35] -= c * c * (we * e + wg * g) + w[3] * q;
  }

  /** The tangent of the nodes from the one by differences and means. */
  private void fill(double scale) {
    double[] o = inner;
    double[] t = tangent;
    for (int a = 0; a < 3; a++) {
      for (int b = a; b < 3; b++) {
        double both = scale * (o[N * a + b] + 0.25 * o[N * (a + 3) + b + 3]);
        double apart = scale * (0.25 * o[N * (a + 3) + b + 3] - o[N * a + b]);
        double one = 0.5 * scale * o[N * a + b + 3];
        double other = 0.5 * scale * o[N * b + a + 3];
        t[N * a + b] = both - one - other;
        t[N * (a + 3) + b + 3] = both + one + other;
        t[N * a + b + 3] = apart - one + other;
        t[N * b + a + 3] = apart + one - other;
      }
    }
  }
}
