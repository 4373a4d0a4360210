package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Lengths, volumes and walls of meridians against closed forms. */
final class MeridianTest {

  private static final double ROUNDING = 1e-12;

  private static void volume(Meridian of, double mm3) {
    assertThat(of.printedVolume().mm3()).isCloseTo(mm3, within(ROUNDING * mm3));
  }

  private static double shell(double outer, double inner) {
    return 4.0 / 3.0 * Math.PI * (Math.pow(outer, 3) - Math.pow(inner, 3));
  }

  @ParameterizedTest
  @EnumSource
  void aTubeKeepsItsDrawnFace(DrawnFace face) {
    MeridianDraft draft = Meridian.from(mm(10), mm(0)).lineTo(mm(10), mm(30)).drawn(face);
    for (double t : new double[] {0.1, 1.0, 4.0}) {
      double inner =
          10.0 + (face == DrawnFace.INNER ? 0.0 : face == DrawnFace.OUTER ? -t : -0.5 * t);
      Meridian tube = draft.wall(mm(t));
      double exact = Math.PI * 30.0 * (Math.pow(inner + t, 2) - inner * inner);
      assertThat(tube.printedVolume().mm3()).isCloseTo(exact, within(1e-11 * exact));
      ShellMesh mesh = tube.mesh(1.0);
      for (double r : mesh.radius) {
        assertThat(1e3 * r).isCloseTo(inner + 0.5 * t, within(1e-12));
      }
      assertThat(mesh.drawn).isEqualTo(face);
    }
  }

  @Test
  void spheresDiscsConesAndCans() {
    MeridianDraft sphere = Meridian.from(mm(0), mm(-10)).arcTo(mm(10), mm(0)).arcTo(mm(0), mm(10));
    assertThat(sphere.wall(mm(1)).length().mm()).isCloseTo(10 * Math.PI, within(1e-12));
    volume(sphere.wall(mm(1)), shell(10, 9));
    volume(sphere.wall(mm(9)), shell(10, 1));
    volume(sphere.drawn(DrawnFace.INNER).wall(mm(1)), shell(11, 10));
    volume(sphere.drawn(DrawnFace.MIDDLE).wall(mm(1)), shell(10.5, 9.5));
    volume(Meridian.from(mm(0), mm(3)).lineTo(mm(7), mm(3)).wall(mm(2)), 98 * Math.PI);
    // a cone cut square to its wall: Pappus with the middle of the wall
    double slant = Math.hypot(3, 4);
    volume(
        Meridian.from(mm(5), mm(0)).lineTo(mm(8), mm(4)).drawn(DrawnFace.MIDDLE).wall(mm(0.5)),
        2 * Math.PI * 6.5 * slant * 0.5);
    MeridianDraft can =
        Meridian.from(mm(0), mm(0)).lineTo(mm(10), mm(0)).lineTo(mm(10), mm(20)).toAxis();
    volume(can.wall(mm(1)), Math.PI * (2000 - 81 * 18));
    volume(can.drawn(DrawnFace.INNER).wall(mm(1)), Math.PI * (121 * 22 - 2000));
    volume(can.drawn(DrawnFace.MIDDLE).wall(mm(1)), Math.PI * (10.5 * 10.5 * 21 - 9.5 * 9.5 * 19));
  }

  @Test
  void aCornerBetweenArcAndLineIsMitredWhereBothSidesMeet() {
    // a dome of radius 10 that starts at 30 deg on a tube of radius 5: the sides inside meet where
    // the sphere of radius 9 meets the cylinder of radius 4
    Length up = Length.mm(5.0 * Math.sqrt(3.0));
    Meridian part =
        Meridian.from(mm(5), mm(0))
            .lineTo(mm(5), up)
            .arcAbout(mm(0), mm(0), mm(0), mm(10))
            .wall(mm(1));
    double outside = Math.PI * 25 * up.mm() + cap(10, up.mm());
    double meet = Math.sqrt(81 - 16);
    double inside = Math.PI * 16 * meet + cap(9, meet);
    volume(part, outside - inside);
  }

  /** Volume of a ball above a height. */
  private static double cap(double radius, double height) {
    double h = radius - height;
    return Math.PI * h * h * (3 * radius - h) / 3;
  }

