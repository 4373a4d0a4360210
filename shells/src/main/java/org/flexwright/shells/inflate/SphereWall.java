package org.flexwright.shells.inflate;

import org.flexwright.law.StrainEnergy;

/** An incompressible thick sphere in one law, in SI. */
final class SphereWall {

  private static final double NOTHING = 1e-12;

  private final StrainEnergy law;
  private final double inner;
  private final double outer;

  SphereWall(StrainEnergy law, double inner, double outer) {
    this.law = law;
    this.inner = inner;
    this.outer = outer;
  }

  /** Bore stretch when the outside has grown. */
  double bore(double growth) {
    double b = outer + growth;
    return Math.cbrt(1.0 + growth * (b * b + b * outer + outer * outer) / Math.pow(inner, 3));
  }

  /** Growth of the outside at a bore stretch. */
  double growth(double bore) {
    double b3 = outer * outer * outer + (Math.pow(bore, 3) - 1.0) * inner * inner * inner;
    return Math.cbrt(b3) - outer;
  }

  /** Inner pressure: integral of W'(l)/(l^2 R) dR. */
  double pressure(double bore) {
    double a3 = Math.pow(bore * inner, 3);
    double[] g = new double[3];
    // halved where the curve of a law has a corner; at rest nothing but rounding is left
    return ThickTube.through(
        radius -> {
          double grown = (radius - inner) * (radius * radius + radius * inner + inner * inner);
          double l = Math.cbrt(a3 + grown) / radius;
          double l2 = l * l;
          law.gradient(l, l, 1.0 / l2, g);
          return 2.0 * (g[0] - g[2] / (l2 * l)) / (l2 * radius);
        },
        inner,
        outer,
        NOTHING * law.shearModulus());
  }
}
