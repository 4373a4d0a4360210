package org.flexwright.shells;

import static org.flexwright.quantity.Length.mm;

import java.util.stream.Stream;
import org.flexwright.quantity.Angle;
import org.flexwright.response.LoadCase;
import org.flexwright.shells.block.BondedBlock;
import org.flexwright.shells.block.Indentation;
import org.flexwright.shells.block.RoundSection;
import org.flexwright.shells.block.RubberBush;
import org.flexwright.shells.dome.ClampedCap;
import org.flexwright.shells.dome.ConicalDisc;
import org.flexwright.shells.dome.DomedCylinder;
import org.flexwright.shells.dome.PressedDome;
import org.flexwright.testing.Draw;
import org.flexwright.testing.PartCase;
import org.flexwright.testing.PartHarness;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class DomesAndBlocksTest {

  /** The first number of neighbouring seeds hardly differs: throw it away. */
  private static Draw later(Draw d) {
    d.between(1, 2);
    return d;
  }

  static Stream<PartCase<?>> domes() {
    return Stream.of(
        PartCase.of(
            "pressed dome",
            (s, d) ->
                PressedDome.of(
                    mm(30 * s),
                    mm(later(d).between(0.1, 3) * s),
                    mm(later(d).between(0.3, 10) * s)),
            (s, d) -> LoadCase.toTravel(mm(later(d).between(0.05, 12) * s))),
        PartCase.of(
                "cap by travel",
                (s, d) -> ClampedCap.of(mm(20 * s), mm(later(d).between(25, 400) * s), mm(s)),
                (s, d) -> LoadCase.toTravel(mm(later(d).between(0.05, 2) * s)))
            .mayFall(),
        PartCase.of(
                "cap to its limit",
                (s, d) -> ClampedCap.of(mm(20 * s), mm(later(d).between(25, 100) * s), mm(s)),
                (s, d) -> LoadCase.toLimit())
            .mayFall(),
        PartCase.of(
                "conical disc",
                (s, d) ->
                    ConicalDisc.of(
                        mm(40 * s),
                        mm(later(d).between(6, 34) * s),
                        mm(later(d).between(0.4, 2) * s),
                        mm(later(d).between(0.1, 4) * s)),
                (s, d) -> LoadCase.toTravel(mm(later(d).between(0.05, 4) * s)))
            .mayFall(),
        PartCase.of(
                "conical disc to its limit",
                (s, d) ->
                    ConicalDisc.of(
                        mm(40 * s),
                        mm(later(d).between(9, 32) * s),
                        mm(s),
                        mm(later(d).between(1.45, 4) * s)),
                (s, d) -> LoadCase.toLimit())
            .mayFall(),
        PartCase.of(
            "domed cylinder",
            (s, d) ->
                DomedCylinder.of(
                        mm(20 * s),
                        mm(later(d).between(20, 200) * s),
                        mm(later(d).between(0.3, 3) * s))
                    .domeShare(later(d).between(0.4, 2.2)),
            (s, d) -> LoadCase.toTravel(mm(later(d).between(0.02, 2) * s))));
  }

  static Stream<PartCase<?>> blocks() {
    return Stream.of(
            PartCase.of(
                "bonded disc",
                (s, d) ->
                    BondedBlock.disc(mm(20 * s), mm(later(d).between(1, 30) * s))
                        .faces(d.oneOf(BondedBlock.Faces.values())),
                (s, d) -> LoadCase.toTravel(mm(later(d).between(0.02, 0.9) * s))),
            PartCase.of(
                "bonded strip",
                (s, d) ->
                    BondedBlock.strip(
                            mm(10 * s),
                            mm(later(d).between(20, 100) * s),
                            mm(later(d).between(1, 30) * s))
                        .faces(d.oneOf(BondedBlock.Faces.values())),
                (s, d) -> LoadCase.toTravel(mm(later(d).between(0.02, 0.9) * s))),
            PartCase.of(
                "round section",
                (s, d) -> RoundSection.of(mm(3 * s), mm(later(d).between(8, 100) * s)),
                (s, d) -> LoadCase.toTravel(mm(later(d).between(0.01, 1.2) * s))),
            PartCase.of(
                "bush",
                (s, d) ->
                    RubberBush.of(
                        d.oneOf(RubberBush.Motion.SIDEWAYS, RubberBush.Motion.AXIAL),
                        mm(4 * s),
                        mm(later(d).between(4.6, 15) * s),
                        mm(later(d).between(1, 60) * s)),
                (s, d) -> LoadCase.toTravel(mm(later(d).between(0.01, 1) * s))),
            PartCase.of(
                "turned bush",
                (s, d) ->
                    RubberBush.of(
                        RubberBush.Motion.TORSION,
                        mm(4 * s),
                        mm(later(d).between(4.6, 15) * s),
                        mm(later(d).between(1, 60) * s)),
                (s, d) -> LoadCase.toAngle(Angle.rad(later(d).between(0.01, 0.5)))),
            PartCase.of(
                "ball",
                (s, d) ->
                    Indentation.ball(mm(8 * s), mm(later(d).between(0.8, 20) * s))
                        .base(d.oneOf(Indentation.Base.values())),
                (s, d) -> LoadCase.toTravel(mm(later(d).between(0.01, 2) * s))))
        .map(PartCase::eitherWay);
  }

  @ParameterizedTest
  @MethodSource("domes")
  void domesDoWhatEveryPartMust(PartCase<?> c) {
    PartHarness.check(c, Grades.rubber(), 21);
    PartHarness.check(c, Grades.polyurethane(), 22);
  }

  @ParameterizedTest
  @MethodSource("blocks")
  void blocksDoWhatEveryPartMust(PartCase<?> c) {
    PartHarness.check(c, Grades.rubber(), 31);
    PartHarness.check(c, Grades.polyurethane(), 32);
  }
}
