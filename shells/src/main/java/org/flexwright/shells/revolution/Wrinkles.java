package org.flexwright.shells.revolution;

import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.internal.Text;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;

/**
 * Watches a path for a wall that would buckle locally into wrinkles, lobes or dimples, which an
 * axisymmetric path does not show.
 *
 * <p>Each stretch of the meridian whose mid-wall is compressed, around the axis or along the
 * meridian, is taken as a shallow shell held at both ends of the stretch. Against the pattern sin(a
 * s) sin(b y), a = m pi/L along, b = n/r around, n from 2, it bears
 *
 * <p>P = D q^4 + E t (k b^2 + c a^2)^2/q^4 + max(0, N) a^2 + max(0, T) b^2, q^2 = a^2 + b^2,
 *
 * <p>and what acts is max(0, -N) a^2 + max(0, -T) b^2: N, T force per length along and around
 * (mid-wall stress times wall), k, c curvatures along and around, D = E t^3/9. Use is the largest
 * ratio of the two over all patterns; one buckles the ideal wall. All are means over the stretch by
 * sin^2 of its length. E is that of rest. What buckles as a whole, sideways (n = 1), is not here.
 *
 * <p>Work space of one run; not thread-safe.
 */
final class Wrinkles {

  private static final double NEAR = 0.5; // dents of the print can halve what an ideal wall bears
  private static final double NOTHING = 1e-6; // strain: rounding of a wall at rest
  private static final double FINER = 1.12; // from one pattern to the next
  private static final int MOST = 400; // half-waves along a stretch
  private static final String MODEL = "local buckling of a compressed wall";
  private static final Source SOURCE =
      Source.memory(
          "shallow shell of Donnell, one pattern of buckles on an evenly compressed wall;"
              + " Timoshenko and Gere, Theory of Elastic Stability");
  private static final ValidityRange RANGE =
      new ValidityRange(MODEL, "compression over that of local buckling", 0.0, 1.0, "", SOURCE);

  private final ShellMesh mesh;
  private final StrainEnergy law;
  private final ShellElement element; // for its strains only
  private final double[] g = new double[3];
  private final double[] along; // force per length along the meridian, by element
  private final double[] around;
  private final double[] length;
  private final double[] wall;
  private final double[] bend;
  private final double[] hoop;
  private final Mean mean = new Mean();

  private double most; // use of the present state
  private int where;
  private boolean aroundAxis;
  private double worst; // of all states
  private double before; // of the state before
  private double travelBefore;
  private double pressureBefore;
  private String near = "";
  private String over = "";

  /** Means over a stretch. */
  private static final class Mean {
    double along;
    double around;
    double wall;
    double bend;
    double hoop;
    double radius;
  }

  Wrinkles(ShellMesh mesh, StrainEnergy law) {
    this.mesh = mesh;
    this.law = law;
    WallSection none = new WallSection(NeoHookean.of(Pressure.pa(1.0)), new Layers(mesh, 1));
    element = new ShellElement(none, new Contact(mesh, List.of(), 1.0));
    int n = mesh.elements();
    along = new double[n];
    around = new double[n];
    length = new double[n];
    wall = new double[n];
    bend = new double[n];
    hoop = new double[n];
  }

  /** Looks at a state. */
  void look(double[] x, double travel, double pressure) {
    forces(x);
    most = 0.0;
    stretches(x, around, true);
    stretches(x, along, false);
    near = first(near, NEAR, x, travel, pressure);
    over = first(over, 1.0, x, travel, pressure);
    worst = Math.max(worst, most);
    before = most;
    travelBefore = travel;
    pressureBefore = pressure;
  }

  /** The largest use of the states looked at. */
  double worst() {
    return worst;
  }

  /** What must be said, if anything. */
  List<Caveat> caveats() {
    if (worst < NEAR) {
      return List.of();
    }
    if (worst < 1.0) {
      String message =
          "the wall comes near to wrinkling "
              + near
              + ": at most "
              + Text.number(worst)
              + " of what buckles an ideal wall, which dents and seams can halve";
      return List.of(Caveat.note(MODEL, message, SOURCE));
    }
    String message =
        "the wall buckles "
            + over
            + ": compression up to "
            + Text.number(worst)
            + " times what it bears; beyond, the axisymmetric path is too stiff there";
    return List.of(new Caveat(MODEL, message, SOURCE, Caveat.outside(RANGE, worst).excursion()));
  }

