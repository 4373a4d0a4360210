package org.flexwright.shells.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.flexwright.quantity.Length.mm;

import org.flexwright.response.LoadCase;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.shells.Grades;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Plates and membranes at the ends of what their constructors take: a state, finite, or words. */
final class FarOutsideTest {

  private static void answers(Part<?> part, double nu, double travel) {
    Response r = part.respond(Grades.linear(nu), LoadCase.toTravel(mm(travel)));
    String what = part + ", nu " + nu + ", travel " + travel + ": " + r;
    assertThat(r.load().nominal()).as(what).isPositive().isFinite();
    assertThat(r.strain().nominal()).as(what).isPositive().isFinite();
    assertThat(r.load().modelLow()).as(what).isBetween(1e-6, 1.0);
    assertThat(r.load().modelHigh()).as(what).isBetween(1.0, 1e7);
    assertThat(r.path().size()).as(what).isEqualTo(17);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.001, 0.3, 0.49, 0.5})
  void pressedPlates(double nu) {
    for (PressedPlate.Rim rim : PressedPlate.Rim.values()) {
      for (double wall : new double[] {0.001, 0.1, 1, 9.9}) {
        for (double travel : new double[] {1e-6, 0.1, 3, 100}) {
          answers(PressedPlate.of(rim, mm(10), mm(wall)), nu, travel);
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.001, 0.3, 0.49, 0.5})
  void membranes(double nu) {
    for (CircularPlate.Rim rim : CircularPlate.Rim.values()) {
      for (double before : new double[] {0, 1e-9, 0.01, 0.5}) {
        for (double travel : new double[] {1e-3, 0.1, 3, 100}) {
          answers(TautMembrane.of(rim, mm(10), mm(0.1)).prestrain(before), nu, travel);
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.001, 0.3, 0.49, 0.5})
  void ringsAndRectangles(double nu) {
    for (CircularPlate.Rim rim : CircularPlate.Rim.values()) {
      for (double wall : new double[] {1e-3, 0.04}) {
        for (double bore : new double[] {1e-3, 5, 9.95}) {
          for (AnnularPlate.Inner inner : AnnularPlate.Inner.values()) {
            AnnularPlate ring = AnnularPlate.of(rim, inner, mm(10), mm(bore), mm(wall));
            answers(ring, nu, 0.1);
            answers(ring.load(AnnularPlate.Load.PRESSURE), nu, 0.1);
          }
        }
      }
      for (double length : new double[] {10, 300, 1e5}) {
        for (double wall : new double[] {1e-3, 9.9}) {
          RectangularPlate plate = RectangularPlate.of(rim, mm(10), mm(length), mm(wall));
          answers(plate, nu, 0.1);
          for (double side : new double[] {0, 1e-4, 10}) {
            answers(plate.load(new RectangularPlate.Load.Patch(mm(side))), nu, 0.1);
          }
        }
      }
    }
  }
}
