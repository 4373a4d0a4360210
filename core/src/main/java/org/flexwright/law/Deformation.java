package org.flexwright.law;

import java.util.Locale;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Source;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Pressure;

/**
 * The homogeneous deformations of an incompressible elastomer that tests are made of, in tension
 * (stretch above 1) and in compression (below 1).
 *
 * <p>Formulas: the energy along the path is w(l) = W(l, l^-1/2, l^-1/2) for uniaxial, W(l, l, l^-2)
 * for equibiaxial and W(l, 1, 1/l) for planar. Nominal stress P = w' (half of it for equibiaxial,
 * where two directions work), true stress s = l P, tangents dP/dl and ds/dl = P + l dP/dl by the
 * chain rule from the first and second derivatives of the law.
 *
 * <p>Symbols: l stretch, W energy of the {@link StrainEnergy} (Pa), P force per reference area, s
 * force per deformed area (Pa). Other biaxial states: {@link BiaxialStretch}.
 *
 * <p>Range: that of the law. Stresses are given beyond it too, as far as the law has them; the
 * inverse is given only where {@link #unique} says so. At locking and beyond there is no stress.
 *
 * <p>Source: Treloar, The Physics of Rubber Elasticity (from memory); derived.
 *
 * <p>JShell: {@code Deformation.UNIAXIAL.nominalStress(NeoHookean.of(mpa(0.4)), 2)}
 */
public enum Deformation {
  /** One direction pulled or pushed, sides free. */
  UNIAXIAL,
  /** Two directions alike, thickness free. */
  EQUIBIAXIAL,
  /** One direction pulled or pushed, one held, thickness free (pure shear). */
  PLANAR;

  // places of the six second derivatives behind the three first ones
  private static final int D11 = 3;
  private static final int D22 = 4;
  private static final int D33 = 5;
  private static final int D12 = 6;
  private static final int D13 = 7;
  private static final int D23 = 8;

  /**
   * The nominal stress: force per reference area.
   *
   * @param law the law
   * @param stretch the stretch, above 0
   * @return P
   * @throws InvalidInputException if the stretch is not above 0, or the law locks before it
   */
  public Pressure nominalStress(StrainEnergy law, double stretch) {
    return typed(law, stretch, trueStressPa(law, stretch) / stretch);
  }

  /**
   * The true stress: force per deformed area.
   *
   * @param law the law
   * @param stretch the stretch, above 0
   * @return s
   * @throws InvalidInputException if the stretch is not above 0, or the law locks before it
   */
  public Pressure trueStress(StrainEnergy law, double stretch) {
    return typed(law, stretch, trueStressPa(law, stretch));
  }

  /**
   * The slope of the nominal stress, dP/dl.
   *
   * @param law the law
   * @param stretch the stretch, above 0
   * @return dP/dl
   * @throws InvalidInputException if the stretch is not above 0, or the law locks before it
   */
  public Pressure nominalTangent(StrainEnergy law, double stretch) {
    Require.positive("stretch", stretch, "");
    return typed(law, stretch, tangentPa(law, stretch));
  }

  /**
   * The slope of the true stress, ds/dl = P + l dP/dl.
   *
   * @param law the law
   * @param stretch the stretch, above 0
   * @return ds/dl
   * @throws InvalidInputException if the stretch is not above 0, or the law locks before it
   */
  public Pressure trueTangent(StrainEnergy law, double stretch) {
    double nominal = trueStressPa(law, stretch) / stretch;
    return typed(law, stretch, nominal + stretch * tangentPa(law, stretch));
  }

  /**
   * The stretch at a nominal stress, inside the stretches of {@link #unique}.
   *
   * @param law the law
   * @param nominal P, negative in compression
   * @return l
   * @throws InvalidInputException if P is not reached in these stretches
   */
  public double stretch(StrainEnergy law, Pressure nominal) {
    double target = nominal.pa();
    if (target == 0.0) {
      return 1.0;
    }
    FirstLoss end = side(law, Math.copySign(1.0, target));
    double last = Math.exp(end.strain());
    double reached = trueStressPa(law, last) / last;
    if (!(Math.abs(target) <= Math.abs(reached) && target * reached > 0.0)) {
      throw unreached(law, nominal);
    }
    if (target == reached) {
      return last;
    }
    double strain =
        new BrentSolver(1e-15, 1e-15)
            .solve(
                200,
                e -> trueStressPa(law, Math.exp(e)) / Math.exp(e) - target,
                Math.min(0.0, end.strain()),
                Math.max(0.0, end.strain()));
    return Math.exp(strain);
  }

  private InvalidInputException unreached(StrainEnergy law, Pressure nominal) {
    StretchRange range = unique(law);
    return new InvalidInputException(
        "nominal stress, " + name().toLowerCase(Locale.ROOT),
        nominal.toString(),
        nominalStress(law, range.low()) + " to " + nominalStress(law, range.high()) + ", " + range,
        "ask for the stress at a stretch, or take a law that is good to larger stretches");
  }

