package org.flexwright.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.flexwright.quantity.Force.newtons;
import static org.flexwright.quantity.Length.mm;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.flexwright.decide.Question;
import org.flexwright.decide.Target;
import org.flexwright.grade.Grade;
import org.flexwright.grade.PrintProcess;
import org.flexwright.hardness.ShoreA;
import org.flexwright.hardness.relation.Gent1958;
import org.flexwright.lattice.cell.Cells;
import org.flexwright.lattice.pad.LatticePad;
import org.flexwright.quantity.Length;
import org.flexwright.response.LoadCase;
import org.flexwright.shells.bellows.Bellows;
import org.flexwright.shells.inflate.Bore;
import org.flexwright.shells.inflate.Sleeve;
import org.flexwright.testing.BuildFolders;
import org.flexwright.testing.Effort;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

/**
 * Bytes a call and responses an answer are gated; times depend on the machine and its load and are
 * only reported, in {@code effort.md} of the build folder.
 */
class EffortGateTest {

  private static final List<String> REPORT = new ArrayList<>();
  private static final Grade GRADE =
      Grade.polyurethane(ShoreA.of(95).plusMinus(2)).printedBy(PrintProcess.beads(mm(0.3)));
  private static final Bellows NECK =
      Bellows.convolutions(5).meanRadius(mm(15)).depth(mm(8)).pitch(mm(14)).wall(mm(0.9));
  private static final Sleeve SLEEVE =
      Sleeve.outside(mm(21.4))
          .span(mm(30))
          .wall(mm(0.6))
          .into(Bore.of(mm(22)).tolerance(mm(0.2)).friction(0.4, 0.1));
  private static final LatticePad PAD =
      LatticePad.of(Cells.KELVIN)
          .footprint(mm(60), mm(60))
          .height(mm(20))
          .cell(mm(10))
          .strut(mm(0.8));

  private static void report(String what, Effort effort) {
    REPORT.add("| " + what + " | " + effort + " |");
  }

  @AfterAll
  static void write() throws IOException {
    List<String> lines = new ArrayList<>(List.of("| call | effort |", "|---|---|"));
    lines.addAll(REPORT);
    Path file = BuildFolders.target("effort.md");
    Files.createDirectories(file.toAbsolutePath().getParent());
    Files.write(file, lines);
  }

  @Test
  void aRelationThroughItsTypedDoorMakesOneObject() {
    Gent1958 gent = new Gent1958();
    report("hardness relation", Effort.objectWithin(24, () -> gent.modulus(60)));
  }

  @Test
  void aClosedFormThroughItsTypedDoorMakesAFewObjects() {
    report("bellows stiffness", Effort.objectWithin(800, () -> NECK.stiffness(GRADE)));
    report("grade secant", Effort.objectWithin(24, () -> GRADE.secantModulus(0.03)));
  }

  @Test
  void aResponseStaysSmall() {
    LoadCase travel = LoadCase.toTravel(mm(3));
    LoadCase hold = LoadCase.toHold(newtons(5));
    report("bellows response", Effort.objectWithin(40_000, () -> NECK.respond(GRADE, travel)));
    report("sleeve response", Effort.objectWithin(60_000, () -> SLEEVE.respond(GRADE, hold)));
    report("pad response", Effort.objectWithin(40_000, () -> PAD.respond(GRADE, travel)));
  }

  @Test
  void anAnswerTakesABoundedNumberOfResponses() {
    Length least = mm(0.3);
    int effort =
        Question.of(NECK)
            .vary(Bellows.WALL, least, mm(2.1))
            .meet(Target.force().between(newtons(3), newtons(8)).atTravel(mm(6)))
            .answer(GRADE)
            .effort();
    // 33 to scan, 7 realisable sizes, and about a dozen for each end of a window
    assertThat(effort).isBetween(40, 33 + 7 + 4 * 14);
    report(
        "bellows question",
        Effort.ofObject(
            () ->
                Question.of(NECK)
                    .vary(Bellows.WALL, least, mm(2.1))
                    .meet(Target.force().between(newtons(3), newtons(8)).atTravel(mm(6)))
                    .answer(GRADE)));
  }
}
