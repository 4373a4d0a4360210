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
import org.flexwright.quantity.Pressure;

/**
 * Stress points of a thermoplastic polyurethane known only by its Shore D hardness.
 *
 * <p>log10 M100 = 0.01709 D + 0.2345 (15 moulded grades, 29 to 76 D, scatter x1.11) and log10
 * E_flex = 0.02851 D + 0.5957 (6 grades, 30 to 55 D, scatter x1.18), both in MPa; M50 = M100/1.22
 * and M300 = 1.75 M100 are the geometric means of the same property sheets. Generic defaults, not a
 * published correlation.
 */
final class GenericPolyurethane {

  private static final Source PRINTED_SHEETS =
      Source.read("open compilation of printed 95 A polyurethane: 400-700 % in, 150-400 % across");
  private static final Source SHEETS =
      Source.derived("own fits to property sheets of moulded thermoplastic polyurethanes");
  private static final double FLEXURAL_SIGMA = Math.log(1.18);

  private static final double LN10 = Math.log(10.0);
  private static final double FLEXURAL_SLOPE = 0.02851;
  private static final double M100_SLOPE = 0.01709;
  private static final ValidityRange FLEXURAL_RANGE =
      new ValidityRange("generic polyurethane curve", "Shore D", 30, 55, "", SHEETS);

  private GenericPolyurethane() {}

  static GradeBuilder of(HardnessReading reading) {
    ShoreD d = toShoreD(reading);
    GradeBuilder b = new GradeBuilder("polyurethane " + reading, points(d.points()).law());
    b.factors = b.factors.with(Factor.MODULUS, Math.hypot(fitSigma(d.points()), readingSigma(d)));
    b.generic = true;
    b.sources.add(SHEETS);
    b.sources.add(PRINTED_SHEETS);
    b.caveats.addAll(caveats(d.points()));
    return b;
  }

  private static ShoreD toShoreD(HardnessReading reading) {
    if (reading instanceof ShoreD d) {
      return d;
    }
    if (reading instanceof ShoreA a) {
      return HardnessChart.toShoreD(a);
    }
    return HardnessChart.toShoreD(HardnessChart.toShoreA((Irhd) reading));
  }

  private static StressPoints points(double shoreD) {
    double m100 = Math.pow(10.0, M100_SLOPE * shoreD + 0.2345);
    return new StressPoints(
        Pressure.mpa(Math.pow(10.0, FLEXURAL_SLOPE * shoreD + 0.5957)),
        Pressure.mpa(m100 / 1.22),
        Pressure.mpa(m100),
        Pressure.mpa(1.75 * m100));
  }

  /** Scatter of the fit; outside its range it grows by 4 % for each point. */
  private static double fitSigma(double shoreD) {
    double outside = Math.max(0.0, Math.max(30.0 - shoreD, shoreD - 55.0));
    return FLEXURAL_SIGMA + 0.04 * outside;
  }

  /** What the tolerance of the reading does to the modulus, as ln-standard-deviation. */
  private static double readingSigma(ShoreD reading) {
    return FLEXURAL_SLOPE * LN10 * reading.tolerance() / 2.0;
  }

  private static List<Caveat> caveats(double shoreD) {
    List<Caveat> caveats = new ArrayList<>();
    caveats.add(
        Caveat.note(
            "generic polyurethane curve",
            "from hardness alone, of moulded material; a print can be softer: measure a strip",
            SHEETS));
    caveats.add(
        Caveat.note(
            "Hencky-strain law",
            "one uniaxial curve serves every state of stretch until a biaxial test confirms it",
            Source.assumption("isotropic Hencky-type law")));
    FLEXURAL_RANGE.check(shoreD).ifPresent(caveats::add);
    return caveats;
  }
}
