package org.flexwright.lattice.scaling;

import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Estimate;
import org.flexwright.evidence.Source;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Pressure;

/**
 * The classical compression curve of an elastomer foam: straight to the collapse of its struts,
 * flat while they fold, then steep as it densifies. An envelope, see the caveat.
 *
 * <p>Formula: s = Es rho^2 e to s_el = 0.05 Es rho^2; s_el while e is below e_D (1 - D^(-1/m));
 * then s_el/D (e_D/(e_D - e))^m with e_D = 1 - 1.4 rho, D = 2.3, m = 1. Symbols: Es modulus of the
 * solid, rho relative density, e compressive strain.
 *
 * <p>Range: rho 0.02 to 0.3. Caveat: bending-dominated printed lattices soften steadily and show no
 * true plateau before their struts touch; the exponent m of foams scatters from 0.6 to 1.4. Source:
 * Maiti, Gibson and Ashby 1984, Acta Metall. 32, 1963; Gibson and Ashby 1997, Cellular Solids (from
 * memory).
 *
 * <p>JShell: {@code FoamCurve.of(0.1).stress(mpa(10), 0.5)}
 *
 * @param density relative density, 0.005 to 0.5
 */
public record FoamCurve(double density) {

  /** Where the curve comes from. */
  public static final Source SOURCE =
      Source.memory("Maiti, Gibson and Ashby 1984, Acta Metall. 32, 1963; Cellular Solids 1997");

  static final double COLLAPSE = 0.05;
  private static final double D = 2.3;

  /**
   * Refuses a density that no foam has.
   *
   * @param density relative density, 0.005 to 0.5
   * @throws org.flexwright.InvalidInputException if outside 0.005 to 0.5
   */
  public FoamCurve {
    Require.between("relative density", density, 0.005, 0.5, "");
  }

  /**
   * The curve of a density.
   *
   * @param density relative density, 0.005 to 0.5
   * @return the curve
   */
  public static FoamCurve of(double density) {
    return new FoamCurve(density);
  }

  /**
   * The strain at which the curve rises without bound.
   *
   * @return 1 - 1.4 rho
   */
  public double densification() {
    return 1.0 - 1.4 * density;
  }

  /**
   * The strain at which the plateau ends.
   *
   * @return e_D (1 - 1/D)
   */
  public double plateauEnd() {
    return densification() * (1.0 - 1.0 / D);
  }

  /**
   * Stress over modulus of the solid.
   *
   * @param strain compressive strain, not negative, below {@link #densification}
   * @return the ratio
   * @throws org.flexwright.InvalidInputException if the strain is outside
   */
  public double relative(double strain) {
    Require.between("compressive strain", strain, 0.0, Math.nextDown(densification()), "");
    double plateau = COLLAPSE * density * density;
    if (strain < COLLAPSE) {
      return plateau * strain / COLLAPSE;
    }
    if (strain < plateauEnd()) {
      return plateau;
    }
    return plateau / D * densification() / (densification() - strain);
  }

  /**
   * The stress.
   *
   * @param solid modulus of the solid
   * @param strain compressive strain, not negative, below {@link #densification}
   * @return the estimate, always with the caveat
   */
  public Estimate<Pressure> stress(Pressure solid, double strain) {
    Require.positive("modulus of the solid", solid.pa(), "Pa");
    Pressure nominal = solid.times(relative(strain));
    return new Estimate<>(
        nominal.times(0.4),
        nominal,
        nominal.times(2.5),
        Estimate.Band.BRACKET,
        List.of(SOURCE),
        List.of(caveat()));
  }

  static Caveat caveat() {
    return Caveat.note(
        "foam plateau",
        "an envelope for irregular foams: bending-dominated printed lattices soften steadily and"
            + " show no true plateau before their struts touch, stretch-dominated ones are stiffer"
            + " until they buckle",
        SOURCE);
  }

  /**
   * The energy that an ideal foam takes up to densification, per volume: 0.05 Es rho^2 (1 - 1.4
   * rho).
   *
   * @param solid modulus of the solid
   * @return energy per volume, 1 J/m3 = 1 Pa
   */
  public Pressure idealEnergy(Pressure solid) {
    return solid.times(COLLAPSE * density * density * densification());
  }
}
