package org.flexwright.law.classical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.fail;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.commons.math3.analysis.differentiation.DerivativeStructure;
import org.apache.commons.math3.dfp.Dfp;
import org.apache.commons.math3.dfp.DfpField;
import org.flexwright.law.Deformation;
import org.flexwright.law.HenckyCurve;
import org.flexwright.law.StrainEnergy;
import org.flexwright.quantity.Pressure;
import org.flexwright.testing.Effort;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The kernels of every law against the formula of its energy: derivatives by automatic
 * differentiation, digits near rest by forty-digit numbers, states from 1e-6 beside rest to 99.99 %
 * of locking.
 */
class LawDerivativesTest {

  /** The part of I1 - 3 at locking to which states go. */
  private static final double NEAR_LOCKING = 0.9999;

  private static final double FAR = 20.0;
  private static final double NEAREST = 1e-6;

  private static Pressure mpa(double value) {
    return Pressure.mpa(value);
  }

  static Stream<StrainEnergy> laws() {
    return Stream.of(
        NeoHookean.of(mpa(0.4)),
        MooneyRivlin.of(mpa(0.162), mpa(0.0059)),
        MooneyRivlinPolynomial.of(mpa(0.15), mpa(0.02), mpa(0.001)),
        MooneyRivlinPolynomial.of(mpa(0.15), mpa(0.02), mpa(0.001)).squares(mpa(0.002), mpa(5e-4)),
        Yeoh.of(mpa(0.1755355), mpa(-0.001878527), mpa(4.632237e-5)),
        Gent.of(mpa(0.27), 85),
        Gent.of(mpa(0.27), 1e-3),
        GentGent.of(mpa(0.2462124), 79.85308, mpa(0.2911695)),
        GentThomas.of(mpa(0.1629), mpa(0.0376)),
        Ogden.of(mpa(0.63), 1.3),
        Ogden.of(mpa(0.63), 1.3).and(mpa(0.0012), 5).and(mpa(-0.01), -2),
        ArrudaBoyce.of(mpa(0.27), 26.5),
        ArrudaBoyce.of(mpa(0.27), 1.1),
        ArrudaBoyce.of(mpa(0.27), 120), // rest in the series, stretched states not
        ArrudaBoyceSeries.of(mpa(0.27), 26.5),
        ExtendedTube.of(mpa(0.1867), mpa(0.2169)).beta(0.2).delta(0.09693),
        ExtendedTube.of(mpa(0.1867), mpa(0.2169)).beta(1).delta(0));
  }

  /** The value of I1 - 3 at which a law locks. */
  private static double locking(StrainEnergy law) {
    if (law instanceof Gent g) {
      return g.locking();
    }
    if (law instanceof GentGent g) {
      return g.locking();
    }
    if (law instanceof ArrudaBoyce ab) {
      return 3.0 * ab.segments() - 3.0;
    }
    return law instanceof ExtendedTube tube
        ? 1.0 / (tube.delta() * tube.delta())
        : Double.POSITIVE_INFINITY;
  }

  /** A state at an angle in the plane of logarithmic strains, at a constant volume. */
  private static double[] state(double angle, double size, double volume) {
    double[] l = new double[3];
    for (int i = 0; i < 3; i++) {
      l[i] = volume * Math.exp(size * Math.cos(angle - i * 2.0 * Math.PI / 3.0));
    }
    return l;
  }

  private static double excess(double[] l) {
    return l[0] * l[0] + l[1] * l[1] + l[2] * l[2] - 3.0;
  }

  /** The greatest size of a state at an angle, by bisection. */
  private static double most(double angle, double limit) {
    double low = 0.0;
    double high = Math.log(FAR);
    if (excess(state(angle, high, 1.0)) < limit) {
      return high;
    }
    for (int i = 0; i < 100; i++) {
      double mid = 0.5 * (low + high);
      if (excess(state(angle, mid, 1.0)) < limit) {
        low = mid;
      } else {
        high = mid;
      }
    }
    return low;
  }

  /** A random state below locking, its size spread over all decades. */
  private static double[] draw(Random random, StrainEnergy law) {
    double limit = NEAR_LOCKING * locking(law);
    double angle = 2.0 * Math.PI * random.nextDouble();
    double most = most(angle, limit);
    double part = random.nextInt(8) == 0 ? 1.0 : Math.pow(NEAREST / most, random.nextDouble());
    double[] l = state(angle, part * most, 1.0);
    double[] other = state(angle, part * most, 0.9 + 0.2 * random.nextDouble());
    return random.nextInt(4) == 0 && excess(other) < limit ? other : l;
  }

