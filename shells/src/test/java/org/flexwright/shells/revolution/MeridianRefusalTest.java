package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNoException;
import static org.flexwright.quantity.Length.mm;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.flexwright.InvalidInputException;
import org.flexwright.quantity.Angle;
import org.junit.jupiter.api.Test;

/** What cannot be is refused, with the place. */
final class MeridianRefusalTest {

  private static MeridianDraft tube() {
    return Meridian.from(mm(10), mm(0)).lineTo(mm(10), mm(20)).named("body");
  }

  private static void refused(ThrowingCallable what, String... words) {
    assertThatExceptionOfType(InvalidInputException.class)
        .isThrownBy(what)
        .withMessageContainingAll(words);
  }

  @Test
  void pieces() {
    refused(() -> Meridian.from(mm(-1), mm(0)), "radius at the start", "-0.001 m");
    refused(() -> Meridian.from(mm(1), mm(0)).wall(mm(1)), "meridian", "empty");
    refused(() -> tube().lineTo(mm(10), mm(20)), "length of piece 2", "0 m");
    refused(() -> tube().lineTo(mm(-1), mm(20)), "radius at the end of piece 2");
    refused(() -> Meridian.from(mm(1), mm(0)).arcTo(mm(2), mm(2)), "arc as piece 1", "direction");
    refused(() -> tube().arcTo(mm(10), mm(0)), "end of piece 2", "straight behind");
    refused(() -> tube().bend(mm(0), Angle.degrees(9)), "radius of piece 2", "0 m");
    refused(() -> tube().bend(mm(1), Angle.degrees(0)), "turn of piece 2", "0 rad");
    refused(() -> tube().bend(mm(9), Angle.degrees(90)).bend(mm(9), Angle.degrees(9)), "piece 3");
    refused(() -> tube().arcAbout(mm(5), mm(20), mm(5), mm(26)), "end of piece 2", "6 mm", "5 mm");
    refused(() -> tube().arcAbout(mm(15), mm(20), mm(20), mm(20)), "turn of piece 2", "half");
    refused(() -> tube().convolutions(1.3, mm(5), mm(6)), "folds of piece 2", "1.3");
    refused(() -> tube().convolutions(2, mm(2.9), mm(6)), "depth of piece 2", "2.9 mm", "3 mm");
    refused(() -> tube().sine(2, mm(0), mm(6)), "depth of piece 2");
    refused(() -> tube().sine(0.5, mm(-11), mm(6)), "radius at the end of piece 2");
    refused(() -> tube().splineThrough(mm(1)), "points of piece 2", "1 lengths");
    refused(() -> Meridian.from(mm(1), mm(0)).named("x"), "name", "draw a piece first");
    refused(() -> tube().named(" "), "name", "blank");
  }

  @Test
  void linesOffTheHalfPlane() {
    refused(() -> tube().sine(1, mm(-11), mm(60)).wall(mm(1)), "radius", "piece 2", "mm along");
    refused(
        () -> Meridian.from(mm(0), mm(0)).lineTo(mm(9), mm(3)).named("cone").wall(mm(1)),
        "direction on the axis",
        "18.43 deg",
        "piece 1 (cone), 0 mm along");
    refused(
        () -> tube().toAxis().lineTo(mm(5), mm(20)).wall(mm(1)), "radius", "piece 2, 30 mm along");
  }

