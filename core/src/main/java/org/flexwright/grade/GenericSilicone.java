package org.flexwright.grade;

import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Factor;
import org.flexwright.evidence.Factors;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.fit.LawInData;
import org.flexwright.hardness.HardnessChart;
import org.flexwright.hardness.HardnessReading;
import org.flexwright.hardness.Irhd;
import org.flexwright.hardness.ShoreA;
import org.flexwright.hardness.ShoreD;
import org.flexwright.hardness.relation.Gent1958;
import org.flexwright.law.Deformation;
import org.flexwright.law.StretchRange;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Density;
import org.flexwright.quantity.Pressure;

/**
 * A soft platinum silicone known only by its hardness.
 *
 * <p>Formula: E = 0.436 of Gent's modulus, the geometric mean over eight silicones of 10 to 40
 * Shore A (0.335 to 0.533), ln-standard-deviation 0.18; neo-Hookean to 50 % strain, the reach of
 * those fits. At 100 % the same materials bear 1.13 to 1.44 times the neo-Hookean stress. Strains
 * were taken from the crosshead, so a modulus may be higher than measured.
 */
final class GenericSilicone {

  /** Geometric mean of measured over Gent's modulus. */
  static final double SHARE = 0.436;

  private static final double SIGMA = 0.18;
  private static final double REACH = 1.5;
  private static final Gent1958 GENT = new Gent1958();
  private static final Source DATA =
      Source.derived(
          "neo-Hookean fits at 3 to 50 % strain to the open tensile data of Marechal et al. 2020,"
              + " Soft Robotics, doi 10.1089/soro.2019.0115");
  private static final ValidityRange RANGE =
      new ValidityRange("generic silicone", "Shore A", 10.0, 40.0, "", DATA);

  private GenericSilicone() {}

  static GradeBuilder of(HardnessReading reading) {
    ShoreA a = toShoreA(reading);
    Pressure young = GENT.modulus(a.points()).times(SHARE);
    StretchRange data = new StretchRange(1.0 / REACH, REACH, "data of the silicones", DATA);
    GradeBuilder b =
        new GradeBuilder("silicone " + reading, LawInData.of(NeoHookean.ofYoung(young), data));
    double slope = GENT.logSlope(a.points()) * a.tolerance() / Factors.COVERAGE;
    b.factors = b.factors.with(Factor.MODULUS, Math.hypot(SIGMA, slope));
    b.density = Density.gPerCm3(1.08);
    b.generic = true;
    b.tested.add(Deformation.UNIAXIAL);
    b.sources.add(DATA);
    b.sources.add(GENT.source());
    b.caveats.add(
        Caveat.note(
            "generic silicone",
            "from hardness alone, half the modulus of a rubber of that hardness; measured with"
                + " crosshead strain, so it may be stiffer: test a strip",
            DATA));
    RANGE.check(a.points()).ifPresent(b.caveats::add);
    return b;
  }

  private static ShoreA toShoreA(HardnessReading reading) {
    if (reading instanceof ShoreA a) {
      return a;
    }
    return reading instanceof ShoreD d
        ? HardnessChart.toShoreA(d)
        : HardnessChart.toShoreA((Irhd) reading);
  }
}
