package org.flexwright.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.flexwright.quantity.Force.newtons;
import static org.flexwright.quantity.Length.mm;
import static org.flexwright.quantity.Pressure.mpa;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.flexwright.evidence.Factor;
import org.flexwright.grade.Grade;
import org.flexwright.grade.PrintProcess;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Length;

/** What holds for every question: levers keep their word, rows and windows agree. */
class AdvicePropertiesTest {

  private static Question<Slab> question(
      double low, double ratio, double second, double cycles, double from) {
    Question<Slab> one =
        Question.of(Slab.of(30).modelBand(1.05))
            .vary(Slab.WALL, mm(from), mm(4))
            .meet(Target.force().between(newtons(low), newtons(low * ratio)).atTravel(mm(2)))
            .survive(Survival.cycles(cycles));
    // a second target at a larger travel strains the part more
    return second < 0.5
        ? one
        : one.meet(Target.force().atMost(newtons(low * ratio * 8)).atTravel(mm(10)));
  }

  private static Grade grade(double band, double life, boolean beads) {
    PrintProcess process =
        beads ? PrintProcess.beads(mm(0.3)) : PrintProcess.continuous(mm(0.3), mm(0.3));
    return Grade.ofLaw("test", NeoHookean.ofYoung(mpa(60)))
        .printedBy(process)
        .known(Factor.MODULUS, band)
        .known(Factor.LIFE, life);
  }

  @Property(seed = "71", tries = 400)
  void aLeverThatIsEnoughIsEnough(
      @ForAll @DoubleRange(min = 0.005, max = 1) @Scale(3) double low,
      @ForAll @DoubleRange(min = 1.05, max = 6) double ratio,
      @ForAll @DoubleRange(min = 0, max = 1) double second,
      @ForAll @DoubleRange(min = 0, max = 7) double decades,
      @ForAll @DoubleRange(min = 1, max = 2) double band,
      @ForAll @DoubleRange(min = 1, max = 3) double life,
      @ForAll boolean beads) {
    Window<Slab> window =
        question(low, ratio, second, Math.pow(10, decades), 0.2).answer(grade(band, life, beads));
    for (Advice<Slab> lever : window.levers()) {
      if (lever.enough()) {
        assertThat(lever.solve().verdict()).as(lever.sentence()).isEqualTo(Verdict.MEETS);
      }
    }
  }

  @Property(seed = "72", tries = 400)
  void rowsThatMeetLieInTheWindows(
      @ForAll @DoubleRange(min = 0.001, max = 1) @Scale(3) double low,
      @ForAll @DoubleRange(min = 1.001, max = 6) @Scale(3) double ratio,
      @ForAll @DoubleRange(min = 0.2, max = 0.4) double from,
      @ForAll @DoubleRange(min = 1, max = 1.5) double band,
      @ForAll boolean beads) {
    Window<Slab> window = question(low, ratio, 0, 1, from).answer(grade(band, 1, beads));
    for (Candidate c : window.candidates()) {
      Length size = c.size();
      if (c.meetsNominally()) {
        assertThat(window.nominal()).as("%s", size).anyMatch(w -> near(w, size));
      }
      if (c.verdict() == Verdict.MEETS) {
        assertThat(window.sure()).as("%s", size).anyMatch(w -> near(w, size));
      }
      if (beads) {
        double beadsWide = size.mm() / 0.3;
        assertThat(Math.abs(beadsWide - Math.rint(beadsWide))).isLessThan(1e-6);
      }
    }
  }

  private static boolean near(Interval w, Length size) {
    return size.m() >= w.from().m() * (1 - 1e-9) && size.m() <= w.to().m() * (1 + 1e-9);
  }
}