  @ParameterizedTest
  @MethodSource("laws")
  void derivativesAreThoseOfTheFormula(StrainEnergy law) {
    Random random = new Random(3);
    for (int i = 0; i < 1000; i++) {
      double[] l = draw(random, law);
      DerivativeStructure w =
          Formulas.energy(
              law,
              new DerivativeStructure(3, 2, 0, l[0]),
              new DerivativeStructure(3, 2, 1, l[1]),
              new DerivativeStructure(3, 2, 2, l[2]));
      checkDerivatives(law, l, w);
    }
  }

  private static void checkDerivatives(StrainEnergy law, double[] l, DerivativeStructure w) {
    double[] g = new double[3];
    double[] h = new double[6];
    law.gradient(l[0], l[1], l[2], g);
    law.hessian(l[0], l[1], l[2], h);
    int[][] first = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
    int[][] second = {{2, 0, 0}, {0, 2, 0}, {0, 0, 2}, {1, 1, 0}, {1, 0, 1}, {0, 1, 1}};
    for (int i = 0; i < 3; i++) {
      near(g[i], w.getPartialDerivative(first[i]), 1e-8, law, l);
    }
    for (int i = 0; i < 6; i++) {
      near(h[i], w.getPartialDerivative(second[i]), 1e-7, law, l);
    }
  }

  /** Relative to the value itself; a zero must be met. */
  private static void near(double value, double exact, double part, StrainEnergy law, double[] l) {
    if (!(Math.abs(value - exact) <= part * Math.abs(exact))) {
      fail("%s at %s: %s, must be %s", law, Arrays.toString(l), value, exact);
    }
  }

  /**
   * Chains so long that the formula in doubles has no digits left for its curvature: central
   * differences of the formula in sixty digits, whose own error is about 1e-24.
   */
  @Test
  void derivativesOfVeryLongChains() {
    ArrudaBoyce law = ArrudaBoyce.of(mpa(0.27), 1e6);
    DfpField field = new DfpField(60);
    double[] l = {1.31, 0.87, 0.91};
    double[] g = new double[3];
    double[] h = new double[6];
    law.gradient(l[0], l[1], l[2], g);
    law.hessian(l[0], l[1], l[2], h);
    Dfp step = field.newDfp("1e-12");
    Dfp up = at(law, field, l, step, step.getZero());
    Dfp down = at(law, field, l, step.negate(), step.getZero());
    Dfp slope = up.subtract(down).divide(step).divide(2.0);
    Dfp mid = at(law, field, l, step.getZero(), step.getZero());
    Dfp bend = up.add(down).subtract(mid.multiply(2.0)).divide(step).divide(step);
    Dfp mixed =
        at(law, field, l, step, step)
            .subtract(at(law, field, l, step, step.negate()))
            .subtract(at(law, field, l, step.negate(), step))
            .add(at(law, field, l, step.negate(), step.negate()))
            .divide(step)
            .divide(step)
            .divide(4.0);
    near(g[0], slope.toDouble(), 1e-14, law, l);
    near(h[0], bend.toDouble(), 1e-14, law, l);
    near(h[3], mixed.toDouble(), 1e-14, law, l);
  }

  private static Dfp at(StrainEnergy law, DfpField field, double[] l, Dfp first, Dfp second) {
    Dfp a = field.newDfp(l[0]).add(first);
    Dfp b = field.newDfp(l[1]).add(second);
    return Formulas.energy(law, a, b, field.newDfp(l[2]));
  }

  @ParameterizedTest
  @MethodSource("laws")
  void energyKeepsItsDigitsNearRest(StrainEnergy law) {
    DfpField digits = new DfpField(40);
    Random random = new Random(4);
    assertThat(law.energy(1, 1, 1)).isZero();
    for (int i = 0; i < 60; i++) {
      double[] l = draw(random, law);
      Dfp exact =
          Formulas.energy(law, digits.newDfp(l[0]), digits.newDfp(l[1]), digits.newDfp(l[2]));
      // powers lose 1e-16 / 1e-6 of the energy, more by 1/beta of the tubes; invariants do not,
      // but for what lies near locking
      boolean powers = law instanceof Ogden || law instanceof ExtendedTube;
      near(law.energy(l[0], l[1], l[2]), exact.toDouble(), powers ? 1e-9 : 1e-11, law, l);
    }
  }