  private String first(String said, double at, double[] x, double travel, double pressure) {
    if (!said.isEmpty() || most < at) {
      return said;
    }
    double share = (at - before) / (most - before);
    int n = 3 * where;
    return (aroundAxis ? "into folds along the meridian" : "into dimples")
        + " at piece "
        + (mesh.piece[where] + 1)
        + " (radius "
        + Length.m(0.5 * (x[n] + x[n + 3]))
        + ", height "
        + Length.m(0.5 * (x[n + 1] + x[n + 4]))
        + ") from travel "
        + Length.m(travelBefore + share * (travel - travelBefore))
        + " and pressure "
        + Pressure.pa(pressureBefore + share * (pressure - pressureBefore))
        + " on";
  }

  private void forces(double[] x) {
    for (int i = 0; i < mesh.elements(); i++) {
      length[i] = mesh.length[i];
      along[i] = 0.0;
      around[i] = 0.0;
      if (mesh.rigid[i]) {
        continue;
      }
      element.strains(mesh, i, x);
      WallSection.Section rest = mesh.sections[i];
      double u = element.e;
      double v = element.r / rest.radius();
      double w = 1.0 / (u * v);
      law.gradient(u, v, w, g);
      wall[i] = rest.thickness() * w;
      along[i] = wall[i] * (u * g[0] - w * g[2]);
      around[i] = wall[i] * (v * g[1] - w * g[2]);
      length[i] = mesh.length[i] * u;
      bend[i] = element.k / u;
      hoop[i] = element.q / element.r;
    }
  }

  private void stretches(double[] x, double[] force, boolean isAround) {
    double soft = NOTHING * law.youngModulus();
    int from = 0;
    while (from < force.length) {
      if (force[from] >= -soft * wall[from]) {
        from++;
        continue;
      }
      int to = from;
      double whole = 0.0;
      int peak = from;
      while (to < force.length && force[to] < -soft * wall[to]) {
        peak = force[to] < force[peak] ? to : peak;
        whole += length[to++];
      }
      average(x, from, to, whole);
      double use = use(whole);
      if (use > most) {
        most = use;
        where = peak;
        aroundAxis = isAround;
      }
      from = to;
    }
  }

  private void average(double[] x, int from, int to, double whole) {
    double sum = 0.0;
    double at = 0.0;
    double n = 0.0;
    double h = 0.0;
    double t = 0.0;
    double k = 0.0;
    double c = 0.0;
    double r = 0.0;
    for (int i = from; i < to; i++) {
      double sine = Math.sin(Math.PI * (at + 0.5 * length[i]) / whole);
      double by = length[i] * sine * sine;
      at += length[i];
      sum += by;
      n += by * along[i];
      h += by * around[i];
      t += by * wall[i];
      k += by * bend[i];
      c += by * hoop[i];
      r += by * 0.5 * (x[3 * i] + x[3 * i + 3]);
    }
    mean.along = n / sum;
    mean.around = h / sum;
    mean.wall = t / sum;
    mean.bend = k / sum;
    mean.hoop = c / sum;
    mean.radius = r / sum;
  }

  /** The largest ratio of what acts to what a pattern bears; waves no shorter than four walls. */
  private double use(double whole) {
    double shortest = 0.5 * Math.PI / mean.wall;
    double largest = 0.0;
    for (int m = 1; m <= MOST && m * Math.PI / whole <= shortest; m = next(m)) {
      double a = m * Math.PI / whole;
      for (int n = 2; n / mean.radius <= shortest; n = next(n)) {
        double b = n / mean.radius;
        largest = Math.max(largest, ratio(a * a, b * b));
      }
    }
    return largest;
  }

  private static int next(int m) {
    return Math.max(m + 1, (int) (m * FINER));
  }

  private double ratio(double a, double b) {
    double e = law.youngModulus();
    double t = mean.wall;
    double q = a + b;
    double curved = (mean.bend * b + mean.hoop * a) / q;
    double bears = e * t * (t * t / 9.0 * q * q + curved * curved);
    bears += Math.max(0.0, mean.along) * a + Math.max(0.0, mean.around) * b;
    return (Math.max(0.0, -mean.along) * a + Math.max(0.0, -mean.around) * b) / bears;
  }

  /** The use of an even stretch, for comparison with the formulas of plates and shells. */
  double even(double whole, double n, double h, double t, double k, double c, double r) {
    mean.along = n;
    mean.around = h;
    mean.wall = t;
    mean.bend = k;
    mean.hoop = c;
    mean.radius = r;
    return use(whole);
  }
}
