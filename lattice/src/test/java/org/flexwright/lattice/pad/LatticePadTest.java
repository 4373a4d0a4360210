package org.flexwright.lattice.pad;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import java.util.List;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Estimate;
import org.flexwright.evidence.Factor;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.hardness.ShoreA;
import org.flexwright.lattice.cell.Cells;
import org.flexwright.lattice.cell.CubicStiffness;
import org.flexwright.lattice.cell.UnitCell;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Pressure;
import org.flexwright.response.Channel;
import org.flexwright.response.LoadCase;
import org.flexwright.response.LoadPath;
import org.flexwright.response.Response;
import org.flexwright.run.Progress;
import org.flexwright.run.RunControl;
import org.flexwright.run.Termination;
import org.junit.jupiter.api.Test;

final class LatticePadTest {

  private static final Grade GRADE = Grade.polyurethane(ShoreA.of(95).plusMinus(2));
  private static final LatticePad PAD =
      LatticePad.of(Cells.KELVIN)
          .footprint(mm(60), mm(60))
          .height(mm(20))
          .cell(mm(10))
          .strut(mm(0.8))
          .lower(Face.BONDED)
          .upper(Face.DRY);
  private static final LatticePad CENTRED =
      LatticePad.of(Cells.BODY_CENTRED)
          .footprint(mm(60), mm(60))
          .height(mm(20))
          .cell(mm(10))
          .strut(mm(1.2));
  private static final LoadCase THREE = LoadCase.toTravel(mm(3));

  @Test
  void pathEndsAtTheTravelAndRises() {
    for (LatticePad pad : List.of(PAD, CENTRED)) {
      Response r = pad.respond(GRADE, LoadCase.toTravel(mm(12.7)));
      LoadPath path = r.path();
      assertThat(path.last(Channel.TRAVEL)).isEqualTo(0.0127);
      assertThat(path.last(Channel.FORCE)).isEqualTo(r.load().nominal());
      assertThat(path.last(Channel.STRAIN)).isEqualTo(r.strain().nominal());
      assertThat(path.value(Channel.FORCE, 0)).isZero();
      for (int i = 1; i < path.size(); i++) {
        for (Channel c : path.channels()) {
          assertThat(path.value(c, i)).isGreaterThan(path.value(c, i - 1));
        }
      }
      assertThat(r.termination().complete()).isTrue();
      assertThat(r.strainCrossesLayers()).isTrue();
    }
  }

  @Test
  void exponentsAreSlopesThroughTheDoor() {
    for (LatticePad pad : List.of(PAD, CENTRED, PAD.upper(Face.LUBRICATED))) {
      Response r = pad.respond(GRADE, THREE);
      double h = 1e-3;
      Response up = LatticePad.STRUT.set(pad, pad.strut().times(1.0 + h)).respond(GRADE, THREE);
      Response down = LatticePad.STRUT.set(pad, pad.strut().times(1.0 - h)).respond(GRADE, THREE);
      double load = Math.log(up.load().nominal() / down.load().nominal()) / (2.0 * h);
      double strain = Math.log(up.strain().nominal() / down.strain().nominal()) / (2.0 * h);
      assertThat(r.load().exponents().of(Factor.SIZE_BIAS)).isCloseTo(load, within(1e-4));
      assertThat(r.strain().exponents().of(Factor.SIZE_BIAS)).isCloseTo(strain, within(1e-4));
      assertThat(r.strain().exponents().of(Factor.SIZE_SCATTER)).isCloseTo(strain, within(1e-4));
      assertThat(r.load().exponents().of(Factor.SIZE_SCATTER)).isZero();
      assertThat(r.strain().exponents().of(Factor.MODULUS)).isZero();
      Response stiffer = pad.respond(GRADE.measuredModulus(1.3, 1.1), THREE);
      assertThat(stiffer.load().nominal() / r.load().nominal()).isCloseTo(1.3, within(1e-9));
      assertThat(r.load().exponents().of(Factor.MODULUS)).isEqualTo(1.0);
    }
  }

  @Test
  void modulusLiesInItsBracket() {
    Estimate<Pressure> e = PAD.modulus(GRADE);
    assertThat(e.band()).isEqualTo(Estimate.Band.BRACKET);
    CubicStiffness solid = Cells.KELVIN.solid(PAD.slenderness(), GRADE.poisson());
    Pressure rest = GRADE.modulusAtRest();
    assertThat(e.high().pa()).isCloseTo(rest.pa() * solid.c11(), within(1.0));
    assertThat(e.low().pa())
        .isBetween(0.85 * rest.pa() * solid.young100(), rest.pa() * solid.young100());
    assertThat(e.nominal().pa()).isGreaterThan(1.8 * e.low().pa());
  }

