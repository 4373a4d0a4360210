package org.flexwright.condition;

import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.law.Deformation;
import org.flexwright.law.StrainEnergy;
import org.flexwright.quantity.Pressure;

/**
 * Softened by cycles to a stretch.
 *
 * <p>Formula: the largest energy Wm is that of the grade's law at the stretch in the named
 * deformation; below it the law is that of {@link OgdenRoxburgh}, beyond it the virgin one. The law
 * softens everywhere alike, as if every place of the part had borne Wm: near the peak strain that
 * is so, elsewhere it softens too much.
 *
 * <p>Range: a stretch inside the range of the grade's law, which every answer checks. Band: that of
 * the softening.
 *
 * <p>Caveats: the same softening everywhere; strain that stays after the cycles (set) is not
 * modelled; polyurethane may stiffen after large strains instead of softening. Order: before {@link
 * AtTemperature} and {@link Held}, since m is an energy of the material as tested; after them Wm is
 * smaller and the softening another.
 *
 * <p>Source: that of the softening.
 *
 * <p>JShell: {@code Conditioned.to(1.5, Deformation.UNIAXIAL, OgdenRoxburgh.of(2, mpa(0.5), 0.1,
 * 1.1, source)).apply(law)}
 *
 * @param stretch the largest stretch of the cycles, above 0
 * @param mode the deformation of the cycles
 * @param softening the law of softening
 */
public record Conditioned(double stretch, Deformation mode, OgdenRoxburgh softening)
    implements Condition {

  private static final String NAME = "softening by a first cycle";

  /**
   * Refuses a stretch that is none.
   *
   * @param stretch the largest stretch of the cycles, above 0
   * @param mode the deformation of the cycles
   * @param softening the law of softening
   * @throws org.flexwright.InvalidInputException if the stretch is not above 0
   */
  public Conditioned {
    Require.positive("stretch of the cycles", stretch, "");
  }

  /**
   * Cycles to a stretch.
   *
   * @param stretch the largest stretch
   * @param mode the deformation
   * @param softening the law of softening
   * @return the condition
   * @throws org.flexwright.InvalidInputException if the stretch is not above 0
   */
  public static Conditioned to(double stretch, Deformation mode, OgdenRoxburgh softening) {
    return new Conditioned(stretch, mode, softening);
  }

  /**
   * The law softened.
   *
   * @throws org.flexwright.InvalidInputException if the law cannot bear the stretch at all
   */
  @Override
  public StrainEnergy apply(StrainEnergy law) {
    double[] l = mode.stretches(stretch);
    double energy = law.energy(l[0], l[1], l[2]);
    Require.that(
        energy >= -1e-12 * law.youngModulus() && Double.isFinite(energy),
        "stretch of the cycles",
        Text.number(stretch),
        "one that the law can bear: " + law.range(),
        "cycle to less");
    return softening.conditioned(law, Pressure.pa(Math.max(0.0, energy)));
  }

  @Override
  public double band() {
    return softening.band();
  }

  @Override
  public List<Caveat> caveats() {
    return List.of(
        Caveat.note(
            NAME,
            "every place of the part is softened as if it had borne the stretch of the cycles;"
                + " places that strained less are stiffer than that",
            softening.source()),
        Caveat.note(
            NAME,
            "the strain that stays after the cycles (set) is not modelled",
            softening.source()),
        Caveat.note(
            NAME,
            "thermoplastic polyurethane may stiffen after large strains instead of softening",
            Source.read(
                "Scetta et al. 2021, Macromolecules 54, moulded polyurethane, step cycles")));
  }

  @Override
  public List<Source> sources() {
    return List.of(softening.source(), Source.memory("Ogden & Roxburgh 1999, Proc. R. Soc. A 455"));
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "conditioned to a stretch of " + Text.number(stretch) + " (" + mode + ")";
  }
}