  @ParameterizedTest
  @MethodSource("allLaws")
  void manyStatesAreFiniteAndTheOrderDoesNotMatter(StrainEnergy law) {
    Random random = new Random(5);
    double[] g = new double[3];
    double[] h = new double[6];
    double[] turned = new double[6];
    // the curve law takes the mean strain off: 1e-16 / 1e-8 where hardly any shape is changed
    double rounding = law instanceof HenckyCurve ? 1e-8 : 1e-10;
    for (int i = 0; i < 100_000; i++) {
      double[] l = draw(random, law);
      double w = law.energy(l[0], l[1], l[2]);
      // powers lose 1e-16 / 1e-6 of the energy near rest, more by 1/beta of the tubes
      near(law.energy(l[2], l[0], l[1]), w, 2e-9, law, l);
      near(law.energy(l[1], l[0], l[2]), w, 2e-9, law, l);
      law.gradient(l[0], l[1], l[2], g);
      law.gradient(l[2], l[0], l[1], turned);
      for (int k = 0; k < 3; k++) {
        near(turned[k], g[(k + 2) % 3], rounding, law, l);
      }
      law.hessian(l[0], l[1], l[2], h);
      law.hessian(l[2], l[0], l[1], turned);
      int[] from = {2, 0, 1, 4, 5, 3};
      double size = Arrays.stream(h).map(Math::abs).max().orElseThrow();
      for (int k = 0; k < 6; k++) {
        assertThat(Math.abs(turned[k] - h[from[k]])).isLessThanOrEqualTo(rounding * size);
        assertThat(Double.isFinite(h[k]) && Double.isFinite(w)).isTrue();
      }
    }
  }

  static Stream<StrainEnergy> allLaws() {
    return Stream.concat(laws(), Stream.of(curve()));
  }

  /** Positive stretches beyond all reason, locking among them, and what is no stretch at all. */
  @ParameterizedTest
  @MethodSource("allLaws")
  void neverNotANumber(StrainEnergy law) {
    double[] odd = {
      Double.MIN_VALUE, 1e-200, 1e-30, 1e-3, 1, 6.5, 1e3, 1e30, 1e200, Double.MAX_VALUE
    };
    double[] none = {Double.NaN, Double.POSITIVE_INFINITY, 0.0, -1.0};
    for (double a : odd) {
      for (double b : odd) {
        for (double c : odd) {
          assertNumbers(law, a, b, c);
        }
        for (double c : none) {
          assertNumbers(law, a, b, c);
        }
      }
    }
    assertThat(law.energy(1, 1, Double.NaN)).isInfinite();
  }

  private static void assertNumbers(StrainEnergy law, double a, double b, double c) {
    double[] out = new double[6];
    assertThat(law.energy(a, b, c)).isNotNaN();
    law.gradient(a, b, c, out);
    assertThat(Arrays.stream(out).anyMatch(Double::isNaN)).isFalse();
    law.hessian(a, b, c, out);
    assertThat(Arrays.stream(out).anyMatch(Double::isNaN))
        .as("%s at %s, %s, %s", law, a, b, c)
        .isFalse();
  }

  @ParameterizedTest
  @MethodSource("laws")
  void energyIsInfiniteFromLockingOn(StrainEnergy law) {
    double limit = locking(law);
    if (Double.isInfinite(limit)) {
      return;
    }
    double[] out = new double[6];
    for (double beyond : new double[] {1 + 1e-12, 1.5, 1e6}) {
      double l = Math.sqrt(beyond * limit + 3.0);
      assertThat(law.energy(l, 1e-9, 1e-9)).isEqualTo(Double.POSITIVE_INFINITY);
      law.hessian(l, 1e-9, 1e-9, out);
      assertThat(out[0]).isEqualTo(Double.POSITIVE_INFINITY);
      law.gradient(l, 1e-9, 1e-9, out);
      assertThat(out[0]).isEqualTo(Double.POSITIVE_INFINITY);
    }
  }

  /** In shear I1 - 3 = (l - 1/l)^2, so l - 1/l is the root of it; elsewhere I1 is put back. */
  @ParameterizedTest
  @MethodSource("laws")
  void locksWhereItSays(StrainEnergy law) {
    double d = locking(law);
    if (Double.isInfinite(d)) {
      return;
    }
    double root = 0.5 * (Math.sqrt(d) + Math.sqrt(d + 4.0));
    assertThat(lockingStretch(law, Deformation.PLANAR)).isCloseTo(root, withinPercentage(1e-10));
    for (Deformation mode : Deformation.values()) {
      double l = lockingStretch(law, mode);
      // the stretch has its 1e-15, I1 - 3 of it that of I1
      assertThat(excess(mode.stretches(l))).isCloseTo(d, within(1e-13 * (3.0 + d)));
      assertThat(law.range().high()).isLessThan(l);
    }
    assertThat(lockingStretch(ExtendedTube.of(mpa(1), mpa(1)).delta(0), Deformation.UNIAXIAL))
        .isInfinite();
  }

