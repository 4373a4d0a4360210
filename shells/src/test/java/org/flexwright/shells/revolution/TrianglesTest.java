package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Surfaces of triangles: closed, outwards, of the right volume, read back from their bytes. */
final class TrianglesTest {

  private static Meridian sphere() {
    return Meridian.from(mm(0), mm(-10)).arcTo(mm(10), mm(0)).arcTo(mm(0), mm(10)).wall(mm(1));
  }

  /** Open at both ends, at one, at none; with corners, zones, folds and splines. */
  private static List<Meridian> parts() {
    return List.of(
        sphere(),
        Meridian.from(mm(20), mm(0)).convolutions(2, mm(5), mm(6)).wall(mm(0.8)),
        Meridian.from(mm(0), mm(0))
            .lineTo(mm(12), mm(0))
            .lineTo(mm(12), mm(9))
            .named("neck")
            .arcTo(mm(15), mm(14))
            .lineTo(mm(30), mm(20))
            .taper("neck", mm(2), mm(1))
            .wall(mm(0.6)),
        Meridian.from(mm(9), mm(0))
            .sine(2, mm(2), mm(5))
            .splineThrough(mm(8), mm(13), mm(0), mm(16))
            .drawn(DrawnFace.INNER)
            .wall(mm(0.3)));
  }

  @Test
  void eachEdgeIsUsedOnceInEachDirection() {
    for (Meridian part : parts()) {
      Triangles t = part.triangles(mm(0.05));
      Map<Long, Integer> edges = new HashMap<>();
      for (int i = 0; i < t.count(); i++) {
        for (int k = 0; k < 3; k++) {
          long a = t.corner(i, k);
          long b = t.corner(i, (k + 1) % 3);
          assertThat(a).isNotEqualTo(b);
          edges.merge(a << 32 | b, 1, Integer::sum);
        }
      }
      edges.forEach(
          (edge, times) -> {
            assertThat(times).isEqualTo(1);
            assertThat(edges).containsKey(edge << 32 | edge >>> 32);
          });
      // points of their own: no two are in one place
      Map<List<Double>, Integer> places = new HashMap<>();
      edges.keySet().stream()
          .mapToInt(e -> (int) (e >>> 32))
          .distinct()
          .forEach(
              p ->
                  places.merge(
                      List.of(t.coordinate(p, 0), t.coordinate(p, 1), t.coordinate(p, 2)),
                      1,
                      Integer::sum));
      assertThat(places.values()).containsOnly(1);
    }
  }

  @Test
  void normalsOfASphereShellPointOutOfTheWall() {
    Triangles t = sphere().triangles(mm(0.01));
    for (int i = 0; i < t.count(); i++) {
      double[] n = t.normal(i);
      int a = t.corner(i, 0);
      double dot = 0;
      double square = 0;
      double size = 0;
      for (int axis = 0; axis < 3; axis++) {
        dot += n[axis] * t.coordinate(a, axis);
        square += t.coordinate(a, axis) * t.coordinate(a, axis);
        size += n[axis] * n[axis];
      }
      double radius = Math.sqrt(square);
      double cos = dot / radius / Math.sqrt(size);
      assertThat(cos * Math.signum(radius - 9.5e-3)).isGreaterThan(0.99);
    }
  }

  @Test
  void volumeConvergesWithTheSquareOfTheChord() {
    for (Meridian part : parts()) {
      double exact = part.printedVolume().m3();
      double coarse = part.triangles(mm(0.032)).volume().m3() / exact - 1;
      double fine = part.triangles(mm(0.0005)).volume().m3() / exact - 1;
      // a 64th of the tolerance is an eighth of the chord; counts are whole, and what is missed
      // outside and inside cancels in part: within a quarter
      assertThat(coarse / fine).isBetween(48.0, 85.0);
      assertThat(Math.abs(fine)).isLessThan(2e-4);
    }
  }

  @Test
  void noTriangleLeavesTheSurfaceByMoreThanTheTolerance() {
    for (double tolerance : new double[] {0.5, 0.05, 0.005}) {
      Triangles t = sphere().triangles(mm(tolerance));
      for (int i = 0; i < t.count(); i++) {
        double[] middle = new double[3];
        for (int k = 0; k < 3; k++) {
          for (int axis = 0; axis < 3; axis++) {
            middle[axis] += 1e3 * t.coordinate(t.corner(i, k), axis) / 3;
          }
        }
        double r = Math.hypot(Math.hypot(middle[0], middle[1]), middle[2]);
        double off = Math.min(Math.abs(r - 10), Math.abs(r - 9));
        assertThat(off).isLessThanOrEqualTo(tolerance);
      }
    }
  }

  @Test
  void areaOfATube() {
    Triangles t =
        Meridian.from(mm(10), mm(0)).lineTo(mm(10), mm(30)).wall(mm(1)).triangles(mm(0.0005));
    double exact = 2 * Math.PI * (30 * 19 + 100 - 81);
    assertThat(t.area().mm2()).isCloseTo(exact, within(1e-4 * exact));
  }

  @Test
  void bytesReadBack() throws IOException {
    Triangles t = sphere().triangles(mm(0.05));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    t.stl(out);
    ByteBuffer in = ByteBuffer.wrap(out.toByteArray()).order(ByteOrder.LITTLE_ENDIAN);
    byte[] head = new byte[80];
    in.get(head);
    // "solid" would say that the file is text
    assertThat(new String(head, StandardCharsets.US_ASCII)).doesNotStartWith("solid");
    assertThat(in.getInt()).isEqualTo(t.count());
    assertThat(in.remaining()).isEqualTo(50 * t.count());
    double volume = 0;
    for (int i = 0; i < t.count(); i++) {
      double[][] v = new double[4][3];
      for (double[] p : v) {
        for (int axis = 0; axis < 3; axis++) {
          p[axis] = in.getFloat();
        }
      }
      assertThat(in.getShort()).isZero();
      double[] n = v[0];
      assertThat(Math.hypot(Math.hypot(n[0], n[1]), n[2])).isCloseTo(1.0, within(1e-6));
      double[] a = v[1];
      double[] b = v[2];
      double[] c = v[3];
      volume +=
          (a[0] * (b[1] * c[2] - b[2] * c[1])
                  + a[1] * (b[2] * c[0] - b[0] * c[2])
                  + a[2] * (b[0] * c[1] - b[1] * c[0]))
              / 6;
    }
    assertThat(volume).isCloseTo(t.volume().mm3(), within(1e-5 * volume));
    assertThat(t.toString()).contains("triangles");
  }
}
