package org.flexwright.grade;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Factor;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.hardness.HardnessChart;
import org.flexwright.hardness.HardnessReading;
import org.flexwright.hardness.Irhd;
import org.flexwright.hardness.ShoreA;
import org.flexwright.hardness.ShoreD;
import org.flexwright.hardness.relation.MouldedPolyurethane;
import org.flexwright.law.Deformation;
import org.flexwright.law.HenckyCurve;
import org.flexwright.quantity.Pressure;

/**
 * Stress points of a thermoplastic polyurethane known only by its Shore D hardness.
 *
 * <p>M100 and the flexural modulus by {@link MouldedPolyurethane}; M50 = M100/1.22 and M300 = 1.75
 * M100 are the geometric means of the same property sheets. Generic defaults, not a published
 * correlation.
 */
final class GenericPolyurethane {

  private static final Source PRINTED_SHEETS =
      Source.read("open compilation of printed 95 A polyurethane: 400-700 % in, 150-400 % across");
  private static final MouldedPolyurethane FIT = new MouldedPolyurethane();
  private static final Source SHEETS = FIT.source();
  private static final double FLEXURAL_STRAIN = 0.01;
  private static final double FLEXURAL_SIGMA = Math.log(1.18);

  private static final ValidityRange FLEXURAL_RANGE =
      new ValidityRange(
          "generic polyurethane curve",
          "Shore D",
          FIT.range().low(),
          FIT.range().high(),
          "",
          SHEETS);

  private GenericPolyurethane() {}

  static GradeBuilder of(HardnessReading reading) {
    ShoreD d = toShoreD(reading);
    GradeBuilder b = new GradeBuilder("polyurethane " + reading, curve(d.points()));
    b.factors = b.factors.with(Factor.MODULUS, Math.hypot(fitSigma(d.points()), readingSigma(d)));
    b.generic = true;
    b.tested.add(Deformation.UNIAXIAL);
    b.sources.add(SHEETS);
    b.sources.add(PRINTED_SHEETS);
    b.caveats.addAll(caveats(d.points()));
    return b;
  }

  static ShoreD toShoreD(HardnessReading reading) {
    if (reading instanceof ShoreD d) {
      return d;
    }
    if (reading instanceof ShoreA a) {
      return HardnessChart.toShoreD(a);
    }
    return HardnessChart.toShoreD(HardnessChart.toShoreA((Irhd) reading));
  }

  /** The curve through the secant at 1 % and the stresses at 50, 100 and 300 %. */
  static HenckyCurve curve(double shoreD) {
    Pressure m100 = FIT.stressAt100(shoreD);
    return HenckyCurve.through(
        new double[] {FLEXURAL_STRAIN, Math.log(1.5), Math.log(2.0), Math.log(4.0)},
        new Pressure[] {
          FIT.modulus(shoreD).times(FLEXURAL_STRAIN),
          m100.times(1.5 / 1.22),
          m100.times(2.0),
          m100.times(4.0 * 1.75)
        });
  }

  /** Scatter of the fit; outside its range it grows by 4 % for each point. */
  static double fitSigma(double shoreD) {
    double outside =
        Math.max(0.0, Math.max(FLEXURAL_RANGE.low() - shoreD, shoreD - FLEXURAL_RANGE.high()));
    return FLEXURAL_SIGMA + 0.04 * outside;
  }

  /** What the tolerance of the reading does to the modulus, as ln-standard-deviation. */
  static double readingSigma(ShoreD reading) {
    return FIT.logSlope(reading.points()) * reading.tolerance() / 2.0;
  }

  private static List<Caveat> caveats(double shoreD) {
    List<Caveat> caveats = new ArrayList<>();
    caveats.add(
        Caveat.note(
            "generic polyurethane curve",
            "from hardness alone, of moulded material; a print can be softer: measure a strip",
            SHEETS));
    caveats.add(GradeBuilder.ONE_CURVE);
    FLEXURAL_RANGE.check(shoreD).ifPresent(caveats::add);
    return caveats;
  }
}
