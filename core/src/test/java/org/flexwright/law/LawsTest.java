package org.flexwright.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import java.util.stream.Stream;
import org.flexwright.quantity.Pressure;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LawsTest {

  @RegisterExtension
  static final VerificationTable TABLE =
      VerificationTable.of(LawsTest.class, "/reference/laws.csv");

  static Stream<ReferenceCase> cases() {
    return TABLE.cases();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void meetsReferenceValue(ReferenceCase c) {
    if (c.formula().endsWith("habit")) {
      MooneyRivlin habit = MooneyRivlin.fromHabit(Pressure.mpa(c.input("E")));
      Pressure constant = c.quantity().startsWith("C10") ? habit.c10() : habit.c01();
      TABLE.check(c, constant.mpa());
      return;
    }
    StrainEnergy law =
        c.formula().startsWith("neo")
            ? NeoHookean.of(Pressure.mpa(c.input("G")))
            : MooneyRivlin.of(Pressure.mpa(c.input("C10")), Pressure.mpa(c.input("C01")));
    Deformation mode = Deformation.valueOf(c.text("mode").toUpperCase(Locale.ROOT));
    TABLE.check(c, mode.nominalStress(law, c.input("stretch")).mpa());
  }

  static Stream<StrainEnergy> laws() {
    return Stream.of(
        NeoHookean.of(Pressure.mpa(0.4)),
        MooneyRivlin.of(Pressure.mpa(0.162), Pressure.mpa(0.0059)),
        MooneyRivlin.fromHabit(Pressure.mpa(3.6)));
  }

  @ParameterizedTest
  @MethodSource("laws")
  void keepsTheContract(StrainEnergy law) {
    LawCheck.Report report = LawCheck.of(law).report();
    assertThat(report.passed()).as(report.toString()).isTrue();
  }

  /** A wrong law must not pass: each of these breaks one demand. */
  @Test
  void theContractCatchesWrongLaws() {
    assertThat(failures(new Broken(1.0, 0.0, 1.0, 1.0))).contains("energy zero at rest");
    assertThat(failures(new Broken(0.0, 1e-6, 1.0, 1.0))).contains("first derivatives");
    assertThat(failures(new Broken(0.0, 0.0, 1.01, 1.0))).contains("second derivatives");
    assertThat(failures(new Broken(0.0, 0.0, 1.0, 1.001))).contains("shear modulus");
    assertThat(failures(new Broken(0.0, 0.0, -1.0, 1.0))).contains("stable");
    assertThat(failures(new Broken(0.0, 0.0, 1.0, 1.0))).isEmpty();
  }

  private static String failures(StrainEnergy law) {
    StringBuilder text = new StringBuilder();
    LawCheck.of(law).report().lines().stream().filter(line -> !line.passed()).forEach(text::append);
    return text.toString();
  }

  /** The neo-Hookean law of G = 1 Pa with one thing wrong. */
  private record Broken(double offset, double slope, double curvature, double stated)
      implements StrainEnergy {

    @Override
    public double energy(double l1, double l2, double l3) {
      return offset + 0.5 * (l1 * l1 + l2 * l2 + l3 * l3 - 3);
    }

    @Override
    public void gradient(double l1, double l2, double l3, double[] out) {
      out[0] = l1 * (1 + slope);
      out[1] = l2 * (1 + slope);
      out[2] = l3 * (1 + slope);
    }

    @Override
    public void hessian(double l1, double l2, double l3, double[] out) {
      java.util.Arrays.fill(out, 0.0);
      out[0] = curvature;
      out[1] = curvature;
      out[2] = curvature < 0 ? 10 * curvature : curvature;
    }

    @Override
    public double shearModulus() {
      return stated;
    }

    @Override
    public StretchRange range() {
      return NeoHookean.of(Pressure.pa(1)).range();
    }
  }

  @Test
  void constantsThatMakeNoSenseAreRefused() {
    assertThatThrownBy(() -> NeoHookean.of(Pressure.mpa(-1)))
        .hasMessage("shear modulus is -1000000 Pa, allowed is finite and above 0");
    assertThatThrownBy(() -> MooneyRivlin.of(Pressure.mpa(0.4), Pressure.mpa(-0.7)))
        .hasMessageContaining("C01");
    assertThatThrownBy(() -> MooneyRivlin.of(Pressure.mpa(0), Pressure.mpa(0)))
        .hasMessageContaining("C10 + C01");
    assertThatThrownBy(
            () -> Deformation.UNIAXIAL.nominalStress(NeoHookean.of(Pressure.mpa(1)), 0.0))
        .hasMessage("stretch is 0, allowed is finite and above 0");
  }
}
