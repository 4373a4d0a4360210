package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.m;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** Meshes of meridians: against the plain ones, their grading, their convergence. */
final class MeridianMeshTest {

  private static final double SAME = 1e-13;

  private static Meridian sphere(double wall) {
    return Meridian.from(m(0), m(-10)).arcTo(m(10), m(0)).arcTo(m(0), m(10)).wall(m(wall));
  }

  private static Meridian bellows() {
    return Meridian.from(m(20), m(0))
        .convolutions(4, m(5), m(6))
        .drawn(DrawnFace.MIDDLE)
        .wall(m(0.8));
  }

  private static Meridian stepped() {
    return Meridian.from(m(0), m(0))
        .lineTo(m(12), m(0))
        .lineTo(m(12), m(9))
        .named("neck")
        .arcTo(m(15), m(14))
        .lineTo(m(30), m(20))
        .taper("neck", m(2), m(1))
        .wall(m(0.6));
  }

  /** The mesh that cuts each smooth stretch of the middle into n elements of the same length. */
  private static ShellMesh even(Meridian of, int n) {
    double[][] cuts =
        of.middle().spans().stream()
            .map(
                s -> {
                  double[] at = new double[n + 1];
                  Arrays.setAll(at, i -> s.from() + (s.to() - s.from()) * i / n);
                  return at;
                })
            .toArray(double[][]::new);
    return new Mesher(of.middle(), of.drawn(), 1.0).mesh(cuts);
  }

  private static void same(ShellMesh a, ShellMesh b) {
    double small = SAME * b.size();
    assertThat(a.radius).containsExactly(b.radius, within(small));
    assertThat(a.height).containsExactly(b.height, within(small));
    assertThat(a.length).containsExactly(b.length, within(small));
    for (int i = 0; i < a.elements(); i++) {
      WallSection.Section p = a.sections[i];
      WallSection.Section q = b.sections[i];
      assertThat(Math.IEEEremainder(a.angle[i] - b.angle[i], 2 * Math.PI))
          .isCloseTo(0, within(1e-12));
      assertThat(p.thickness()).isCloseTo(q.thickness(), within(small));
      assertThat(p.curvature()).isCloseTo(q.curvature(), within(1e-11));
      assertThat(p.radius()).isCloseTo(q.radius(), within(small));
      assertThat(p.sine()).isCloseTo(q.sine(), within(1e-12));
    }
  }

  @Test
  void plainShapesAreThePlainMeshes() {
    same(
        even(Meridian.from(m(5.5), m(0)).lineTo(m(5.5), m(10)).wall(m(1)), 20),
        Meshes.tube(5.0, 10.0, 1.0, 20));
    same(
        even(Meridian.from(m(0), m(0)).lineTo(m(10), m(0)).drawn(DrawnFace.MIDDLE).wall(m(1)), 16),
        Meshes.disc(10.0, 1.0, 16));
    double opening = 1.1;
    same(
        even(
            Meridian.from(m(0), m(-10.5))
                .arcTo(m(10.5 * Math.sin(opening)), m(-10.5 * Math.cos(opening)))
                .wall(m(1)),
            24),
        Meshes.sphere(10.0, opening, 1.0, 24));
    same(
        even(
            Meridian.from(m(6), m(0))
                .convolutions(0.5, m(4), m(4))
                .drawn(DrawnFace.MIDDLE)
                .wall(m(0.4)),
            7),
        Meshes.convolution(8.0, 4.0, 1.0, 0.4, 7));
  }

  @Test
  void sizesAreGraded() {
    for (Meridian of : List.of(sphere(1), sphere(0.05), bellows(), stepped())) {
      for (double fineness : new double[] {0.5, 1, 3}) {
        ShellMesh mesh = of.mesh(fineness);
        double total = DoubleStream.of(mesh.length).sum();
        for (int i = 0; i < mesh.elements(); i++) {
          WallSection.Section s = mesh.sections[i];
          double decay = Math.sqrt(mesh.size() * s.thickness());
          assertThat(fineness * mesh.length[i]).isLessThan(1.08 * total / 40);
          assertThat(fineness * mesh.length[i]).isLessThan(1.1 * decay / 6);
          assertThat(fineness * Math.abs(s.curvature()) * mesh.length[i])
              .isLessThan(Math.toRadians(5.4));
          if (i > 0) {
            double ratio = mesh.length[i] / mesh.length[i - 1];
            assertThat(Math.max(ratio, 1 / ratio)).isLessThan(Mesher.GROWTH);
          }
        }
      }
    }
  }