  @Test
  void smallTravelFollowsTheModulus() {
    Grade linear = Grade.ofLaw("rubber", NeoHookean.ofYoung(Pressure.mpa(10)));
    double travel = 2e-6;
    double force = PAD.respond(linear, LoadCase.toTravel(mm(0.002))).load().nominal();
    double expected = PAD.modulus(linear).nominal().pa() * 0.06 * 0.06 * travel / 0.02;
    assertThat(force).isCloseTo(expected, within(1e-3 * expected));
  }

  /**
   * A rough other route: Gibson and Ashby's foam law (E = Es rho^2, Poisson's ratio 1/3) with free
   * and with held sides; the band of the answer must overlap what lies between.
   */
  @Test
  void demoPadAgainstTheFoamLaw() {
    double rho = PAD.relativeDensity();
    double es = GRADE.secantModulus(0.05).pa();
    double foam = es * rho * rho;
    // between a free block and one with its sides held, Poisson's ratio 1/3
    double held = foam * (1.0 - 1.0 / 3.0) / ((1.0 + 1.0 / 3.0) * (1.0 - 2.0 / 3.0));
    double area = 3.6e-3;
    Response r = PAD.respond(GRADE, THREE);
    double softened = Cells.KELVIN.path(PAD.slenderness()).softening(0.15);
    assertThat(r.load().nominal() * r.load().modelHigh()).isGreaterThan(foam * area * softened);
    assertThat(r.load().nominal() * r.load().modelLow()).isLessThan(held * area * softened);
  }

  @Test
  void facesOrderTheAnswers() {
    for (LatticePad pad : List.of(PAD, CENTRED)) {
      double bonded = pad.upper(Face.BONDED).respond(GRADE, THREE).load().nominal();
      Response dry = pad.respond(GRADE, THREE);
      double slick = pad.upper(Face.LUBRICATED).respond(GRADE, THREE).load().nominal();
      double both =
          pad.upper(Face.LUBRICATED).lower(Face.LUBRICATED).respond(GRADE, THREE).load().nominal();
      assertThat(dry.load().nominal()).isEqualTo(bonded);
      assertThat(slick).isLessThan(bonded);
      assertThat(both).isLessThan(slick);
      assertThat(dry.load().nominal() * dry.load().modelLow()).isLessThan(slick * 1.1);
    }
    assertThat(PAD.respond(GRADE, THREE).caveats())
        .anyMatch(c -> c.toString().startsWith("dry face: taken as no slip"));
    assertThat(PAD.upper(Face.BONDED).respond(GRADE, THREE).caveats())
        .noneMatch(c -> c.model().equals("dry face"));
  }

  @Test
  void bucklingStrutsAreToldAndWidenTheBand() {
    Response small = CENTRED.upper(Face.BONDED).respond(GRADE, LoadCase.toTravel(mm(0.2)));
    Response large = CENTRED.upper(Face.BONDED).respond(GRADE, THREE);
    assertThat(small.caveats()).noneMatch(c -> c.model().equals("buckling of struts"));
    assertThat(large.caveats()).anyMatch(c -> c.model().equals("buckling of struts"));
    assertThat(small.load().modelLow()).isGreaterThan(0.85);
    assertThat(large.load().modelLow()).isLessThan(0.4);
    // never below the endless lattice
    CubicStiffness solid = Cells.BODY_CENTRED.solid(CENTRED.slenderness(), GRADE.poisson());
    assertThat(large.load().modelLow()).isGreaterThan(0.5 * solid.young100() / solid.c11());
  }

  @Test
  void caveatsAtTheBorders() {
    assertThat(models(PAD, 11.9)).doesNotContain("bending of struts without contact");
    assertThat(models(PAD, 12.1)).contains("bending of struts without contact");
    assertThat(models(PAD.strut(mm(2)), 15.0)).contains("densification");
    assertThat(models(PAD.strut(mm(1.4)), 1)).noneMatch(m -> m.contains("joint"));
    assertThat(models(PAD.strut(mm(1.5)), 1)).contains("Kelvin joint stiffening");
    LatticePad wide = PAD.footprint(mm(130), mm(130));
    assertThat(models(wide, 1)).contains("finite pads of the Kelvin cell");
    LatticePad oblong = PAD.footprint(mm(60), mm(120));
    assertThat(models(oblong, 1)).contains("finite pads of the Kelvin cell");
    assertThat(oblong.respond(GRADE, THREE).load().modelHigh())
        .isGreaterThan(PAD.respond(GRADE, THREE).load().modelHigh());
  }

