package org.flexwright.hardness.contact;

import java.util.Optional;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Length;

/**
 * A layer bonded to a rigid base: by which factor it resists an indenter more than a half-space.
 *
 * <p>phi(t) - (2 / (pi h)) int_0^a M(t, s) phi(s) ds = d - D(t), with M(t, s) = int_0^inf (1 -
 * L(u)) cos(u t / h) cos(u s / h) du and L(u) = (2 k sinh 2u - 4u) / (2 k cosh 2u + 4u^2 + 1 +
 * k^2), k = 3 - 4 nu; the force is F = 2 E / (1 - nu^2) int_0^a phi dt. The radius of contact a is
 * R for a flat punch; for other shapes it is where phi(a) = 0.
 *
 * <p>h thickness; d depth; D(t) depth at which the shape touches a radius t on a half-space; E
 * Young's modulus; nu Poisson's ratio, 0 to 0.5. The equation is solved at Gauss-Legendre points;
 * doubling them moves a factor by a share below 2e-7 to a/h = 10 and, at 20, below 5e-8 for a
 * punch, 1e-8 for a ball or a sharp cone, 2e-5 for a cone with a flat or a tip far smaller than the
 * contact.
 *
 * <p>Flat punch, nu = 0.5: 1.2806 at a / h = 0.2, 3.6187 at 1. First order for every shape: 1 +
 * 1.127 a / h, with the radius a on the half-space. The polynomial 1 + 1.133 c + 1.283 c^2 + 0.769
 * c^3 + 0.0975 c^4 for a ball, c^2 = R d / h^2, lies 1 per cent below at c = 0.2 and 16 at c = 1.
 *
 * <p>Range: depth up to a fifth of the thickness, beyond it the strain is large, see {@link
 * #check}. No friction under the indenter. The radius of contact may reach 20 thicknesses.
 *
 * <p>Source: W. C. Hayes, L. M. Keer, G. Herrmann and L. F. Mockros, J. Biomech. 5 (1972) 541, from
 * memory; the kernel derived from Hankel transforms of the layer.
 *
 * <pre>{@code
 * var layer = new BondedLayer(Length.mm(2));
 * layer.factor(new FlatPunch(Length.mm(0.4)), Length.mm(0.1), 0.5)      // 1.2806
 * }</pre>
 *
 * @param thickness the thickness, 0.001 mm to 1 m
 */
public record BondedLayer(Length thickness) {

  private static final Source SOURCE =
      Source.memory("W. C. Hayes, L. M. Keer, G. Herrmann and L. F. Mockros, J. Biomech. 5 (1972)");
  private static final ValidityRange RANGE =
      new ValidityRange(
          "indenter on a bonded layer",
          "depth over thickness",
          0.0,
          0.2,
          "",
          Source.assumption("small strain in the layer"));
  private static final double WIDEST = 20.0;

  /**
   * Refuses a thickness that makes no sense.
   *
   * @param thickness the thickness, 0.001 mm to 1 m
   * @throws org.flexwright.InvalidInputException unless the thickness is 0.001 mm to 1 m
   */
  public BondedLayer {
    Require.between("thickness of the layer", thickness.mm(), 0.001, 1000.0, "mm");
  }

  /**
   * The force over that on a half-space at the same depth; by the same factor a modulus read on
   * this layer is too high.
   *
   * @param indenter the indenter
   * @param depth the depth, above zero
   * @param poisson Poisson's ratio, 0 to 0.5
   * @return the factor, above 1
   * @throws org.flexwright.InvalidInputException if an input is out of its bounds or the radius of
   *     contact is more than 20 thicknesses
   */
  public double factor(Indenter indenter, Length depth, double poisson) {
    double nu = Require.between("Poisson's ratio", poisson, 0.0, 0.5, "");
    double d = Require.positive("depth of the indenter", depth.m(), "m");
    double half = indenter.contactRadius(depth).m();
    double ratio = half / thickness.m();
    Require.that(
        ratio <= WIDEST,
        "radius of contact over thickness",
        ratio,
        "up to 20",
        "take the layer as a bonded block");
    double area = indenter.forceArea(depth).m2();
    if (indenter instanceof FlatPunch) {
      LayerEquation flat = new LayerEquation(indenter, thickness.m(), nu, half);
      return flat.at(half).forceArea(d) / area;
    }
    // an incompressible layer far thinner than the contact spreads it to 2 (ball) or 2.4 (cone)
    double widest = 3.0 * half;
    LayerEquation equation = new LayerEquation(indenter, thickness.m(), nu, widest);
    double least = 0.9 * half;
    if (indenter instanceof Frustum f) {
      least = f.flatRadius().m() * (1.0 + 1e-12);
      if (equation.at(least).depth() >= d) {
        return equation.at(least).forceArea(d) / area;
      }
    }
    double log =
        new BrentSolver(1e-14, 1e-13)
            .solve(
                100,
                x -> Math.log(equation.at(Math.exp(x)).depth() / d),
                Math.log(least),
                Math.log(widest));
    return equation.at(Math.exp(log)).forceArea(d) / area;
  }

  /**
   * The caveat for a depth that strains the layer too much for a linear law, if any.
   *
   * @param depth the depth
   * @return the caveat, nothing up to a fifth of the thickness
   */
  public Optional<Caveat> check(Length depth) {
    return RANGE.check(depth.ratioTo(thickness));
  }

  /**
   * Where the equation comes from.
   *
   * @return the source
   */
  public Source source() {
    return SOURCE;
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "bonded layer of " + thickness;
  }
}
