package org.flexwright.shells.revolution;

import java.util.Arrays;

/**
 * Finds the face points of a shell that are close to an opposed face of the same shell further on
 * along the meridian, first by boxes around runs of elements, then by pairs of elements.
 *
 * <p>A pair counts if it lies two walls or more apart along the meridian at rest and its faces look
 * at each other. Work space; not thread-safe, nothing is allocated after construction.
 */
final class Neighbours {

  private static final int RUN = 8; // elements in a box
  static final int LEAST = 3; // elements between a point and the line it meets
  private static final double OPPOSED = -0.7; // cosine of the angle between two outward normals
  private static final double DEEP = 0.5; // of the way to touching: how near the middles may be
  private static final double AHEAD = 0.25; // of both walls: a gap to be watched

  private final ShellMesh mesh;
  private final FaceLine line;
  private final int[] beyond; // the first element further on that may meet each
  private final double[] box; // low and high radius, low and high height, of each run
  private final double[] wall; // at rest
  private final double[] midR;
  private final double[] midZ;
  private final double[] reach; // from its middle
  private final double[] nearest; // square of the distance, by slot
  private final int[] across; // slot that is nearest
  private double[] x = new double[0];
  private double extra;
  private boolean crossed;

  /** Slots found close to a face. */
  final int[] found;

  int count;

  /** Place on the line and gap of each slot found. */
  final double[] place;

  final double[] gap;
  final int[] side;

  Neighbours(ShellMesh mesh, FaceLine line) {
    this.mesh = mesh;
    this.line = line;
    int n = mesh.elements();
    wall = new double[n];
    for (int i = 0; i < n; i++) {
      wall[i] = mesh.sections[i].thickness();
    }
    beyond = beyond(mesh, wall);
    box = new double[4 * ((n + RUN - 1) / RUN)];
    midR = new double[n];
    midZ = new double[n];
    reach = new double[n];
    nearest = new double[2 * n];
    Arrays.fill(nearest, Double.POSITIVE_INFINITY);
    across = new int[2 * n];
    found = new int[2 * n];
    place = new double[2 * n];
    gap = new double[2 * n];
    side = new int[2 * n];
  }

  private static int[] beyond(ShellMesh mesh, double[] wall) {
    int n = wall.length;
    int[] first = new int[n];
    for (int i = 0; i < n; i++) {
      int j = i + 1;
      double along = 0.5 * (mesh.length[i] + (j < n ? mesh.length[j] : 0.0));
      while (j < n && (j < i + LEAST || along < wall[i] + wall[j])) {
        along += 0.5 * (mesh.length[j] + (j + 1 < n ? mesh.length[j + 1] : 0.0));
        j++;
      }
      first[i] = j;
    }
    return first;
  }

  /**
   * Looks for all that is close in a state.
   *
   * @param further how much further than usual to look
   * @return whether no two lines of the meridian cross
   */
  boolean look(double[] state, double further) {
    x = state;
    extra = further;
    crossed = false;
    count = 0;
    measure();
    line.moved(x);
    int runs = box.length / 4;
    for (int a = 0; a < runs && !crossed; a++) {
      for (int b = a; b < runs && !crossed; b++) {
        if (!apart(4 * a, 4 * b)) {
          pairs(a, b);
        }
      }
    }
    sift();
    return !crossed;
  }

  /** Middles of all elements and boxes around runs of them. */
  private void measure() {
    for (int b = 0; b < box.length; b += 4) {
      double lowR = Double.POSITIVE_INFINITY;
      double highR = Double.NEGATIVE_INFINITY;
      double lowZ = Double.POSITIVE_INFINITY;
      double highZ = Double.NEGATIVE_INFINITY;
      int last = Math.min((b / 4 + 1) * RUN, mesh.elements());
      for (int i = b / 4 * RUN; i < last; i++) {
        double dr = 0.5 * (x[3 * i + 3] - x[3 * i]);
        double dz = 0.5 * (x[3 * i + 4] - x[3 * i + 1]);
        double r = x[3 * i] + dr;
        double z = x[3 * i + 1] + dz;
        double to = wall[i] + Math.sqrt(dr * dr + dz * dz) + 0.5 * extra;
        midR[i] = r;
        midZ[i] = z;
        reach[i] = to;
        lowR = Math.min(lowR, r - to);
        highR = Math.max(highR, r + to);
        lowZ = Math.min(lowZ, z - to);
        highZ = Math.max(highZ, z + to);
      }
      box[b] = lowR;
      box[b + 1] = highR;
      box[b + 2] = lowZ;
      box[b + 3] = highZ;
    }
  }