  @Test
  void convolutionsByPappus() {
    double round = 1.5;
    double leg = 5 - 2 * round;
    Meridian part =
        Meridian.from(mm(20), mm(0))
            .convolutions(3, mm(5), mm(6))
            .drawn(DrawnFace.MIDDLE)
            .wall(mm(0.8));
    double length = 3 * 2 * (Math.PI * round + leg);
    assertThat(part.length().mm()).isCloseTo(length, within(1e-12));
    // root and crest are symmetric about the mean radius but for the moment of the wall's rings:
    // both have it, with opposite signs
    volume(part, 2 * Math.PI * 22.5 * length * 0.8);
  }

  @Test
  void foldsBeginAndEndWhereTheyShould() {
    for (double count : new double[] {0.5, 1, 2.5}) {
      for (double way : new double[] {-1, 1}) {
        Meridian sine =
            Meridian.from(mm(20), mm(4)).sine(count, mm(3 * way), mm(6 * way)).wall(mm(0.1));
        Meridian round =
            Meridian.from(mm(20), mm(4))
                .convolutions(count, mm(3 * way), mm(6 * way))
                .wall(mm(0.1));
        boolean crest = count != Math.rint(count);
        for (Meridian m : new Meridian[] {sine, round}) {
          Layer line = new Layer(m.middle().line(), m.middle().wall(), 0.0);
          Layer.Span last = line.spans().get(line.spans().size() - 1);
          Spot end = line.at(last, last.to());
          assertThat(1e3 * end.r()).isCloseTo(crest ? 20 + 3 * way : 20, within(1e-11));
          assertThat(1e3 * end.z()).isCloseTo(4 + way * 6 * count, within(1e-11));
          assertThat(end.angle()).isCloseTo(way * Math.PI / 2, within(1e-12));
        }
      }
    }
  }

  /** Arc length of a sine by a series for its elliptic integral, complete, of the second kind. */
  private static double sineLength(double depth, double pitch) {
    double a = Math.PI * depth / pitch;
    double m = a * a / (1 + a * a);
    double term = 1;
    double sum = 1;
    for (int n = 1; n < 400; n++) {
      double factor = (2.0 * n - 1) / (2.0 * n);
      term *= factor * factor * m;
      sum -= term / (2.0 * n - 1);
    }
    return pitch * Math.sqrt(1 + a * a) * sum;
  }

  @Test
  void aSineHasTheLengthOfItsEllipticIntegral() {
    for (double depth : new double[] {1, 4, -4}) {
      Meridian m = Meridian.from(mm(20), mm(0)).sine(2, mm(depth), mm(6)).wall(mm(0.1));
      double exact = 2 * sineLength(Math.abs(depth), 6);
      assertThat(m.length().mm()).isCloseTo(exact, within(1e-9 * exact));
    }
  }

  @Test
  void curvesRunByTheirArcLength() {
    Meridian m =
        Meridian.from(mm(20), mm(0))
            .sine(1, mm(4), mm(6))
            .splineThrough(mm(22), mm(8), mm(21), mm(11), mm(18), mm(12), mm(0), mm(14))
            .wall(mm(0.1));
    DrawnLine line = m.middle().line();
    double h = 1e-5 * line.length();
    for (int c = 0; c < line.curves(); c++) {
      double length = line.curve(c).length();
      for (int i = 1; i < 200; i++) {
        double s = length * i / 200;
        Spot before = line.curve(c).at(s - h);
        Spot here = line.curve(c).at(s);
        Spot after = line.curve(c).at(s + h);
        // central differences, error of h^2, and the quintics between the points of the table
        assertThat((after.r() - before.r()) / (2 * h))
            .isCloseTo(Math.cos(here.angle()), within(2e-7));
        assertThat((after.z() - before.z()) / (2 * h))
            .isCloseTo(Math.sin(here.angle()), within(2e-7));
        assertThat((after.angle() - before.angle()) / (2 * h))
            .isCloseTo(here.curvature(), within(1e-5 * line.curve(c).sharpest()));
      }
    }
  }

