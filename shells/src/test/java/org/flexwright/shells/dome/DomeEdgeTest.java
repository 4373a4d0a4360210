package org.flexwright.shells.dome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import java.util.stream.Stream;
import org.flexwright.quantity.Angle;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Response;
import org.flexwright.shells.Grades;
import org.flexwright.testing.PartCase;
import org.flexwright.testing.PartHarness;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class DomeEdgeTest {

  @RegisterExtension
  static final VerificationTable TABLE = VerificationTable.of(DomeEdgeTest.class, "edge.csv");

  static Stream<ReferenceCase> cases() {
    return TABLE.cases();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void meetsReference(ReferenceCase c) {
    double ratio = c.input("ratio");
    double nu = c.input("nu");
    DomeEdge dome = DomeEdge.of(mm(ratio), Angle.degrees(c.input("angle")), mm(1));
    Response r = dome.respond(Grades.linear(nu), LoadCase.toTravel(mm(0.01)));
    double line =
        r.load().nominal()
            / (2 * Math.PI * ratio * 1e-3 * Math.sin(Math.toRadians(c.input("angle"))));
    double lambda = Math.pow(3 * (1 - nu * nu), 0.25) * Math.sqrt(ratio);
    TABLE.check(c, 1e-5 * 1e6 * 1e-3 / (ratio * 1e-3 * line * lambda));
  }

  @Test
  void doesWhatEveryPartMust() {
    PartCase<DomeEdge> edge =
        PartCase.of(
            "edge of a dome",
            (s, d) ->
                DomeEdge.of(
                    mm(30 * s), Angle.degrees(d.between(20, 90)), mm(d.between(0.3, 3) * s)),
            (s, d) -> LoadCase.toTravel(mm(d.between(0.01, 1) * s)));
    PartHarness.check(edge, Grades.rubber(), 31);
  }

  @Test
  void turnOfAnEdgeIsGeckelers() {
    DomeEdge dome = DomeEdge.of(mm(100), Angle.degrees(90), mm(1));
    // turn by H over spread by H: L/(R sin A)
    double lambda = Math.pow(3 * 0.75, 0.25) * 10;
    assertThat(dome.turn(Grades.linear(0.5), mm(0.1)).rad())
        .isCloseTo(lambda * 0.1 / 100, within(1e-12));
  }
}
