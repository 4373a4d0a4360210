package org.flexwright.lattice.scaling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;
import static org.flexwright.quantity.Pressure.mpa;

import java.util.stream.Stream;
import org.flexwright.durability.WeakestLink;
import org.flexwright.evidence.Estimate;
import org.flexwright.grade.Grade;
import org.flexwright.hardness.ShoreA;
import org.flexwright.lattice.cell.Cells;
import org.flexwright.lattice.cell.UnitCell;
import org.flexwright.lattice.pad.LatticePad;
import org.flexwright.quantity.Area;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.response.Channel;
import org.flexwright.response.LoadCase;
import org.flexwright.response.LoadPath;
import org.flexwright.response.Response;
import org.flexwright.run.Termination;
import org.flexwright.testing.PartCase;
import org.flexwright.testing.PartHarness;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

final class ScalingTest {

  @RegisterExtension
  static final VerificationTable TABLE = VerificationTable.of(ScalingTest.class, "scaling.csv");

  private static final Pressure ONE = mpa(1);

  static Stream<ReferenceCase> cases() {
    return TABLE.cases();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void meetsReference(ReferenceCase c) {
    TABLE.check(c, computed(c));
  }

  private static double computed(ReferenceCase c) {
    return switch (c.formula()) {
      case "level-set density" -> LevelSurface.valueOf(c.text("surface")).density(c.input("level"));
      case "level of a density" ->
          LevelSurface.valueOf(c.text("surface")).level(c.input("density"));
      case "open foam" -> ScalingLaws.OPEN_FOAM.relative(c.input("density"));
      case "open foam collapse" -> ScalingLaws.OPEN_FOAM_COLLAPSE.relative(c.input("density"));
      case "densification strain" -> FoamCurve.of(c.input("density")).densification();
      case "Kelvin foam K1" -> k1(StrutSection.valueOf(c.text("section")));
      case "Kelvin foam K2" -> k2(StrutSection.valueOf(c.text("section")));
      case "sway root" -> Buckling.swayRoot();
      case "simple cubic sway" -> Buckling.simpleCubicSway().coefficient();
      case "octet strut buckling" -> Buckling.octet(c.input("n")).coefficient();
      case "nicked strut, bending" -> StrutFlaws.bendingFactor(c.input("depth"));
      case "nicked strut, pull" -> StrutFlaws.pullFactor(c.input("depth"));
      case "crooked strut, pinned" -> StrutFlaws.crookedPinned(c.input("amplitude"));
      case "crooked strut, built in" -> StrutFlaws.crookedBuiltIn(c.input("amplitude"));
      case "efficiency" -> efficiency(c.text("curve"));
      case "weakest link" -> new WeakestLink(c.input("m")).strengthRatio(c.input("count"));
      case "strain limit, Kelvin" -> limit("Kelvin, along an edge");
      case "strain limit, body-centred" -> limit("body-centred, edge");
      case "octet law" -> law("octet, pinned").relative(c.input("density")) / c.input("density");
      case "stiffest isotropic law" ->
          ScalingLaws.STIFFEST_ISOTROPIC.relative(c.input("density")) / c.input("density");
      default -> throw new IllegalArgumentException(c.formula());
    };
  }

  /** K1 and K2 read back from the law at two densities: rho^2/f = (1 + K2 rho)/K1. */
  private static double k1(StrutSection section) {
    ScalingLaw law = ScalingLaws.kelvin(section);
    double a = 1e-4 / law.relative(0.01);
    double b = 4e-4 / law.relative(0.02);
    return 1.0 / (2.0 * a - b);
  }

  private static double k2(StrutSection section) {
    ScalingLaw law = ScalingLaws.kelvin(section);
    double k2 = (4e-4 / law.relative(0.02) * k1(section) - 1.0) / 0.02;
    double nu = ScalingLaws.kelvinPoisson(section, 0.02);
    assertThat(nu).isCloseTo(0.5 * (1 - 0.02 * k2) / (1 + 0.02 * k2), within(1e-9));
    return k2;
  }

  private static double efficiency(String curve) {
    return switch (curve) {
      case "line" -> curve(0.3, 3, 0.6, 6).efficiency(0.3);
      case "plateau" -> curve(0.05, 1, 0.6, 1).efficiency(0.5);
      case "rectangle" -> curve(1e-6, 1, 0.6, 1).efficiency(0.5);
      default -> throw new IllegalArgumentException(curve);
    };
  }

  private static CompressionCurve curve(double... strainAndStress) {
    int n = strainAndStress.length / 2;
    double[] strain = new double[n];
    Pressure[] stress = new Pressure[n];
    for (int i = 0; i < n; i++) {
      strain[i] = strainAndStress[2 * i];
      stress[i] = mpa(strainAndStress[2 * i + 1]);
    }
    return CompressionCurve.through(strain, stress);
  }

  private static ScalingLaw law(String name) {
    return ScalingLaws.of(LatticeProperty.YOUNG).stream()
        .filter(l -> l.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static double limit(String name) {
    return ScalingLaws.of(LatticeProperty.STRAIN_LIMIT).stream()
            .filter(l -> l.name().equals(name))
            .findFirst()
            .orElseThrow()
            .relative(0.01)
        / Math.pow(0.01, 1.5);
  }

  @Test
  void slenderCellsTendToTheirLaws() {
    // beam <-> foam law: the frame at d/L 0.003 over its first-order density
    for (UnitCell cell :
        new UnitCell[] {
          Cells.SIMPLE_CUBIC, Cells.BODY_CENTRED, Cells.DIAMOND, Cells.RHOMBIC_DODECAHEDRAL
        }) {
      double x = 0.003;
      double rho = cell.firstOrderDensity(x);
      double e = cell.centreLine(x, 0.3).young100();
      assertThat(law(cell.name() + ", slender struts").relative(rho) / e)
          .as(cell.name())
          .isCloseTo(1.0, within(1e-3));
    }
    double rho = Cells.KELVIN.firstOrderDensity(0.003);
    assertThat(
            ScalingLaws.kelvin(StrutSection.CIRCLE).relative(rho)
                / Cells.KELVIN.centreLine(0.003, 0.3).young100())
        .isCloseTo(1.0, within(1e-3));
  }

  @Test
  void fittedSolidLawsMeetTheCellsWithFatJoints() {
    for (UnitCell cell :
        new UnitCell[] {Cells.SIMPLE_CUBIC, Cells.BODY_CENTRED, Cells.OCTET, Cells.KELVIN}) {
      ScalingLaw law = law(cell.name() + ", solid");
      for (double x = 0.12; x < 0.39; x += 0.05) {
        double ratio = cell.solid(x, 0.3).young100() / law.relative(cell.relativeDensity(x));
        assertThat(ratio).as(cell.name() + " at " + x).isBetween(law.bandLow(), law.bandHigh());
      }
    }
  }

  @Test
  void bandOfSlenderLawsHoldsTheCellsWithFatJoints() {
    for (UnitCell cell : new UnitCell[] {Cells.SIMPLE_CUBIC, Cells.BODY_CENTRED, Cells.DIAMOND}) {
      ScalingLaw law = law(cell.name() + ", slender struts");
      for (double x = 0.02; cell.relativeDensity(x) < law.high(); x += 0.01) {
        double ratio = cell.solid(x, 0.3).young100() / law.relative(cell.relativeDensity(x));
        assertThat(ratio).as(cell.name() + " at " + x).isBetween(law.bandLow(), law.bandHigh());
      }
    }
  }

  @Test
  void lawsSayWhereTheyEnd() {
    Estimate<Pressure> dense = ScalingLaws.OPEN_FOAM.of(ONE, 0.5);
    assertThat(dense.caveats()).singleElement().asString().contains("relative density is 0.5");
    assertThat(ScalingLaws.OPEN_FOAM.of(ONE, 0.1).caveats()).isEmpty();
    assertThat(ScalingLaws.OPEN_FOAM.exponent(0.1)).isCloseTo(2.0, within(1e-6));
    assertThatThrownBy(() -> ScalingLaws.OPEN_FOAM.relative(1.2)).hasMessageContaining("below 1");
    assertThat(ScalingLaws.closedFoam(0.0).relative(0.1)).isCloseTo(0.1, within(1e-15));
    assertThat(ScalingLaws.closedFoam(1.0).relative(0.1)).isCloseTo(0.01, within(1e-15));
    assertThat(ScalingLaws.all()).hasSizeGreaterThan(45);
    assertThat(ScalingLaws.table(mpa(47), 0.1))
        .contains("Gibson and Ashby 1997")
        .contains("outside relative density 0 to 0.05");
    // no isotropic network of struts beats rho/6; solid sheets do
    for (ScalingLaw l : ScalingLaws.of(LatticeProperty.YOUNG)) {
      assertThat(l.relative(0.1)).isBetween(0.0, 0.1);
      assertThat(l).asString().contains("rho");
    }
  }

  @ParameterizedTest
  @EnumSource(LevelSurface.class)
  void levelsAndDensitiesGoBothWays(LevelSurface s) {
    for (double rho = 0.1; rho < 0.6; rho += 0.1) {
      assertThat(s.density(s.level(rho))).isCloseTo(rho, within(1e-6));
    }
    assertThat(s.density(0.0)).isBetween(0.0, 0.54);
    assertThat(s.connected().contains(s.level(0.45))).isTrue();
  }

  @Test
  void bucklingMeetsTheCells() {
    Estimate<Pressure> sway = Buckling.simpleCubicSway().stress(ONE, 0.02);
    assertThat(sway.caveats()).hasSize(1);
    // strain = stress over E100 = rho/3
    double x = Math.sqrt(0.02 / (0.75 * Math.PI));
    assertThat(sway.nominal().mpa() / (0.02 / 3))
        .isCloseTo(Buckling.simpleCubicSway().strain(x), within(1e-9));
    for (Buckling b : Buckling.waves()) {
      assertThat(b.coefficient()).isBetween(0.03, 0.2);
      assertThat(b).asString().contains("Es rho^2");
    }
    assertThat(Buckling.octet(2).coefficient()).isCloseTo(4 * 0.030853, within(1e-5));
  }

  @Test
  void foamCurveIsContinuousAndEnds() {
    FoamCurve c = FoamCurve.of(0.1);
    double end = c.plateauEnd();
    assertThat(c.relative(end + 1e-9)).isCloseTo(5e-4, within(1e-10));
    assertThat(c.relative(0.05 - 1e-12)).isCloseTo(5e-4, within(1e-12));
    assertThat(c.relative(0.025)).isCloseTo(0.01 * 0.025, within(1e-12));
    assertThat(c.stress(mpa(10), 0.3).nominal().mpa()).isCloseTo(0.005, within(1e-12));
    assertThat(c.stress(mpa(10), 0.3).caveats()).hasSize(1);
    assertThat(c.idealEnergy(mpa(10)).mpa()).isCloseTo(0.005 * 0.86, within(1e-12));
    assertThatThrownBy(() -> c.relative(0.9)).hasMessageContaining("compressive strain");
  }

  @Test
  void figuresOfACurve() {
    CompressionCurve c = curve(0.1, 1, 0.3, 1, 0.5, 2, 0.6, 8);
    assertThat(c.plateauStress().mpa()).isCloseTo(1.0, within(1e-12));
    assertThat(c.plateauEnd()).isCloseTo(0.36, within(1e-12));
    assertThat(c.stressAt(0.4).mpa()).isCloseTo(1.5, within(1e-12));
    assertThat(c.energyTo(0.5).mpa()).isCloseTo(0.05 + 0.2 + 0.3, within(1e-12));
    assertThat(c.ideality(0.3)).isCloseTo(0.25 / 0.3, within(1e-12));
    // efficiency: 0.25 at 30 %, 0.55/2 = 0.275 at 50 %, 1.05/8 at 60 %
    assertThat(c.densificationOnset()).isEqualTo(0.5);
    LoadPath path =
        LoadPath.of(2, Channel.TRAVEL, Channel.FORCE, Channel.STRAIN)
            .add(0.0, 0.0, 0.0)
            .add(1e-3, 2.0, 0.1)
            .end(Termination.completed());
    CompressionCurve of = CompressionCurve.of(path, Area.mm2(2), mm(10));
    assertThat(of.end()).isCloseTo(0.1, within(1e-15));
    assertThat(of.stressAt(0.05).mpa()).isCloseTo(0.5, within(1e-12));
    assertThatThrownBy(() -> curve(0.2, 1, 0.1, 2)).hasMessageContaining("above the one before");
  }

  @Test
  void sideOppositeAFlawStrainsMore() {
    assertThat(StrutFlaws.oppositeFactor(0.0)).isCloseTo(1.0, within(1e-12));
    // half a circle: I = 0.109757 r^4 about a centroid at 4 r/(3 pi)
    double half = Math.PI / 4 * (1 - 4 / (3 * Math.PI)) / 0.109757;
    assertThat(StrutFlaws.oppositeFactor(0.5)).isCloseTo(half, within(1e-4 * half));
    for (double depth = 0.05; depth <= 0.5; depth += 0.05) {
      assertThat(StrutFlaws.oppositeFactor(depth)).isGreaterThan(StrutFlaws.bendingFactor(depth));
    }
  }

  @Test
  void failureOfManyLinks() {
    WeakestLink w = new WeakestLink(10);
    double s = w.strengthRatio(1000);
    assertThat(w.failure(1000, s)).isCloseTo(w.failure(1, 1.0), within(1e-12));
    assertThat(w.failure(1, 1.0)).isCloseTo(1 - Math.exp(-1), within(1e-12));
  }

  static Stream<PartCase<?>> parts() {
    return Stream.of(
        PartCase.of(
            "foam block",
            (s, d) ->
                FoamBlock.of(
                    d.oneOf(Cells.KELVIN, Cells.OCTET, Cells.BODY_CENTRED),
                    mm(60 * s),
                    mm(40 * s),
                    mm(20 * s),
                    mm(10 * s),
                    mm(d.between(0.4, 1.6) * s)),
            (s, d) -> LoadCase.toTravel(mm(d.between(0.2, 16) * s))));
  }

  @ParameterizedTest
  @MethodSource("parts")
  void doesWhatEveryPartMust(PartCase<?> c) {
    PartHarness.check(c, Grade.polyurethane(ShoreA.of(90)), 21);
  }

  /** Facts of the trade (common practice), by solved pads. */
  @Test
  void thinElementsAreSoftAndBreakFirst() {
    Grade grade = Grade.polyurethane(ShoreA.of(95));
    double[] struts = {0.635, 0.889, 1.397};
    for (UnitCell cell : new UnitCell[] {Cells.KELVIN, Cells.BODY_CENTRED}) {
      double lastLoad = 0.0;
      double lastTravelStrain = 0.0;
      double lastLoadStrain = Double.POSITIVE_INFINITY;
      for (double d : struts) {
        LatticePad pad =
            LatticePad.of(cell).footprint(mm(60), mm(60)).height(mm(20)).cell(mm(10)).strut(mm(d));
        Response same = pad.respond(grade, LoadCase.toTravel(mm(0.4)));
        // stiffness rises with the element
        assertThat(same.load().nominal()).isGreaterThan(lastLoad);
        lastLoad = same.load().nominal();
        // at equal travel the thinnest strains least
        assertThat(same.strain().nominal()).isGreaterThan(lastTravelStrain);
        lastTravelStrain = same.strain().nominal();
        // at equal load it strains most; a nick of a quarter of the strut multiplies all alike
        double strain = strainAtLoad(pad, grade, 2.0);
        assertThat(strain * StrutFlaws.bendingFactor(0.25)).isLessThan(lastLoadStrain);
        lastLoadStrain = strain * StrutFlaws.bendingFactor(0.25);
        // a nick as deep in all of them is the deeper share of the thinnest
        assertThat(StrutFlaws.bendingFactor(0.16 / d))
            .isLessThanOrEqualTo(StrutFlaws.bendingFactor(0.16 / struts[0]));
      }
    }
  }

  private static double strainAtLoad(LatticePad pad, Grade grade, double newtons) {
    double low = 1e-6;
    double high = 0.01;
    for (int i = 0; i < 60; i++) {
      double middle = 0.5 * (low + high);
      Response r = pad.respond(grade, LoadCase.toTravel(Length.m(middle)));
      if (r.load().nominal() < newtons) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return pad.respond(grade, LoadCase.toTravel(Length.m(low))).strain().nominal();
  }
}