  @Test
  void wallsWithoutRoom() {
    refused(() -> tube().wall(mm(0)), "wall", "above 0");
    refused(() -> tube().wall(mm(10)), "wall is 10 mm at piece 1 (body)", "cross the axis");
    assertThatNoException().isThrownBy(() -> tube().wall(mm(9.9)));
    // drawn by the outside, roots of the folds open inwards and crests close: a quarter of 6 mm
    MeridianDraft folds = Meridian.from(mm(20), mm(0)).convolutions(2, mm(5), mm(6)).named("fold");
    refused(() -> folds.wall(mm(1.5)), "wall is 1.5 mm at piece 1 (fold)", "fold", "1.5 mm");
    assertThatNoException().isThrownBy(() -> folds.wall(mm(1.49)));
    refused(() -> folds.drawn(DrawnFace.INNER).wall(mm(1.5)), "piece 1 (fold)", "1.5 mm");
    refused(() -> folds.drawn(DrawnFace.MIDDLE).wall(mm(3)), "piece 1 (fold)", "1.5 mm");
    assertThatNoException().isThrownBy(() -> folds.drawn(DrawnFace.MIDDLE).wall(mm(2.99)));
    refused(() -> folds.wall(mm(1)).wallTimes(1.5), "piece 1 (fold)");
  }

  @Test
  void wallsThatMeetThemselves() {
    MeridianDraft hairpin =
        Meridian.from(mm(10), mm(0))
            .lineTo(mm(10), mm(20))
            .named("up")
            .lineTo(mm(14), mm(20))
            .lineTo(mm(12), mm(0))
            .named("down")
            .drawn(DrawnFace.MIDDLE);
    assertThatNoException().isThrownBy(() -> hairpin.wall(mm(1.9)));
    refused(() -> hairpin.wall(mm(2.1)), "meets itself", "piece 1 (up), ", "piece 3 (down), ");
    refused(
        () ->
            Meridian.from(mm(10), mm(0))
                .lineTo(mm(20), mm(10))
                .lineTo(mm(20), mm(0))
                .lineTo(mm(10), mm(10))
                .wall(mm(0.5)),
        "meets itself",
        "piece 1",
        "piece 3");
  }

  @Test
  void corners() {
    MeridianDraft can = Meridian.from(mm(0), mm(0)).lineTo(mm(10), mm(0)).named("floor");
    refused(() -> can.lineTo(mm(10), mm(2)).wall(mm(2)), "2 mm at piece 2, 12 mm", "corner");
    assertThatNoException().isThrownBy(() -> can.lineTo(mm(10), mm(2)).wall(mm(1.9)));
    refused(() -> can.lineTo(mm(1), mm(1)).wall(mm(0.1)), "corner of 173.7 deg", "piece 1 (floor)");
    refused(() -> can.lineTo(mm(10), mm(3)).lineTo(mm(0), mm(3)).wall(mm(1.6)), "piece", "corner");
  }

  @Test
  void zones() {
    refused(() -> tube().wall("neck", mm(2)).wall(mm(1)), "\"neck\"", "[body]");
    refused(() -> tube().wall(mm(1)).wallTimes("neck", 2), "\"neck\"", "[body]");
    refused(() -> tube().wall("body", mm(-2)), "wall of \"body\"", "-0.002 m");
    refused(
        () -> tube().taper(mm(15), mm(21), mm(1), mm(2)).wall(mm(1)), "15 to 21 mm", "0 to 20 mm");
    refused(() -> tube().wall(mm(1)).taper(mm(9), mm(9), mm(1), mm(2)), "wall zone", "9 to 9 mm");
    refused(
        () -> tube().wall(mm(1)).taper(mm(9), mm(12), mm(2), mm(2)).blend(mm(4)),
        "blend of the wall",
        "4 mm at piece 1 (body), 9 mm along",
        "3 mm");
    refused(() -> tube().blend(mm(0)), "blend of the wall", "above 0");
    refused(() -> tube().wall(mm(1)).wallTimes(0), "factor on the wall");
    refused(() -> tube().wall(mm(1)).wallAt(mm(21)), "place on the line", "0.021 m");
    refused(() -> tube().wall(mm(1)).triangles(mm(0)), "tolerance of the surface");
    refused(() -> tube().wall(mm(1)).triangles(mm(1e-14)), "tolerance", "triangles");
    refused(() -> tube().wall(mm(1)).mesh(0.0), "fineness");
  }
}
