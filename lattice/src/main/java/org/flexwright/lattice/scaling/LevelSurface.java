package org.flexwright.lattice.scaling;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.internal.Require;

/**
 * A cell bounded by level sets of a triply periodic function f(X, Y, Z), X = 2 pi x/a: a sheet |f|
 * at most t, or the network on one side of f = t.
 *
 * <p>Formulas: gyroid sinX cosY + sinY cosZ + sinZ cosX; diamond cosX cosY cosZ - sinX sinY sinZ;
 * primitive cosX + cosY + cosZ; I-WP 2 (cosX cosY + cosY cosZ + cosZ cosX) - (cos2X + cos2Y +
 * cos2Z); Neovius 3 (cosX + cosY + cosZ) + 4 cosX cosY cosZ. The share of the volume is integrated
 * exactly along X and by the midpoint rule over Y and Z; good to 1e-4.
 *
 * <p>Stiffness: C rho^n fitted to solid elements of one cell, Poisson's ratio 0.3, density 0.1 to
 * 0.5 unless the law says otherwise; the fits miss their points by up to 13 %, the elements err by
 * 5 %. Networks fall apart into blobs beyond {@link #connected}.
 *
 * <p>Source: level functions as tabulated in npj Metamaterials 2025, doi
 * 10.1038/s44334-025-00057-6, I-WP from memory; volumes and fits derived.
 *
 * <p>JShell: {@code LevelSurface.GYROID_SHEET.level(0.3)}
 */
public enum LevelSurface {
  /** Sheet of the gyroid. */
  GYROID_SHEET("gyroid sheet", Function.GYROID, true, 1.4142, 0.560, 1.258, 0.1),
  /** One of the two networks of the gyroid, f above t. */
  GYROID_NETWORK("gyroid network", Function.GYROID, false, 1.4142, 0.922, 2.150, 0.1),
  /** Sheet of the diamond surface. */
  DIAMOND_SHEET("diamond sheet", Function.DIAMOND, true, 0.707, 0.588, 1.160, 0.1),
  /** One of the two networks of the diamond surface, f above t. */
  DIAMOND_NETWORK("diamond network", Function.DIAMOND, false, 0.707, 0.848, 2.154, 0.1),
  /** Sheet of the primitive surface. */
  PRIMITIVE_SHEET("primitive sheet", Function.PRIMITIVE, true, 1.0, 0.709, 1.684, 0.1),
  /** One of the two networks of the primitive surface, f above t. */
  PRIMITIVE_NETWORK("primitive network", Function.PRIMITIVE, false, 1.0, 1.080, 1.807, 0.3),
  /** Sheet of the I-WP surface. */
  IWP_SHEET("I-WP sheet", Function.IWP, true, 3.0, 0.835, 1.514, 0.1),
  /** The network of the I-WP surface with f above t. */
  IWP_NETWORK("I-WP network", Function.IWP, false, 3.0, 1.188, 2.614, 0.1),
  /** Sheet of the Neovius surface. */
  NEOVIUS_SHEET("Neovius sheet", Function.NEOVIUS, true, 0.75, 0.703, 1.219, 0.1),
  /** One of the two networks of the Neovius surface, f above t; no stiffness law. */
  NEOVIUS_NETWORK("Neovius network", Function.NEOVIUS, false, 0.75, 0.0, 0.0, 0.4);

  private static final Source SOLIDS =
      Source.derived("solid finite elements of one level-set cell, fitted, Poisson's ratio 0.3");
  private static final Source CONNECTED = Source.derived("connected parts of a sampled cell");
  private static final int STEPS = 128;

  /** The functions: a cosX + b sinX + q cosX^2 + c for given Y and Z. */
  private enum Function {
    GYROID(1.5),
    DIAMOND(1.0),
    PRIMITIVE(3.0),
    IWP(3.0),
    NEOVIUS(13.0);

    private final double most;

    Function(double most) {
      this.most = most;
    }