  @Test
  void aSplineCrossesTheAxisSquarely() {
    Meridian m =
        Meridian.from(mm(0), mm(0))
            .splineThrough(mm(4), mm(1), mm(6), mm(4), mm(5), mm(8), mm(0), mm(11))
            .wall(mm(0.4));
    ShellMesh mesh = m.mesh(1.0);
    int last = mesh.elements() - 1;
    assertThat(mesh.radius[0]).isZero();
    assertThat(mesh.radius[last + 1]).isZero();
    assertThat(Math.sin(mesh.angle[0])).isCloseTo(0.0, within(0.05));
    assertThat(Math.cos(mesh.angle[last])).isCloseTo(-1.0, within(0.05));
  }

  @Test
  void aBendTurnsByItsAngle() {
    Meridian m =
        Meridian.from(mm(20), mm(0))
            .lineTo(mm(20), mm(10))
            .bend(mm(5), Angle.degrees(90))
            .toAxis()
            .wall(mm(1));
    double tube = 10 * Math.PI * (400 - 361);
    double disc = 225 * Math.PI;
    // a quarter of a torus by Pappus: centroid of a quarter of a ring
    double area = Math.PI / 4 * (25 - 16);
    double centroid = 15 + (125 - 64) / 3.0 / area;
    volume(m, tube + disc + 2 * Math.PI * centroid * area);
  }

  @Test
  void aWallTapersAndStepsSmoothly() {
    Meridian m =
        Meridian.from(mm(20), mm(0))
            .lineTo(mm(20), mm(10))
            .named("foot")
            .lineTo(mm(20), mm(30))
            .named("body")
            .lineTo(mm(20), mm(40))
            .named("foot")
            .wall("foot", mm(3))
            .taper("body", mm(1), mm(2))
            .blend(mm(4))
            .wall(mm(9));
    double[][] wall = {
      {0, 3}, {7.99, 3}, {10, 2}, {12, 1.1}, {20, 1.5}, {28, 1.9}, {30, 2.5}, {32, 3}, {40, 3}
    };
    for (double[] w : wall) {
      assertThat(m.wallAt(mm(w[0])).mm()).isCloseTo(w[1], within(1e-12));
    }
    Meridian half = m.wallTimes("body", 0.5).wallTimes(0.8);
    assertThat(half.wallAt(mm(20)).mm()).isCloseTo(0.6, within(1e-12));
    assertThat(half.wallAt(mm(2)).mm()).isCloseTo(2.4, within(1e-12));
    // the volume by Simpson's rule over the straight tube
    double sum = 0;
    int n = 4000;
    for (int i = 0; i <= n; i++) {
      double t = m.wallAt(mm(40.0 * i / n)).mm();
      double area = Math.PI * (400 - (20 - t) * (20 - t));
      sum += area * (i == 0 || i == n ? 1 : i % 2 == 1 ? 4 : 2);
    }
    double simpson = sum * 40.0 / n / 3;
    assertThat(m.printedVolume().mm3()).isCloseTo(simpson, within(1e-8 * simpson));
  }

  @Test
  void slopesOfTheWallAreItsDifferences() {
    Meridian m =
        Meridian.from(mm(20), mm(0))
            .lineTo(mm(20), mm(40))
            .taper(mm(10), mm(25), mm(1), mm(2))
            .taper(mm(20), mm(40), mm(0.5), mm(0.7))
            .wall(mm(0.6));
    Wall wall = m.middle().wall();
    double h = 1e-8;
    for (int i = 1; i < 400; i++) {
      double s = 1e-4 * i + 3e-6;
      double slope = (wall.thickness(s + h) - wall.thickness(s - h)) / (2 * h);
      assertThat(wall.slope(s, s)).isCloseTo(slope, within(1e-6));
    }
  }

  @Test
  void piecesAndWords() {
    Meridian m =
        Meridian.from(mm(12), mm(0))
            .lineTo(mm(12), mm(5))
            .named("neck")
            .arcTo(mm(20), mm(13))
            .wall("neck", mm(2))
            .wall(mm(1));
    assertThat(m.pieces()).extracting(Meridian.Piece::name).containsExactly("neck", "");
    assertThat(m.pieces().get(1).from()).isEqualTo(mm(5));
    assertThat(m.pieces().get(1).to()).isEqualTo(m.length());
    assertThat(m.wall()).isEqualTo(mm(1));
    assertThat(m.drawn()).isEqualTo(DrawnFace.OUTER);
    assertThat(m)
        .hasToString(
            "meridian of 2 pieces, 17.57 mm, wall 1 mm and 1 zones, drawn by its outer face");
  }
}