  private static double lockingStretch(StrainEnergy law, Deformation mode) {
    if (law instanceof Gent g) {
      return g.lockingStretch(mode);
    }
    if (law instanceof GentGent g) {
      return g.lockingStretch(mode);
    }
    return law instanceof ArrudaBoyce ab
        ? ab.lockingStretch(mode)
        : ((ExtendedTube) law).lockingStretch(mode);
  }

  @ParameterizedTest
  @MethodSource("allLaws")
  void allocatesNothing(StrainEnergy law) {
    double[] out = new double[6];
    double[] stretch = {1.2};
    Effort.numberWithin(
        0,
        () -> {
          double l = stretch[0];
          stretch[0] = l < 1.4 ? l + 1e-6 : 1.2;
          law.gradient(l, 0.9, 1.0 / l, out);
          double sum = out[0];
          law.hessian(l, 0.9, 1.0 / l, out);
          return sum + out[0] + law.energy(l, 0.9, 1.0 / l);
        });
  }

  private static final double EXPONENT = 0.6;

  /** Points of the power law s = 5 MPa e^0.6: beyond the second the curve must be that law. */
  private static HenckyCurve curve() {
    double[] strain = {0.01, 0.02, 0.1, 0.3, 0.8};
    Pressure[] stress = new Pressure[strain.length];
    for (int i = 0; i < strain.length; i++) {
      stress[i] = mpa(5 * Math.pow(strain[i], EXPONENT));
    }
    return HenckyCurve.through(strain, stress);
  }

  /** Where the curve is smooth: the linear start and the power law. */
  @Test
  void derivativesOfTheCurveLaw() {
    HenckyCurve law = curve();
    Random random = new Random(6);
    for (int i = 0; i < 1000; i++) {
      double from = i % 2 == 0 ? NEAREST : 0.0201;
      double to = i % 2 == 0 ? 0.0099 : 2.0;
      double strain = from * Math.pow(to / from, random.nextDouble());
      double size = strain; // sum of squared cosines is 3/2, so the equivalent strain is the size
      double[] l = state(6.3 * random.nextDouble(), size, 0.9 + 0.2 * random.nextDouble());
      DerivativeStructure a = new DerivativeStructure(3, 2, 0, l[0]).log();
      DerivativeStructure b = new DerivativeStructure(3, 2, 1, l[1]).log();
      DerivativeStructure c = new DerivativeStructure(3, 2, 2, l[2]).log();
      DerivativeStructure square =
          a.subtract(b)
              .pow(2)
              .add(b.subtract(c).pow(2))
              .add(c.subtract(a).pow(2))
              .multiply(2.0 / 9);
      DerivativeStructure w =
          i % 2 == 0
              ? square.multiply(0.5 * law.youngModulus())
              : square.pow(0.5 * (1 + EXPONENT)).multiply(5e6 / (1 + EXPONENT));
      checkCurve(law, l, w, law.secant(strain));
    }
  }

  /** Components of the curve law cross zero, so errors are counted in the secant. */
  private static void checkCurve(
      HenckyCurve law, double[] l, DerivativeStructure w, double secant) {
    double[] g = new double[3];
    double[] h = new double[6];
    law.gradient(l[0], l[1], l[2], g);
    law.hessian(l[0], l[1], l[2], h);
    double size = Math.abs(g[0]) + Math.abs(g[1]) + Math.abs(g[2]);
    assertThat(g[0]).isCloseTo(w.getPartialDerivative(1, 0, 0), within(1e-8 * size));
    assertThat(g[2]).isCloseTo(w.getPartialDerivative(0, 0, 1), within(1e-8 * size));
    double least = 1e-7 * secant / Math.max(l[0], Math.max(l[1], l[2])) / l[0];
    assertThat(h[0]).isCloseTo(w.getPartialDerivative(2, 0, 0), within(least));
    assertThat(h[3]).isCloseTo(w.getPartialDerivative(1, 1, 0), within(least));
  }

  @Test
  void curveRefusesWhatIsNoStrain() {
    HenckyCurve law = curve();
    assertThatThrownBy(() -> law.stress(Double.NaN)).hasMessageContaining("equivalent strain");
    assertThatThrownBy(() -> law.secant(-0.1)).hasMessageContaining("equivalent strain");
    assertThatThrownBy(() -> law.tangent(Double.NaN)).hasMessageContaining("equivalent strain");
    assertThatThrownBy(() -> law.energy(-1)).hasMessageContaining("equivalent strain");
  }
}