    /** The share of X from 0 to 2 pi where f is above t. */
    double share(double y, double z, double t) {
      double cy = Math.cos(y);
      double cz = Math.cos(z);
      double sy = Math.sin(y);
      double sz = Math.sin(z);
      return switch (this) {
        case GYROID -> wave(sz, cy, sy * cz - t);
        case DIAMOND -> wave(cy * cz, -sy * sz, -t);
        case PRIMITIVE -> wave(1.0, 0.0, cy + cz - t);
        case NEOVIUS -> wave(3.0 + 4.0 * cy * cz, 0.0, 3.0 * (cy + cz) - t);
        case IWP ->
            // cos 2Y + cos 2Z = 2 (cy^2 + cz^2) - 2
            parabola(2.0 * (cy + cz), 2.0 * cy * cz + 3.0 - 2.0 * (cy * cy + cz * cz) - t);
      };
    }

    /** Share of X where a cosX + b sinX + c is above 0. */
    private static double wave(double a, double b, double c) {
      double r = Math.hypot(a, b);
      if (r <= Math.abs(c)) {
        return c > 0.0 ? 1.0 : 0.0;
      }
      return Math.acos(-c / r) / Math.PI;
    }

    /** Share of X where -2 u^2 + a u + c is above 0, u = cosX. */
    private static double parabola(double a, double c) {
      double d = a * a + 8.0 * c;
      if (d <= 0.0) {
        return 0.0;
      }
      double root = Math.sqrt(d);
      return (angle((a - root) / 4.0) - angle((a + root) / 4.0)) / Math.PI;
    }

    private static double angle(double cosine) {
      return Math.acos(Math.max(-1.0, Math.min(1.0, cosine)));
    }
  }

  private final String words;
  private final Function function;
  private final boolean sheet;
  private final double connected;
  private final double constant;
  private final double exponent;
  private final double least;

  LevelSurface(
      String words,
      Function function,
      boolean sheet,
      double connected,
      double constant,
      double exponent,
      double least) {
    this.words = words;
    this.function = function;
    this.sheet = sheet;
    this.connected = connected;
    this.constant = constant;
    this.exponent = exponent;
    this.least = least;
  }

  /**
   * All of them.
   *
   * @return an immutable list
   */
  public static List<LevelSurface> all() {
    return List.of(values());
  }

  /**
   * The relative density at a level.
   *
   * @param level t; of a sheet not negative
   * @return the share of the volume, 0 to 1
   * @throws org.flexwright.InvalidInputException if the level is not finite, or negative for a
   *     sheet
   */
  public double density(double level) {
    Require.finite("level", level, "");
    if (!sheet) {
      return above(level);
    }
    Require.notNegative("level of a sheet", level, "");
    return above(-level) - above(level);
  }

  private double above(double level) {
    double sum = 0.0;
    double h = 2.0 * Math.PI / STEPS;
    for (int i = 0; i < STEPS; i++) {
      for (int j = 0; j < STEPS; j++) {
        sum += function.share((i + 0.5) * h, (j + 0.25) * h, level);
      }
    }
    return sum / (STEPS * STEPS);
  }

  /**
   * The level that gives a relative density.
   *
   * @param density the share of the volume, 0.02 to 0.9
   * @return t
   * @throws org.flexwright.InvalidInputException if the density is outside 0.02 to 0.9
   */
  public double level(double density) {
    Require.between("relative density", density, 0.02, 0.9, "");
    double low = sheet ? 0.0 : -5.0 - function.most;
    return new BrentSolver(1e-9).solve(200, t -> density(t) - density, low, 5.0 + function.most);
  }

  /**
   * The levels between which it hangs together; a sheet always does.
   *
   * @return the range of the level
   */
  public ValidityRange connected() {
    double low = sheet ? 0.0 : -connected;
    double high = sheet ? function.most : connected;
    return new ValidityRange(words, "level", low, high, "", CONNECTED);
  }

  /**
   * How its modulus along a cell edge follows the density.
   *
   * @return the law, where one was fitted
   */
  public Optional<ScalingLaw> law() {
    if (constant == 0.0) {
      return Optional.empty();
    }
    return Optional.of(
        ScalingLaw.power(words, LatticeProperty.YOUNG, constant, exponent, least, 0.5, SOLIDS)
            .band(0.85, 1.2));
  }

  /** The name in words. */
  @Override
  public String toString() {
    return words;
  }
}