  private boolean apart(int a, int b) {
    return box[a] > box[b + 1]
        || box[b] > box[a + 1]
        || box[a + 2] > box[b + 3]
        || box[b + 2] > box[a + 3];
  }

  private void pairs(int a, int b) {
    int endA = Math.min((a + 1) * RUN, mesh.elements());
    int endB = Math.min((b + 1) * RUN, mesh.elements());
    for (int i = a * RUN; i < endA; i++) {
      for (int j = Math.max(b * RUN, beyond[i]); j < endB; j++) {
        double dr = midR[j] - midR[i];
        double dz = midZ[j] - midZ[i];
        double near = reach[i] + reach[j];
        if (mesh.rigid[i] || besideRigid(j)) {
          continue;
        }
        if (dr * dr + dz * dz > near * near) {
          continue;
        }
        if (crosses(i, j)) {
          crossed = true;
          return;
        }
        pair(i, j);
      }
    }
  }

  /** Whether one of the three points that a line hangs on belongs to a rigid stretch. */
  private boolean besideRigid(int j) {
    int middle = line.centre(j);
    return mesh.rigid[middle - 1] || mesh.rigid[middle] || mesh.rigid[middle + 1];
  }

  private boolean crosses(int i, int j) {
    double ar = x[3 * i + 3] - x[3 * i];
    double az = x[3 * i + 4] - x[3 * i + 1];
    double br = x[3 * j + 3] - x[3 * j];
    double bz = x[3 * j + 4] - x[3 * j + 1];
    double cr = x[3 * j] - x[3 * i];
    double cz = x[3 * j + 1] - x[3 * i + 1];
    double both = ar * bz - az * br;
    double s = cr * bz - cz * br;
    double t = cr * az - cz * ar;
    return both > 0.0
        ? s >= 0.0 && s <= both && t >= 0.0 && t <= both
        : both < 0.0 && s <= 0.0 && s >= both && t <= 0.0 && t >= both;
  }

  private void pair(int i, int j) {
    double angle = angle(j);
    double same = Math.cos(angle(i) - angle);
    if (Math.abs(same) < -OPPOSED) {
      return;
    }
    // how far the middle of i is before that of j
    double before = (midZ[i] - midZ[j]) * Math.cos(angle) - (midR[i] - midR[j]) * Math.sin(angle);
    int face = before > 0.0 ? 1 : -1;
    if (Math.abs(before) > 0.5 * DEEP * (wall[i] + wall[j])) {
      offer(FaceLine.slot(i, same > 0.0 ? -face : face), FaceLine.slot(j, face));
    }
  }

  private double angle(int i) {
    return mesh.angle[i] + 0.5 * (x[3 * i + 2] + x[3 * i + 5]);
  }

  private void offer(int from, int to) {
    double dr = line.radius(to) - line.radius(from);
    double dz = line.height(to) - line.height(from);
    double square = dr * dr + dz * dz;
    if (square < nearest[from]) {
      if (nearest[from] == Double.POSITIVE_INFINITY) {
        found[count++] = from;
      }
      nearest[from] = square;
      across[from] = to;
    }
  }

  /** Keeps those that are close enough in front of a face, or inside its wall. */
  private void sift() {
    int kept = 0;
    for (int c = 0; c < count; c++) {
      int slot = found[c];
      nearest[slot] = Double.POSITIVE_INFINITY;
      int to = across[slot];
      if (crossed || !line.project(slot, FaceLine.element(to) + 0.5, FaceLine.side(to))) {
        continue;
      }
      int i = FaceLine.element(slot);
      double walls = wall[i] + wall[FaceLine.element(to)];
      boolean in = line.gap > -0.5 * (deformed(slot) + deformed(to));
      if (in && line.gap <= AHEAD * walls + extra && line.centre(line.place) >= beyond[i]) {
        found[kept++] = slot;
        place[slot] = line.place;
        gap[slot] = line.gap;
        side[slot] = FaceLine.side(to);
      }
    }
    count = kept;
  }

  /** The wall as deformed, between the two faces. */
  private double deformed(int slot) {
    int other = slot ^ 1;
    return Math.hypot(
        line.radius(other) - line.radius(slot), line.height(other) - line.height(slot));
  }
}
