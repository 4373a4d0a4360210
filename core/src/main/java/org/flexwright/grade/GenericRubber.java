package org.flexwright.grade;

import org.flexwright.evidence.Estimate;
import org.flexwright.evidence.Factor;
import org.flexwright.hardness.HardnessReading;
import org.flexwright.hardness.relation.ModulusFromHardness;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Density;
import org.flexwright.quantity.Pressure;

/**
 * A vulcanised rubber known only by its hardness: neo-Hookean with the modulus of the relations.
 */
final class GenericRubber {

  private GenericRubber() {}

  static GradeBuilder of(HardnessReading reading) {
    Estimate<Pressure> modulus = ModulusFromHardness.of(reading).withReading();
    GradeBuilder b = new GradeBuilder("rubber " + reading, NeoHookean.ofYoung(modulus.nominal()));
    double up = modulus.high().ratioTo(modulus.nominal());
    double down = modulus.nominal().ratioTo(modulus.low());
    b.factors = b.factors.withBand(Factor.MODULUS, Math.max(up, down));
    b.density = Density.gPerCm3(1.1);
    b.generic = true;
    b.sources.addAll(modulus.sources());
    b.caveats.addAll(modulus.caveats());
    return b;
  }
}
