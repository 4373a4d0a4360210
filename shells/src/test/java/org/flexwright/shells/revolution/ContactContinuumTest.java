package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Shells pressed by obstacles against solids: domes under a ball and under a plate, sleeves in a
 * bore, by axisymmetric continuum mechanics at constant volume, neo-Hookean with a shear modulus of
 * 1, the obstacle rigid and without friction. With thicker discs and bellows than in {@link
 * ContinuumTest}. Two meshes of each shell are extrapolated.
 */
final class ContactContinuumTest {

  @RegisterExtension
  static final VerificationTable TABLE =
      VerificationTable.of(ContactContinuumTest.class, "contact_continuum.csv");

  private static final StrainEnergy UNIT = NeoHookean.of(Pressure.pa(1.0));
  private static final int ELEMENTS = 48;
  private static final double RADIUS = 10.0;
  private static final double SLEEVE = 20.0;

  static Stream<ReferenceCase> cases() {
    return TABLE.cases();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void meetsContinuum(ReferenceCase c) {
    double coarse = load(c, ELEMENTS);
    double fine = load(c, 2 * ELEMENTS);
    double limit = (4.0 * fine - coarse) / 3.0;
    assertThat(fine / limit).isBetween(0.996, 1.004);
    TABLE.check(c, limit);
  }

  private static double load(ReferenceCase c, int n) {
    double wall = c.input("wall");
    double at = c.input("at");
    return switch (c.text("shape")) {
      case "ball" -> dome(c.input("opening"), wall, c.input("ball"), at, n);
      case "plate" -> dome(c.input("opening"), wall, 0.0, at, n);
      case "touch" -> touch(sleeve(wall, n), wall, at).factor;
      case "bore" -> bore(sleeve(wall, n), wall, c.input("gap"), at);
      default -> ContinuumTest.load(c, n, End.BUILT_IN);
    };
  }

  /** Force of a ball, or of a plate if its radius is 0, on the pole of a dome built in below. */
  private static double dome(double opening, double wall, double ball, double travel, int n) {
    ShellMesh mesh =
        BuiltIn.of(Meshes.zone(RADIUS, 0.0, opening, 1.3, wall, n), End.GUIDED, End.BUILT_IN)
            .moving;
    int q = 3 * mesh.nodes();
    double pole = -RADIUS - 0.5 * wall;
    Obstacle by =
        ball > 0.0
            ? Obstacle.ball(Length.m(ball), Length.m(pole - ball))
            : Obstacle.plateBelow(Length.m(pole));
    ShellModel model = new ShellModel(mesh, UNIT, Runs.LAYERS, List.of(by));
    ShellSolver s = new ShellSolver(model, Loading.force(q, q - 2), new int[] {0, 2, q - 3, q - 1});
    assertThat(s.evaluate()).isTrue();
    double start = s.x[q - 2];
    Runs.reach(s, new Control.Unknown(q - 2), start - travel, 4);
    return -s.factor;
  }

  /** Half a sleeve from its solid end to its middle. */
  private static ShellMesh sleeve(double wall, int n) {
    ShellMesh half = Meshes.tube(RADIUS, 0.5 * SLEEVE, wall, n);
    return BuiltIn.of(half, End.BUILT_IN, End.GUIDED).moving;
  }

  private static ShellSolver inflated(ShellMesh mesh, List<Obstacle> by) {
    int q = 3 * mesh.nodes();
    ShellSolver s =
        new ShellSolver(
            new ShellModel(mesh, UNIT, Runs.LAYERS, by),
            Loading.pressure(q),
            new int[] {0, 1, 2, q - 2, q - 1});
    assertThat(s.evaluate()).isTrue();
    return s;
  }

  /** Blown until the outside of the middle has grown by a gap. */
  private static ShellSolver touch(ShellMesh mesh, double wall, double gap) {
    ShellSolver s = inflated(mesh, List.of());
    int last = mesh.elements() - 1;
    double outside = RADIUS + 0.5 * wall + gap;
    double to = RADIUS + gap;
    for (int i = 0; i < 9; i++) {
      Runs.reach(s, new Control.Unknown(3 * last + 3), to, i == 0 ? 3 : 1);
      to += outside - face(mesh, s.x, last);
    }
    assertThat(face(mesh, s.x, last)).isCloseTo(outside, within(1e-6));
    return s;
  }

  private static double face(ShellMesh mesh, double[] x, int i) {
    int n = 3 * i;
    double length = mesh.length[i];
    double f = mesh.angle[i] + 0.5 * (x[n + 2] + x[n + 5]);
    double e = Math.hypot(x[n + 3] - x[n], x[n + 4] - x[n + 1]) / length;
    double k = mesh.sections[i].curvature() + (x[n + 5] - x[n + 2]) / length;
    double r = 0.5 * (x[n] + x[n + 3]);
    double[] layer = new double[3];
    WallSection.Section wall = mesh.sections[i];
    WallSection.layerAt(wall, -0.5 * wall.thickness(), e, k, r, Math.sin(f), layer);
    return r - layer[0] * Math.sin(f);
  }

  /** All normal force on a bore at a multiple of the pressure at which the sleeve touches it. */
  private static double bore(ShellMesh mesh, double wall, double gap, double times) {
    double pressure = times * touch(mesh, wall, gap).factor;
    Obstacle by = Obstacle.bore(Length.m(RADIUS + 0.5 * wall + gap));
    ShellSolver s = inflated(mesh, List.of(by));
    Runs.reach(s, new Control.Load(), pressure, 6);
    Touch touch =
        new Strains(mesh)
            .touches(s.x, s.model().contact, BuiltIn.of(mesh, End.FREE, End.FREE))
            .get(0);
    return 2.0 * touch.normal().newtons();
  }

  @Test
  void theFaceOfALayerMovesAsTheLayerDoes() {
    // Layer 0..1 of constant volume in plane strain, shear modulus 1, a pressure cos(s x) on one
    // face: half of it bends, half squeezes (Airy's functions; both in closed form)
    for (double s : new double[] {0.2, 0.4, 0.8}) {
      double squeezed = (Math.cosh(s) - 1.0) / (Math.sinh(s) + s);
      double bending = (Math.cosh(s) + 1.0) / (Math.sinh(s) - s);
      double exact = (squeezed + bending) / (4.0 * s);
      // the wall: D = 1/3, shear 5/6, the face's place by the turn's slope, and the thinning of a
      // wall that half the pressure stretches, (1/8)(1/2)
      double offset = 1.0 / 8.0 - PressedFace.MEAN;
      double face = 1.0 - offset * s * s;
      double wall = 3.0 / Math.pow(s, 4) * (face * face + 0.4 * s * s) + 1.0 / 16.0;
      assertThat(wall / exact).isCloseTo(1.0, within(4e-4 * Math.pow(s, 4) + 1e-9));
      double before = 3.0 / Math.pow(s, 4) * (Math.pow(1.0 - s * s / 8.0, 2) + 0.4 * s * s);
      assertThat((before + 1.0 / 16.0) / exact - 1.0).isLessThan(-0.03 * s * s);
    }
  }

  @Test
  void theShiftOfAFaceHasTheSlopesOfItsPlace() {
    WallSection.Section rest = new WallSection.Section(1.2, 0.3, 5.0, 0.6);
    WallSection wall =
        new WallSection(UNIT, new Layers(Meshes.tube(RADIUS, 1.0, 1.0, 1), Runs.LAYERS));
    double[] s = {1.2, 0.45, 5.5, 0.4};
    double step = 1e-6;
    for (int side = -1; side <= 1; side += 2) {
      double[] slopes = slopes(wall, rest, side, s);
      double[] curved = wall.depthCurved.clone();
      for (int a = 0; a < 4; a++) {
        double at = s[a];
        s[a] = at + step;
        double[] up = slopes(wall, rest, side, s);
        double high = wall.depth;
        s[a] = at - step;
        double[] down = slopes(wall, rest, side, s);
        assertThat((high - wall.depth) / (2.0 * step)).isCloseTo(slopes[a], within(1e-8));
        for (int b = 0; b < 4; b++) {
          double bend = (up[b] - down[b]) / (2.0 * step);
          assertThat(bend).isCloseTo(curved[4 * a + b], within(1e-8));
        }
        s[a] = at;
      }
    }
  }

  private static double[] slopes(WallSection wall, WallSection.Section rest, int side, double[] s) {
    PressedFace.at(wall, rest, 0.5 * side * rest.thickness(), s[0], s[1], s[2], s[3]);
    return wall.dy.clone();
  }

  @Test
  void aWallThatOnlySwellsPressesWithItsOwnFace() {
    WallSection.Section rest = new WallSection.Section(1.2, 0.2, 5.0, 1.0); // a sphere
    WallSection wall =
        new WallSection(UNIT, new Layers(Meshes.tube(RADIUS, 1.0, 1.0, 1), Runs.LAYERS));
    PressedFace.at(wall, rest, 0.6, 1.3, 0.2, 6.5, 1.0);
    // 4 pi/3 of the layer's volume stays
    double inside = Math.cbrt(Math.pow(4.4, 3) + Math.pow(6.5, 3) - 125.0);
    assertThat(6.5 - wall.depth).isCloseTo(inside, within(1e-9));
  }
}