  /**
   * The stretches around rest in which a nominal stress belongs to one stretch: to the first one on
   * either side at which dP/dl is zero, or to the end of the law's own range, or to locking,
   * whichever comes first.
   *
   * @param law the law
   * @return the stretches of this deformation, with what ends them above 1
   */
  public StretchRange unique(StrainEnergy law) {
    FirstLoss down = side(law, -1.0);
    FirstLoss up = side(law, 1.0);
    return new StretchRange(
        Math.exp(down.strain()),
        Math.exp(up.strain()),
        "below: " + reason(down) + "; above: " + reason(up),
        Source.derived("scan of dP/dl from rest"));
  }

  private static String reason(FirstLoss end) {
    return switch (end.kind()) {
      case NONE -> "range of the law";
      case ZERO -> "the nominal stress turns";
      case LOCKED -> "locking";
    };
  }

  /** The end of the unique stretches in tension (1) or compression (-1). */
  private FirstLoss side(StrainEnergy law, double sign) {
    StretchRange range = law.range();
    return FirstLoss.of(
        e -> tangentPa(law, Math.exp(e)),
        Math.copySign(farthest(sign, Math.log(range.low()), Math.log(range.high())), sign));
  }

  /** The Hencky strain at which one of the three stretches leaves a range. */
  private double farthest(double sign, double low, double high) {
    // Hencky strains for a unit strain along the path, the most and the least of them
    double most = sign > 0.0 ? 1.0 : this == UNIAXIAL ? 0.5 : this == PLANAR ? 1.0 : 2.0;
    double least = sign < 0.0 ? 1.0 : this == UNIAXIAL ? 0.5 : this == PLANAR ? 1.0 : 2.0;
    return Math.min(high / most, -low / least);
  }

  private static Pressure typed(StrainEnergy law, double stretch, double value) {
    Require.that(
        Double.isFinite(value),
        "stretch",
        stretch,
        () -> "a stretch at which the law has a finite stress, its range is " + law.range(),
        "keep below the locking of the law, or take one that locks later");
    return Pressure.pa(value);
  }

  /** The true stress, not finite at locking. */
  double trueStressPa(StrainEnergy law, double stretch) {
    Require.positive("stretch", stretch, "");
    double[] g = new double[3];
    switch (this) {
      case UNIAXIAL -> {
        double side = 1.0 / Math.sqrt(stretch);
        law.gradient(stretch, side, side, g);
        return stretch * g[0] - side * g[1];
      }
      case EQUIBIAXIAL -> {
        double thin = 1.0 / (stretch * stretch);
        law.gradient(stretch, stretch, thin, g);
        return stretch * g[0] - thin * g[2];
      }
      case PLANAR -> {
        law.gradient(stretch, 1.0, 1.0 / stretch, g);
        return stretch * g[0] - g[2] / stretch;
      }
    }
    throw new AssertionError(this);
  }

  /** The slope of the nominal stress, not finite at locking. */
  private double tangentPa(StrainEnergy law, double l) {
    double[] w = new double[9];
    switch (this) {
      case UNIAXIAL -> {
        double side = 1.0 / Math.sqrt(l);
        derivatives(law, l, side, side, w);
        double s = -0.5 * side / l; // of the sides, by the stretch
        return w[D11]
            + 2.0 * s * (w[D12] + w[D13])
            + s * s * (w[D22] + 2.0 * w[D23] + w[D33])
            + 0.75 * side / (l * l) * (w[1] + w[2]);
      }
      case EQUIBIAXIAL -> {
        double thin = 1.0 / (l * l);
        derivatives(law, l, l, thin, w);
        double s = -2.0 * thin / l;
        return 0.5 * (w[D11] + 2.0 * w[D12] + w[D22])
            + s * (w[D13] + w[D23])
            + 0.5 * s * s * w[D33]
            + 3.0 * thin * thin * w[2];
      }
      case PLANAR -> {
        double thin = 1.0 / l;
        derivatives(law, l, 1.0, thin, w);
        double s = -thin * thin;
        return w[D11] + 2.0 * s * w[D13] + s * s * w[D33] + 2.0 * thin * thin * thin * w[2];
      }
    }
    throw new AssertionError(this);
  }

  private static void derivatives(StrainEnergy law, double a, double b, double c, double[] out) {
    law.hessian(a, b, c, out);
    System.arraycopy(out, 0, out, D11, 6);
    law.gradient(a, b, c, out);
  }

  /**
   * The three principal stretches of this deformation.
   *
   * @param stretch the stretch, above 0
   * @return a fresh array of three stretches
   * @throws InvalidInputException if the stretch is not above 0
   */
  public double[] stretches(double stretch) {
    Require.positive("stretch", stretch, "");
    return switch (this) {
      case UNIAXIAL -> new double[] {stretch, 1.0 / Math.sqrt(stretch), 1.0 / Math.sqrt(stretch)};
      case EQUIBIAXIAL -> new double[] {stretch, stretch, 1.0 / (stretch * stretch)};
      case PLANAR -> new double[] {stretch, 1.0, 1.0 / stretch};
    };
  }
}
