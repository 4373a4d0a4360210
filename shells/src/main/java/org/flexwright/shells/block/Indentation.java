package org.flexwright.shells.block;

import java.util.List;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Source;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Volume;
import org.flexwright.response.Channel;
import org.flexwright.response.ClosedForm;
import org.flexwright.response.Lever;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.run.RunControl;

/**
 * A rigid ball or fingertip pressed into a wide soft layer on a rigid base.
 *
 * <p>Formula: F = (16/9) E R^(1/2) d^(3/2) k(c), c = sqrt(R d)/h; k = 1 on a thick block (Hertz),
 * otherwise from a table of the layer problem, bonded to its base or slipping on it without
 * friction. Peak tensile strain 0.226 a/R below the middle of the contact (Hertz), a^2 = R d, times
 * the rise k^(1/2), a guess whose share is in the band. Symbols: R ball radius, d travel, h layer
 * (m), E modulus (Pa).
 *
 * <p>Range: the rubber keeps its volume; c to 1.3, d/R to 0.25, d/h to 0.3. Caveats outside; beyond
 * c 1.9 (bonded) or 1.54 (slipping) the factor goes on with its last power. Band of the load 0.95
 * to 1.1; of the strain 0.9 to 1.15 on a thick block, high end times k^(1/2) more on a thin one.
 *
 * <p>Source: Hertz (from memory); factors by dual integral equations of the layer, after the method
 * of Hayes et al. 1972, J. Biomech. 5. The series of Dimitriadis et al. 2002, Biophys. J. 82 (from
 * memory) meets them within 2.2 % to c 0.27 (bonded) or 2.8 % to c 0.19 (slipping) and parts
 * beyond, to -17 % and +53 %. A flat punch is no part here: the strain at its edge has no bound.
 * Printed flat, the strain at the middle lies in the layers.
 *
 * <p>JShell: {@code Indentation.ball(mm(8), mm(4)).respond(grade, LoadCase.toTravel(mm(0.5)))}
 *
 * @param base how the layer lies on its base
 * @param ball radius of the ball
 * @param layer thickness of the layer
 * @param patch radius of the layer, which counts for the volume alone
 * @param build how it stands in the printer, the axis being that of the push
 */