  @Test
  void endsCornersAndStepsAreFine() {
    ShellMesh mesh = Meridian.from(m(10), m(0)).lineTo(m(10), m(30)).wall(m(0.05)).mesh(1.0);
    int last = mesh.elements() - 1;
    assertThat(mesh.length[0]).isLessThan(0.6 * 0.05);
    assertThat(mesh.length[last]).isLessThan(0.6 * 0.05);
    assertThat(mesh.length[last / 2]).isGreaterThan(3 * mesh.length[0]);
    Meridian stepped =
        Meridian.from(m(10), m(0))
            .lineTo(m(10), m(30))
            .taper(m(14), m(30), m(0.1), m(0.1))
            .wall(m(0.05));
    ShellMesh fine = stepped.mesh(1.0);
    int in = 0;
    for (int i = 0; i < fine.elements(); i++) {
      double z = 0.5 * (fine.height[i] + fine.height[i + 1]);
      in += Math.abs(z - 14) < 0.05 ? 1 : 0;
    }
    assertThat(in).isBetween(7, 12);
  }

  @Test
  void piecesAreTold() {
    ShellMesh mesh = stepped().mesh(1.0);
    assertThat(mesh.piece).isSorted();
    assertThat(Arrays.stream(mesh.piece).distinct()).containsExactly(0, 1, 2, 3);
  }

  @Test
  void theSameMeshEachTime() {
    assertThat(stepped().mesh(1.0).radius).isEqualTo(stepped().mesh(1.0).radius);
  }

  private static double pappus(ShellMesh mesh) {
    double sum = 0;
    for (int i = 0; i < mesh.elements(); i++) {
      WallSection.Section s = mesh.sections[i];
      double half = 0.5 * s.thickness();
      sum += mesh.length[i] * (s.volume(half) - s.volume(-half));
    }
    return 2 * Math.PI * sum;
  }

  @Test
  void volumeOfSmoothMeshesConvergesWithTheSquareOfTheElement() {
    for (Meridian of : List.of(sphere(1), sphere(5), cut())) {
      double exact = of.printedVolume().m3();
      double coarse = pappus(even(of, 16)) / exact - 1;
      double fine = pappus(even(of, 32)) / exact - 1;
      assertThat(coarse / fine).isBetween(3.8, 4.2);
      assertThat(Math.abs(pappus(of.mesh(1.0)) / exact - 1)).isLessThan(2e-3);
    }
  }

  /** Half a convolution, whose errors do not cancel. */
  private static Meridian cut() {
    return Meridian.from(m(6), m(0)).convolutions(0.5, m(4), m(4)).wall(m(0.4));
  }

  @Test
  void cornersAndStepsCostLittleVolume() {
    Meridian blended =
        Meridian.from(m(20), m(0))
            .lineTo(m(20), m(10))
            .arcTo(m(14), m(20))
            .taper(m(4), m(12), m(2), m(1))
            .blend(m(3))
            .wall(m(0.6));
    // elements have square ends and even thickness: what is missed is of the third order in the
    // wall at corners, of the second in the slope of the wall in steps, and does not converge
    double[] most = {3e-3, 1e-2};
    Meridian[] parts = {blended, stepped()};
    for (int i = 0; i < parts.length; i++) {
      double exact = parts[i].printedVolume().m3();
      assertThat(Math.abs(pappus(parts[i].mesh(4.0)) / exact - 1)).isLessThan(most[i]);
    }
  }

  @Test
  void lengthOfTheMiddleConvergesWithTheSquareOfTheElement() {
    // the middle of an outside circle of 10 and a wall of 1 is a circle of 9.5
    Meridian of = sphere(1);
    double exact = 9.5 * Math.PI;
    double coarse = exact - DoubleStream.of(even(of, 16).length).sum();
    double fine = exact - DoubleStream.of(even(of, 32).length).sum();
    assertThat(coarse / fine).isBetween(3.9, 4.1);
    double graded = exact - DoubleStream.of(of.mesh(1.0).length).sum();
    // a chord of 5 deg misses a 24th of its square
    assertThat(graded / exact).isBetween(0.0, Math.toRadians(5) * Math.toRadians(5) / 24);
  }

  @Test
  void aTaperedWallTiltsItsMiddle() {
    // outside a cylinder, inside a cone from 9 to 7: the middle is a cone from 9.5 to 8.5
    ShellMesh mesh =
        Meridian.from(m(10), m(0))
            .lineTo(m(10), m(20))
            .taper(m(0), m(20), m(1), m(3))
            .wall(m(1))
            .mesh(1.0);
    double tilt = Math.atan2(1, 20);
    for (int i = 0; i < mesh.elements(); i++) {
      assertThat(mesh.angle[i]).isCloseTo(Math.PI / 2 + tilt, within(1e-11));
      assertThat(mesh.sections[i].curvature()).isCloseTo(0, within(1e-10));
      double z = 0.5 * (mesh.height[i] + mesh.height[i + 1]);
      double t = 1 + z / 10;
      // across the tilted middle, cos to the second order of the taper
      assertThat(mesh.sections[i].thickness() / t)
          .isCloseTo(1 - 0.5 * tilt * tilt, within(2 * Math.pow(tilt, 3)));
    }
  }
}
