package org.flexwright.shells.revolution;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Area;
import org.flexwright.quantity.Volume;

/**
 * A closed surface of triangles about a solid of revolution: each edge belongs to two triangles,
 * which run along it in opposite directions; seen from outside they run counter-clockwise.
 *
 * <p>Formula: volume = sum of a . (b x c)/6, area = sum of |(b - a) x (c - a)|/2. Symbols: a, b, c
 * corners of a triangle (m).
 *
 * <p>Range: all corners lie on the true surface, no triangle leaves it by more than the tolerance
 * asked for. The volume misses by the area times the tolerance at most. Source: the divergence
 * theorem.
 *
 * <p>JShell: {@code meridian.triangles(mm(0.02)).volume()}
 *
 * <p>Immutable and thread-safe.
 */
public final class Triangles {

  private static final int FEWEST = 12;
  private static final int MOST = 20_000_000;
  private static final double TURN = Math.toRadians(30.0);
  private static final int HEADER = 80;
  private static final int RECORD = 50;
  private static final String TITLE = "part of revolution, lengths in mm, axis along z";

  private final double[] points; // x, y, z in turn
  private final int[] corners; // three points in turn

  private Triangles(double[] points, int[] corners) {
    this.points = points;
    this.corners = corners;
  }

  /** The surface of a solid, by chords that leave it by half a tolerance along and around. */
  static Triangles of(Solid solid, double tolerance) {
    Require.positive("tolerance of the surface", tolerance, "m");
    List<Solid.Corner> outline = new ArrayList<>(solid.right(0.5 * tolerance, TURN));
    List<Solid.Corner> back = solid.left(0.5 * tolerance, TURN);
    for (int i = back.size() - 1; i >= 0; i--) {
      outline.add(back.get(i));
    }
    double widest = 0.0;
    for (Solid.Corner c : outline) {
      widest = Math.max(widest, c.r());
    }
    double half = 2.0 * Math.asin(Math.min(1.0, 0.5 * Math.sqrt(tolerance / widest)));
    double around = Math.max(FEWEST, Math.ceil(Math.PI / half));
    double count = 2.0 * around * outline.size();
    Require.that(
        count <= MOST,
        "tolerance of the surface",
        Text.number(1e3 * tolerance) + " mm",
        () -> "one that takes up to " + Text.number(MOST) + " triangles",
        "take a larger one");
    return turned(outline, (int) around);
  }

  private static Triangles turned(List<Solid.Corner> outline, int around) {
    int n = outline.size();
    int[] first = new int[n + 1];
    int triangles = 0;
    for (int i = 0; i < n; i++) {
      boolean here = outline.get(i).r() == 0.0;
      boolean next = outline.get((i + 1) % n).r() == 0.0;
      first[i + 1] = first[i] + (here ? 1 : around);
      triangles += around * ((here ? 0 : 1) + (next ? 0 : 1));
    }
    double[] points = new double[3 * first[n]];
    for (int i = 0; i < n; i++) {
      Solid.Corner c = outline.get(i);
      for (int k = 0; k < first[i + 1] - first[i]; k++) {
        double turn = 2.0 * Math.PI * k / around;
        int at = 3 * (first[i] + k);
        points[at] = c.r() * Math.cos(turn);
        points[at + 1] = c.r() * Math.sin(turn);
        points[at + 2] = c.z();
      }
    }
    int[] corners = new int[3 * triangles];
    int at = 0;
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      boolean here = first[i + 1] - first[i] == 1;
      boolean next = first[j + 1] - first[j] == 1;
      for (int k = 0; k < around; k++) {
        int l = (k + 1) % around;
        if (!here) {
          at = put(corners, at, first[i] + k, first[i] + l, first[j] + (next ? 0 : k));
        }
        if (!next) {
          at = put(corners, at, first[i] + (here ? 0 : l), first[j] + l, first[j] + k);
        }
      }
    }
    return new Triangles(points, corners);
  }

  private static int put(int[] to, int at, int a, int b, int c) {
    to[at] = a;
    to[at + 1] = b;
    to[at + 2] = c;
    return at + 3;
  }

  /**
   * How many triangles.
   *
   * @return the count
   */
  public int count() {
    return corners.length / 3;
  }

  /** A corner of a triangle, as the number of its point. */
  int corner(int triangle, int which) {
    return corners[3 * triangle + which];
  }

  /** A coordinate of a point, m. */
  double coordinate(int point, int axis) {
    return points[3 * point + axis];
  }

  /** (b - a) x (c - a) of a triangle: outwards, twice its area. */
  double[] normal(int triangle) {
    int a = 3 * corner(triangle, 0);
    int b = 3 * corner(triangle, 1);
    int c = 3 * corner(triangle, 2);
    double ux = points[b] - points[a];
    double uy = points[b + 1] - points[a + 1];
    double uz = points[b + 2] - points[a + 2];
    double vx = points[c] - points[a];
    double vy = points[c + 1] - points[a + 1];
    double vz = points[c + 2] - points[a + 2];
    return new double[] {uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx};
  }

  /**
   * The volume that the triangles enclose.
   *
   * @return the volume
   */
  public Volume volume() {
    double sum = 0.0;
    for (int i = 0; i < count(); i++) {
      double[] n = normal(i);
      int a = 3 * corner(i, 0);
      sum += points[a] * n[0] + points[a + 1] * n[1] + points[a + 2] * n[2];
    }
    return Volume.m3(sum / 6.0);
  }

  /**
   * The area of all triangles.
   *
   * @return the area
   */
  public Area area() {
    double sum = 0.0;
    for (int i = 0; i < count(); i++) {
      double[] n = normal(i);
      sum += Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
    }
    return Area.m2(0.5 * sum);
  }

  /**
   * Writes the triangles as binary STL, lengths in millimetres, the axis along z.
   *
   * @param to where to; it is flushed, not closed
   * @throws IOException if it cannot be written to
   */
  public void stl(OutputStream to) throws IOException {
    ByteBuffer head = ByteBuffer.allocate(HEADER + 4).order(ByteOrder.LITTLE_ENDIAN);
    head.put(TITLE.getBytes(StandardCharsets.US_ASCII));
    head.putInt(HEADER, count());
    to.write(head.array());
    ByteBuffer one = ByteBuffer.allocate(RECORD).order(ByteOrder.LITTLE_ENDIAN);
    for (int i = 0; i < count(); i++) {
      one.clear();
      double[] n = normal(i);
      double size = Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
      for (double v : n) {
        one.putFloat((float) (size > 0.0 ? v / size : 0.0));
      }
      for (int k = 0; k < 3; k++) {
        for (int axis = 0; axis < 3; axis++) {
          one.putFloat((float) (1e3 * coordinate(corner(i, k), axis)));
        }
      }
      one.putShort((short) 0);
      to.write(one.array());
    }
    to.flush();
  }

  /** One readable line. */
  @Override
  public String toString() {
    return count() + " triangles, " + volume();
  }
}
