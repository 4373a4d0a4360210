package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** What any notch factor of a fillet must do. */
final class FilletPropertiesTest {

  @Property(seed = "5", tries = 300)
  void fallsWithTheFilletAndGrowsWithTheStep(
      @ForAll boolean both,
      @ForAll @DoubleRange(min = 0.1, max = 3.0) double fillet,
      @ForAll @DoubleRange(min = 0.01, max = 50.0) double step) {
    for (int load = 0; load < 2; load++) {
      double k = at(load, both, fillet, step);
      assertThat(k).isBetween(1.0, 3.0);
      assertThat(at(load, both, 1.05 * fillet, step)).isLessThanOrEqualTo(k);
      assertThat(at(load, both, fillet, 1.05 * step)).isGreaterThanOrEqualTo(k);
      assertThat(at(load, both, fillet, Double.POSITIVE_INFINITY)).isGreaterThanOrEqualTo(k);
      assertThat(at(load, both, fillet, 0.0)).isCloseTo(1.0, within(1e-15));
    }
  }

  private static double at(int load, boolean both, double fillet, double step) {
    return load == 0 ? Fillet.tension(both, fillet, step) : Fillet.bending(both, fillet, step);
  }
}
