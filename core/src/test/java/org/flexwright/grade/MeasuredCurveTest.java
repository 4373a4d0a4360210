package org.flexwright.grade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Factor;
import org.flexwright.fit.TestCurve;
import org.flexwright.internal.Text;
import org.flexwright.law.Deformation;
import org.flexwright.law.HenckyCurve;
import org.flexwright.law.LawCheck;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Pressure;
import org.flexwright.testing.Csv;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class MeasuredCurveTest {

  @RegisterExtension
  static final VerificationTable TABLE =
      VerificationTable.of(MeasuredCurveTest.class, "/reference/measured_curves.csv");

  static Stream<ReferenceCase> cases() {
    return TABLE.cases();
  }

  static List<TestCurve> curves(String data) {
    if (data.equals("neo-Hookean")) {
      return neoHookean();
    }
    List<TestCurve> curves = new ArrayList<>();
    for (Deformation mode : Deformation.values()) {
      List<TestCurve.Point> points =
          rows(data).stream()
              .filter(row -> row.cell("mode").equals(mode.name()))
              .map(
                  row ->
                      TestCurve.at(
                          Double.parseDouble(row.cell("stretch")),
                          Pressure.mpa(Double.parseDouble(row.cell("nominal_stress_mpa")))))
              .toList();
      curves.add(TestCurve.of(mode.name().toLowerCase(Locale.ROOT), mode, points));
    }
    return curves;
  }

  private static List<Csv.Row> rows(String data) {
    try (InputStream in =
        MeasuredCurveTest.class.getResourceAsStream("/reference/" + data + ".csv")) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      List<String> columns = List.of("mode", "stretch", "nominal_stress_mpa");
      return Csv.read(data, text.lines().toList(), columns).rows();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Exact curves of a neo-Hookean material: tension to 2.72, compression to 0.5, inflation to 1.5.
   */
  private static List<TestCurve> neoHookean() {
    NeoHookean law = NeoHookean.of(Pressure.mpa(0.4));
    return List.of(
        sampled(law, Deformation.UNIAXIAL, 0.5, Math.E, 38),
        sampled(law, Deformation.EQUIBIAXIAL, 1.01, 1.5, 20));
  }

  private static TestCurve sampled(
      StrainEnergy law, Deformation mode, double from, double to, int n) {
    List<TestCurve.Point> points = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double l = from * Math.pow(to / from, i / (n - 1.0));
      points.add(TestCurve.at(l, mode.nominalStress(law, l)));
    }
    return TestCurve.of("sampled", mode, points);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void disagreementOfTheOtherModes(ReferenceCase c) {
    MeasuredCurve m = new MeasuredCurve("m", curves(c.text("data")));
    MeasuredCurve.Comparison of =
        m.comparisons().stream()
            .filter(x -> x.what().startsWith(c.text("against")))
            .findFirst()
            .orElseThrow();
    TABLE.check(c, of.ratio());
    assertThat(c.quantity()).endsWith(" " + Text.number(of.stretch()));
  }

  /** No bins, no pooling: the law goes through the uniaxial points that rise, to the last. */
  @Test
  void fewPointsAreKept() {
    TestCurve curve = curves("treloar_1944").get(0);
    Grade grade = Grade.ofCurve("t", curve);
    for (TestCurve.Point p : curve.points()) {
      assertThat(Deformation.UNIAXIAL.nominalStress(grade.law(), p.stretch()).ratioTo(p.nominal()))
          .isCloseTo(1.0, within(1e-12));
    }
    assertThat(grade.law().range().high()).isCloseTo(7.61, within(1e-12));
    assertThat(grade.strainAtBreak(false)).isCloseTo(6.61, within(1e-12));
    assertThat(grade.materialFactors().sigma(Factor.MODULUS))
        .isCloseTo(Math.log(1.1) / 2, within(1e-12));
    assertThat(grade.caveats()).contains(GradeBuilder.ONE_CURVE);
    assertThat(grade.generic()).isFalse();
  }

  @Test
  void theBandReachesTheLargestDisagreement() {
    Grade grade = Grade.ofCurve("m", curves("meunier_2008").toArray(TestCurve[]::new));
    LawCheck.Report report = LawCheck.of(grade.law()).report();
    assertThat(report.passed()).as(report.toString()).isTrue();
    double sigma = grade.materialFactors().sigma(Factor.MODULUS);
    assertThat(Math.exp(2 * sigma)).isBetween(1 / 0.4759, 1 / 0.45);
    assertThat(grade.caveats()).doesNotContain(GradeBuilder.ONE_CURVE);
    assertThat(grade.caveats())
        .extracting(Caveat::message)
        .anyMatch(t -> t.startsWith("compression over the law"))
        .anyMatch(t -> t.contains("equibiaxial") && t.contains("fit a law to all curves"))
        .anyMatch(t -> t.startsWith("planar"))
        .anyMatch(t -> t.startsWith("taken as the last point of the curve, 109 %"));
  }

  /** A thousand noisy points: the truth comes back within the scatter of a bin. */
  @Test
  void noiseIsSmoothedToARisingCurve() {
    NeoHookean truth = NeoHookean.of(Pressure.mpa(0.4));
    Random random = new Random(7);
    List<TestCurve.Point> points = new ArrayList<>();
    for (int i = 1; i <= 1000; i++) {
      double l = 1.0 + i * 0.0015;
      double clean = Deformation.UNIAXIAL.nominalStress(truth, l).pa();
      points.add(TestCurve.at(l, Pressure.pa(clean + 4000 * random.nextGaussian())));
    }
    Grade grade = Grade.ofCurve("n", TestCurve.of("noisy", Deformation.UNIAXIAL, points));
    HenckyCurve law = (HenckyCurve) grade.law();
    assertThat(law.strains()).hasSizeLessThanOrEqualTo(24);
    assertThat(law.range().high()).isCloseTo(2.5, within(1e-12));
    for (double e = 0.05; e < Math.log(2.5); e += 0.01) {
      double l = Math.exp(e);
      double exact = Deformation.UNIAXIAL.trueStress(truth, l).pa();
      // 4 kPa over the root of at least 10 points in a bin, three deviations, and 1 % for the bin
      assertThat(law.stress(e)).isCloseTo(exact, within(0.01 * exact + 4000 * l));
    }
  }

  @Test
  void compressionAloneMakesAGradeToo() {
    TestCurve pressed =
        sampled(NeoHookean.of(Pressure.mpa(1)), Deformation.UNIAXIAL, 0.6, 0.99, 10);
    Grade grade = Grade.ofCurve("c", pressed);
    assertThat(Deformation.UNIAXIAL.nominalStress(grade.law(), 0.6).mpa())
        .isCloseTo(0.6 - 1 / 0.36, within(1e-12));
    assertThat(grade.caveats())
        .extracting(Caveat::message)
        .anyMatch(t -> t.equals("measured in compression, taken for tension too"))
        .anyMatch(t -> t.startsWith("not given, 500 % assumed"));
  }

  @Test
  void repeatsArePooledAndTheirScatterCounts() {
    NeoHookean soft = NeoHookean.of(Pressure.mpa(0.9));
    NeoHookean stiff = NeoHookean.of(Pressure.mpa(1.1));
    Grade grade =
        Grade.ofCurve(
            "r",
            sampled(soft, Deformation.UNIAXIAL, 1.02, 2, 30),
            sampled(stiff, Deformation.UNIAXIAL, 1.02, 2, 30));
    assertThat(grade.modulusAtRest().mpa()).isCloseTo(3.0, within(0.05));
    // half the points 1.1 of the middle, half 0.9: rms of the logarithms 0.1
    assertThat(grade.materialFactors().sigma(Factor.MODULUS))
        .isCloseTo(Math.hypot(Math.log(1.1) / 2, 0.1), within(0.004));
  }

  @Test
  void curvesThatMakeNoGradeAreRefused() {
    TestCurve planar = curves("treloar_1944").get(2);
    assertThatThrownBy(() -> Grade.ofCurve("p", planar))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("other modes only test it");
    assertThatThrownBy(() -> Grade.ofCurve("none")).isInstanceOf(InvalidInputException.class);
    TestCurve wrong =
        TestCurve.of(
            "w",
            Deformation.UNIAXIAL,
            List.of(TestCurve.at(1.1, Pressure.mpa(-1)), TestCurve.at(1.2, Pressure.mpa(-2))));
    assertThatThrownBy(() -> Grade.ofCurve("w", wrong))
        .hasMessageContaining("check the signs of the curve");
  }

  /** Whatever the noise, the law rises, holds its range and a caveat travels with it. */
  @Property(seed = "67", tries = 300)
  void anyCloudGivesARisingLaw(
      @ForAll @IntRange(min = 2, max = 200) int n,
      @ForAll @DoubleRange(min = 0, max = 2) double noise,
      @ForAll @DoubleRange(min = 1.02, max = 8) double end,
      @ForAll long seed) {
    Random random = new Random(seed);
    List<TestCurve.Point> points = new ArrayList<>();
    for (int i = 1; i <= n; i++) {
      double l = 1.0 + (end - 1.0) * i / n;
      double clean = l - 1.0 / (l * l);
      points.add(TestCurve.at(l, Pressure.mpa(clean * (1.0 + noise * random.nextGaussian()) + 3)));
    }
    Grade grade = Grade.ofCurve("x", TestCurve.of("x", Deformation.UNIAXIAL, points));
    assertThat(grade.law().range().high()).isCloseTo(end, within(1e-9));
    double before = 0.0;
    for (double e = 1e-4; e < Math.log(end) * 1.2; e *= 1.1) {
      double s = Deformation.UNIAXIAL.trueStress(grade.law(), Math.exp(e)).pa();
      assertThat(s).isGreaterThan(before);
      before = s;
    }
  }
}