  private static List<String> models(LatticePad pad, double travel) {
    return pad.respond(GRADE, LoadCase.toTravel(mm(travel))).caveats().stream()
        .map(Caveat::model)
        .toList();
  }

  @Test
  void stopKeepsThePath() {
    RunControl stop =
        new RunControl() {
          private int calls;

          @Override
          public void progress(Progress progress) {
            calls++;
          }

          @Override
          public boolean stopRequested() {
            return calls > 5;
          }
        };
    Response r = PAD.respond(GRADE, THREE, stop);
    assertThat(r.termination().kind()).isEqualTo(Termination.Kind.STOPPED);
    assertThat(r.path().size()).isEqualTo(6);
  }

  @Test
  void cellOfAUserHasTheBracketAsItsBand() {
    UnitCell own = new OwnCell(Cells.KELVIN);
    LatticePad pad =
        LatticePad.of(own).footprint(mm(60), mm(60)).height(mm(20)).cell(mm(10)).strut(mm(0.8));
    Response r = pad.respond(GRADE, THREE);
    Response built = PAD.respond(GRADE, THREE);
    assertThat(r.caveats()).anyMatch(c -> c.message().startsWith("no pads of this cell"));
    assertThat(r.load().nominal() * r.load().modelLow()).isLessThan(built.load().nominal());
    assertThat(r.load().nominal() * r.load().modelHigh()).isGreaterThan(built.load().nominal());
    Response free = pad.lower(Face.LUBRICATED).upper(Face.LUBRICATED).respond(GRADE, THREE);
    assertThat(free.load().nominal()).isLessThan(r.load().nominal());
  }

  @Test
  void volumeAndThinnest() {
    assertThat(PAD.printedVolume().mm3()).isCloseTo(72000.0 * PAD.relativeDensity(), within(1e-6));
    assertThat(PAD.thinnest()).isEqualTo(new Feature(Feature.Kind.STRUT, mm(0.8)));
    assertThat(PAD.levers())
        .extracting(Object::toString)
        .containsExactly("strut diameter", "cell edge", "pad height");
    assertThat(LatticePad.CELL.set(PAD, mm(20.0 / 3.0)).cells()).isEqualTo(new WholeCells(9, 9, 3));
    assertThat(LatticePad.HEIGHT.set(PAD, mm(30)).cells()).isEqualTo(new WholeCells(6, 6, 3));
  }

  @Test
  void refusesCellsThatDoNotDivide() {
    assertThatThrownBy(() -> PAD.cell(mm(7)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("cell edge is 7 mm")
        .hasMessageContaining("60 mm x 60 mm x 20 mm into whole cells within 1 %")
        .hasMessageContaining("the nearest cells that do: 6.66667 mm and 10 mm");
    assertThatThrownBy(() -> PAD.footprint(mm(61), mm(57)))
        .hasMessageContaining(
            "no near cell divides it; 10 mm would with a footprint of 60 mm x 60 mm");
    assertThat(PAD.height(mm(20.19)).cells().high()).isEqualTo(2);
    assertThatThrownBy(() -> PAD.height(mm(20.21))).isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(() -> PAD.cell(mm(0.01))).hasMessageContaining("at most 1000 cells");
  }

  @Test
  void refusesWhatMakesNoSense() {
    assertThatThrownBy(() -> PAD.strut(mm(4)))
        .hasMessageContaining("strut diameter is 4 mm, allowed is at most 3.5 mm in a Kelvin cell")
        .hasMessageContaining("take a larger cell or a thinner strut");
    assertThatThrownBy(() -> PAD.strut(mm(0))).hasMessageContaining("strut diameter");
    assertThatThrownBy(() -> PAD.height(mm(-20))).hasMessageContaining("pad height");
    assertThatThrownBy(() -> PAD.respond(GRADE, LoadCase.toTravel(mm(20))))
        .hasMessageContaining(
            "travel is 20 mm, allowed is above 0 and below the pad height of 20 mm");
    assertThatThrownBy(() -> PAD.respond(GRADE, LoadCase.toHold(Force.newtons(3))))
        .hasMessageContaining("allowed is a travel of the loaded face");
  }

  @Test
  void readsWell() {
    assertThat(PAD.toString())
        .isEqualTo(
            "Kelvin pad 60 mm x 60 mm x 20 mm, 6 x 6 x 2 cells of 10 mm, struts 0.8 mm,"
                + " bonded below, dry above");
    assertThat(Face.LUBRICATED.toString()).isEqualTo("lubricated");
  }
}