public record Indentation(Base base, Length ball, Length layer, Length patch, BuildDirection build)
    implements Part<Indentation> {

  /** How the layer lies on its rigid base. */
  public enum Base {
    /** Bonded to it. */
    BONDED,
    /** Slips on it without friction. */
    SLIPPING
  }

  /** The thickness of the layer. */
  public static final Lever<Indentation> LAYER =
      Lever.of("layer", Indentation::layer, Indentation::layer);

  private static final String NAME = "ball on a layer";
  private static final Source HERTZ = Source.memory("Hertz, contact of a sphere");
  private static final Source COMPUTED =
      Source.derived("dual integral equations of an incompressible layer");
  private static final double DEEP = 0.2261; // 0.2663 p0/E with p0 = (8/3 pi) E a/R
  private static final double WORKING = 0.79;
  // ln k over c
  private static final PolynomialSplineFunction BONDED =
      over(
          new double[] {
            0, 0.0491, 0.0962, 0.1851, 0.2674, 0.4172, 0.5544, 0.7479, 1.0544, 1.3489, 1.9150
          },
          new double[] {
            1, 1.05903, 1.12354, 1.26977, 1.44002, 1.85712, 2.38120, 3.37110, 5.56319, 8.46801,
            16.76175
          });
  private static final PolynomialSplineFunction SLIPPING =
      over(
          new double[] {0, 0.0494, 0.0975, 0.1901, 0.2783, 0.4435, 0.5986, 0.8210, 1.1808, 1.5365},
          new double[] {
            1, 1.03832, 1.07892, 1.16691, 1.26366, 1.48158, 1.72803, 2.13910, 2.89276, 3.68815
          });

  private static PolynomialSplineFunction over(double[] c, double[] k) {
    double[] log = new double[k.length];
    for (int i = 0; i < k.length; i++) {
      log[i] = Math.log(k[i]);
    }
    return new SplineInterpolator().interpolate(c, log);
  }

  /**
   * Refuses a layer that makes no sense.
   *
   * @param base how the layer lies on its base
   * @param ball radius of the ball
   * @param layer thickness of the layer
   * @param patch radius of the layer, which counts for the volume alone
   * @param build how it stands in the printer, the axis being that of the push
   * @throws org.flexwright.InvalidInputException if a length is not above 0
   */
  public Indentation {
    Require.positive("ball radius", ball.m(), "m");
    Require.positive("layer", layer.m(), "m");
    Require.positive("patch radius", patch.m(), "m");
  }

  /**
   * A ball on a bonded layer, which reaches four ball radii out and was printed flat.
   *
   * @param ball radius of the ball
   * @param layer thickness of the layer
   * @return the part
   */
  public static Indentation ball(Length ball, Length layer) {
    return new Indentation(Base.BONDED, ball, layer, ball.times(4.0), BuildDirection.AXIS_UP);
  }

  /**
   * This layer on another base.
   *
   * @param of how the layer lies on it
   * @return the new part
   */
  public Indentation base(Base of) {
    return new Indentation(of, ball, layer, patch, build);
  }

  /**
   * This layer under another ball.
   *
   * @param of the radius
   * @return the new part
   */
  public Indentation ball(Length of) {
    return new Indentation(base, of, layer, patch, build);
  }

  /**
   * This part with another layer.
   *
   * @param of the thickness
   * @return the new part
   */
  public Indentation layer(Length of) {
    return new Indentation(base, ball, of, patch, build);
  }

  /**
   * This part with a layer that reaches elsewhere.
   *
   * @param of the radius of the layer
   * @return the new part
   */
  public Indentation patch(Length of) {
    return new Indentation(base, ball, layer, of, build);
  }

  /**
   * This part built another way.
   *
   * @param of how it stands in the printer
   * @return the new part
   */
  public Indentation build(BuildDirection of) {
    return new Indentation(base, ball, layer, patch, of);
  }

  /** Force over that on a thick block. */
  static double factor(Base base, double c) {
    PolynomialSplineFunction table = base == Base.BONDED ? BONDED : SLIPPING;
    double[] knots = table.getKnots();
    double last = knots[knots.length - 1];
    if (c <= last) {
      return Math.exp(table.value(c));
    }
    double power = last * table.polynomialSplineDerivative().value(last);
    return Math.exp(table.value(last)) * Math.pow(c / last, power);
  }

  private double strain(double h, double u) {
    double r = ball.m();
    return DEEP * Math.sqrt(u / r * factor(base, Math.sqrt(r * u) / h));
  }

  private double force(Grade grade, double h, double u) {
    double r = ball.m();
    double modulus = Softening.modulus(grade, WORKING * strain(h, u));
    return 16.0 / 9.0 * modulus * Math.sqrt(r * u) * u * factor(base, Math.sqrt(r * u) / h);
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double d = load instanceof LoadCase.ToTravel to ? to.travel().m() : 0.0;
    double c = Math.sqrt(ball.m() * d) / layer.m();
    double thin = Math.sqrt(factor(base, c));
    return ClosedForm.of(NAME, layer)
        .loadOfLaw(Channel.FORCE, (h, u) -> force(grade, h, u))
        .strain(this::strain)
        .bands(new ClosedForm.Band(0.95, 1.1), new ClosedForm.Band(0.9 / thin, 1.15 * thin))
        .crossesLayers(build == BuildDirection.AXIS_LYING)
        .sources(HERTZ, COMPUTED)
        .respond(grade, load, run, reservations(d, c));
  }

  private Checks reservations(double d, double c) {
    return Checks.of(NAME, COMPUTED)
        .check("sqrt(ball radius x travel) / layer", 0.0, 1.3, c)
        .check("travel / ball radius", 0.0, 0.25, d / ball.m())
        .check("travel / layer", 0.0, 0.3, d / layer.m());
  }

  @Override
  public List<Lever<Indentation>> levers() {
    return List.of(LAYER);
  }

  @Override
  public Volume printedVolume() {
    return layer.times(patch.times(patch)).times(Math.PI);
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.WALL, layer);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "ball of radius "
        + ball
        + " on a "
        + (base == Base.BONDED ? "bonded" : "slipping")
        + " layer of "
        + layer;
  }
}
