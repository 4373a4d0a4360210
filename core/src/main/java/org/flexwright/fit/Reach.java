package org.flexwright.fit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.flexwright.evidence.Source;
import org.flexwright.internal.Text;
import org.flexwright.law.BiaxialStretch;
import org.flexwright.law.Deformation;
import org.flexwright.law.Stability;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.StretchRange;

/**
 * How far test curves reach, and whether a law is stable (Drucker) as far as that.
 *
 * <p>A deformation that was tested counts as far as the test went; one that was not, as far as it
 * takes to the greatest I1 of the tests. Uniaxial compression is inflation and the reverse.
 */
final class Reach {

  private static final double STEP = 1.02;
  private static final double FARTHEST = 1000.0;
  private static final double LOCKED = 1e30;

  private final Map<Deformation, StretchRange> tested = new EnumMap<>(Deformation.class);
  private final Map<Deformation, Double> end = new EnumMap<>(Deformation.class);
  private double low = 1.0;
  private double high = 1.0;

  Reach(List<TestCurve> curves) {
    double most = 3.0;
    for (TestCurve curve : curves) {
      for (TestCurve.Point point : curve.points()) {
        double[] l = curve.mode().stretches(point.stretch());
        most = Math.max(most, invariant(l));
        for (double each : l) {
          low = Math.min(low, each);
          high = Math.max(high, each);
        }
      }
      double from = curve.points().get(0).stretch();
      double to = curve.points().get(curve.points().size() - 1).stretch();
      StretchRange range = range(Math.min(1.0, from), Math.max(1.0, to), "test curves");
      tested.merge(
          curve.mode(),
          range,
          (a, b) -> range(Math.min(a.low(), b.low()), Math.max(a.high(), b.high()), "test curves"));
    }
    tested.forEach(this::reached);
    for (Deformation mode : Deformation.values()) {
      if (!end.containsKey(mode)) {
        end.put(mode, stretchTo(mode, most));
      }
    }
  }

  private static StretchRange range(double low, double high, String reason) {
    return new StretchRange(low, high, reason, Source.derived("ends of the test curves"));
  }

  private void reached(Deformation mode, StretchRange range) {
    if (range.high() > 1.0) {
      end.merge(mode, range.high(), Math::max);
    }
    if (range.low() < 1.0) {
      switch (mode) {
        case UNIAXIAL -> end.merge(Deformation.EQUIBIAXIAL, 1 / Math.sqrt(range.low()), Math::max);
        case EQUIBIAXIAL ->
            end.merge(Deformation.UNIAXIAL, 1 / (range.low() * range.low()), Math::max);
        case PLANAR -> end.merge(mode, 1 / range.low(), Math::max);
      }
    }
  }

  private static double invariant(double[] l) {
    return l[0] * l[0] + l[1] * l[1] + l[2] * l[2];
  }

  private static double stretchTo(Deformation mode, double most) {
    double stretch = 1.0;
    while (stretch < FARTHEST && invariant(mode.stretches(stretch * STEP)) <= most) {
      stretch *= STEP;
    }
    return stretch;
  }

  /** The stretches of the tests of one deformation. */
  Optional<StretchRange> tested(Deformation mode) {
    return Optional.ofNullable(tested.get(mode));
  }

  /** The principal stretches met in all tests. */
  StretchRange principal() {
    List<String> words = new ArrayList<>();
    tested.forEach(
        (mode, range) ->
            words.add(
                mode.name().toLowerCase(Locale.ROOT)
                    + " "
                    + Text.number(range.low())
                    + " to "
                    + Text.number(range.high())));
    return range(low, high, "data of the fit: " + String.join(", ", words));
  }

  /** Where a law is first not stable within the reach, if anywhere. */
  Optional<String> instability(StrainEnergy law) {
    Stability stability = Stability.of(law);
    for (Deformation mode : Deformation.values()) {
      double last = end.getOrDefault(mode, 1.0);
      for (double at = 1.0; at < last * STEP; at *= STEP) {
        double[] l = mode.stretches(Math.min(at, last));
        // one not tested may lock before; that is no instability
        if (!(law.energy(l[0], l[1], l[2]) < LOCKED * law.shearModulus())) {
          break;
        }
        if (!(stability.stiffness(new BiaxialStretch(l[0], l[1])) > 0.0)) {
          return Optional.of(
              mode.name().toLowerCase(Locale.ROOT)
                  + " from a stretch of "
                  + Text.number(Math.min(at, last), 3));
        }
      }
    }
    return Optional.empty();
  }
}
