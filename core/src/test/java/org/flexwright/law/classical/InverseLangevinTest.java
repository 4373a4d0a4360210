package org.flexwright.law.classical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.dfp.Dfp;
import org.apache.commons.math3.dfp.DfpField;
import org.apache.commons.math3.util.Decimal64;
import org.junit.jupiter.api.Test;

class InverseLangevinTest {

  private static final DfpField DIGITS = new DfpField(50);

  private static Dfp exact(double y) {
    return Formulas.inverseLangevin(DIGITS.newDfp(y));
  }

  private static void meets(double y) {
    double x = exact(y).toDouble();
    assertThat(InverseLangevin.of(y)).as("at %s", y).isCloseTo(x, within(1e-14 * x));
    assertThat(InverseLangevin.ratio(y)).as("at %s", y).isCloseTo(x / y, within(1e-14 * x / y));
  }

  @Test
  void meetsFiftyDigits() {
    for (int i = 1; i < 100; i++) {
      meets(i / 100.0);
    }
    for (double small = 0.1; small > 1e-12; small *= 0.3) {
      meets(small);
      meets(1.0 - small);
    }
    meets(Math.nextDown(0.1));
    meets(1.0 - 1e-9);
    meets(Math.nextDown(1.0));
  }

  /** 1.796756 at 0.5 is a common check; 10 at 0.9 is a rounded one, e^-20 off. */
  @Test
  void knownValues() {
    assertThat(InverseLangevin.of(0.5)).isCloseTo(1.7967560, within(5e-8));
    assertThat(InverseLangevin.of(0.9)).isCloseTo(10.0000, within(5e-5)).isNotEqualTo(10.0);
    // y = 1 + 2/(e^2x - 1) - 1/x at x = 10 lies 2 e^-20 above 0.9, the slope there is 1/100
    assertThat(InverseLangevin.of(0.9)).isCloseTo(10 - 200 * Math.exp(-20), within(1e-12));
    assertThat(InverseLangevin.of(0.0)).isZero();
    assertThat(InverseLangevin.of(1.0)).isInfinite();
    assertThat(InverseLangevin.ratio(0.0)).isEqualTo(3.0);
  }

  /** Differences of x/y in fifty digits, by the square of y. */
  @Test
  void slopeOfTheRatio() {
    for (double y : new double[] {1e-6, 0.05, 0.0999, 0.1001, 0.3, 0.7, 0.95, 0.9999}) {
      Dfp step = DIGITS.newDfp("1e-20");
      Dfp square = DIGITS.newDfp(y).multiply(y);
      Dfp up = square.add(step).sqrt();
      Dfp down = square.subtract(step).sqrt();
      Dfp rise = Formulas.inverseLangevin(up).divide(up);
      Dfp fall = Formulas.inverseLangevin(down).divide(down);
      double slope = rise.subtract(fall).divide(step).divide(2.0).toDouble();
      assertThat(InverseLangevin.ratioSlope(InverseLangevin.ratio(y), y))
          .as("at %s", y)
          .isCloseTo(slope, within(1e-11 * slope));
    }
  }

  /** The work is the integral of the force, whatever branch takes it. */
  @Test
  void workIsTheIntegralOfTheForce() {
    double[][] ways = {
      {0.05, 0.09}, {0.05, 0.4}, {0.2, 0.21}, {0.2, 0.95}, {0.5, 0.1}, {0.9, 0.93}
    };
    for (double[] way : ways) {
      double from = Math.min(way[0], way[1]);
      double to = Math.max(way[0], way[1]);
      double area =
          new GaussIntegratorFactory()
              .legendre(60, from, to)
              .integrate(y -> Formulas.inverseLangevin(new Decimal64(y)).getReal());
      double rise = (way[1] - way[0]) * (way[1] + way[0]);
      assertThat(InverseLangevin.work(way[0], way[1], rise))
          .isCloseTo(Math.signum(rise) * area, within(1e-12 * area));
    }
  }
}
