package org.flexwright.shells;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.inches;
import static org.flexwright.quantity.Length.mm;

import java.util.List;
import org.flexwright.grade.Grade;
import org.flexwright.quantity.Length;
import org.flexwright.response.Lever;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Part;
import org.flexwright.shells.bellows.Bellows;
import org.flexwright.shells.tube.Ring;
import org.flexwright.shells.wall.CircularPlate;
import org.flexwright.shells.wall.Strip;
import org.junit.jupiter.api.Test;

/**
 * A fact of the trade (common practice): in one grade, walls of 0.075, 0.050 and 0.025 in are 27 :
 * 8 : 1 in stiffness where bending rules, and the thinner strains less at the same travel. By
 * solved responses; and where it stops being true.
 */
final class CubeOfTheWallTest {

  private static final Length[] WALLS = {inches(0.025), inches(0.050), inches(0.075)};
  private static final Grade LINEAR = Grades.linear(0.49);

  /** Loads of the two thicker walls over that of the thinnest. */
  private static <P extends Part<P>> double[] ratios(
      P part, Lever<P> wall, Grade grade, Length travel) {
    double[] load = new double[3];
    for (int i = 0; i < 3; i++) {
      load[i] = wall.set(part, WALLS[i]).respond(grade, LoadCase.toTravel(travel)).load().nominal();
    }
    return new double[] {load[1] / load[0], load[2] / load[0]};
  }

  @Test
  void plateIsExact() {
    CircularPlate plate = CircularPlate.of(CircularPlate.Rim.CLAMPED, mm(30), mm(6), WALLS[0]);
    double[] r = ratios(plate, CircularPlate.WALL, LINEAR, mm(0.1));
    assertThat(r[0]).isCloseTo(8.0, within(1e-9));
    assertThat(r[1]).isCloseTo(27.0, within(1e-9));
  }

  @Test
  void wideRingIsNearAndThickRingIsNot() {
    // t/R 0.013 to 0.039; the outside stays, so the thick wall also has the smaller mean radius
    double[] wide =
        ratios(Ring.outside(mm(100)).length(mm(200)).wall(WALLS[0]), Ring.WALL, LINEAR, mm(0.1));
    assertThat(wide[0]).isCloseTo(8.0 * 1.018, within(0.01));
    assertThat(wide[1]).isCloseTo(27.0 * 1.036, within(0.03));
    // t/R 0.13 to 0.47: the smaller mean radius would give 9.9 and 42, shear and curvature take it
    // back
    double[] thick =
        ratios(Ring.outside(mm(10)).length(mm(40)).wall(WALLS[0]), Ring.WALL, LINEAR, mm(0.01));
    assertThat(thick[0]).isBetween(8.5, 8.8);
    assertThat(thick[1]).isBetween(28.5, 29.5);
  }

  @Test
  void deepBellowsIsNearAndShallowThinOneIsNot() {
    // C2 0.52 to 0.30: bending of the legs rules
    Bellows deep =
        Bellows.convolutions(3).meanRadius(mm(60)).depth(mm(24)).pitch(mm(12)).wall(WALLS[0]);
    double[] bending = ratios(deep, Bellows.WALL, LINEAR, mm(0.1));
    assertThat(bending[0]).isCloseTo(8.0, within(0.4));
    assertThat(bending[1]).isCloseTo(27.0, within(1.9));
    // C2 2.0 to 1.1: the hoop holds the thin wall back, thickness counts far less
    Bellows thin =
        Bellows.convolutions(3).meanRadius(mm(40)).depth(mm(17)).pitch(mm(33)).wall(WALLS[0]);
    double[] hoop = ratios(thin, Bellows.WALL, LINEAR, mm(0.1));
    assertThat(hoop[0]).isBetween(3.0, 5.5);
    assertThat(hoop[1]).isBetween(6.5, 12.0);
  }

  @Test
  void softeningGradeTakesAShareAtLargerStrain() {
    CircularPlate plate = CircularPlate.of(CircularPlate.Rim.CLAMPED, mm(30), mm(6), WALLS[0]);
    Grade tpu = Grades.polyurethane();
    double[] small = ratios(plate, CircularPlate.WALL, tpu, mm(0.05));
    assertThat(small[1]).isCloseTo(27.0, within(1e-9));
    // the thick wall is strained three times as much, so its secant modulus is lower
    double[] large = ratios(plate, CircularPlate.WALL, tpu, mm(6));
    assertThat(large[0]).isBetween(6.5, 7.95);
    assertThat(large[1]).isBetween(19.0, 26.5);
  }

  @Test
  void thinnerPlainWallStrainsLessAtTheSameTravel() {
    strainsLess(
        CircularPlate.of(CircularPlate.Rim.CLAMPED, mm(30), mm(6), WALLS[0]), CircularPlate.WALL);
    strainsLess(Strip.of(Strip.Ends.CANTILEVER, mm(30), mm(60), WALLS[0]), Strip.WALL);
    strainsLess(Ring.outside(mm(60)).length(mm(120)).wall(WALLS[0]), Ring.WALL);
    strainsLess(
        Bellows.convolutions(4).meanRadius(mm(40)).depth(mm(20)).pitch(mm(20)).wall(WALLS[0]),
        Bellows.WALL);
  }

  private static <P extends Part<P>> void strainsLess(P part, Lever<P> wall) {
    for (Grade grade : List.of(LINEAR, Grades.polyurethane())) {
      double last = 0.0;
      for (Length t : WALLS) {
        double strain =
            wall.set(part, t).respond(grade, LoadCase.toTravel(mm(1))).strain().nominal();
        assertThat(strain).as(part + " at " + t).isGreaterThan(last);
        last = strain;
      }
    }
  }
}
