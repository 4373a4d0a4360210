package org.flexwright.fit;

import org.flexwright.law.StrainEnergy;
import org.flexwright.law.StretchRange;

/**
 * A law that ends where its data end; all else is that of the law.
 *
 * <p>JShell: {@code LawInData.of(NeoHookean.of(mpa(0.4)), new StretchRange(0.7, 1.5, "strip test",
 * source))}
 *
 * @param of the law
 * @param range the stretches it may be used in
 */
public record LawInData(StrainEnergy of, StretchRange range) implements StrainEnergy {

  /**
   * Keeps the common part of the range of the law and that of the data: data never widen a law.
   *
   * @param of the law
   * @param range the stretches of the data
   */
  public LawInData {
    StretchRange own = of.range();
    boolean low = own.low() > range.low();
    boolean high = own.high() < range.high();
    if (low || high) {
      range =
          new StretchRange(
              low ? own.low() : range.low(),
              high ? own.high() : range.high(),
              range.reason() + "; law: " + own.reason(),
              range.source());
    }
  }

  /**
   * The law with the common part of its own range and that of the data.
   *
   * @param law the law
   * @param data the stretches of the data
   * @return the law, ending at its data
   */
  public static LawInData of(StrainEnergy law, StretchRange data) {
    return new LawInData(law, data);
  }

  @Override
  public double energy(double l1, double l2, double l3) {
    return of.energy(l1, l2, l3);
  }

  @Override
  public void gradient(double l1, double l2, double l3, double[] out) {
    of.gradient(l1, l2, l3, out);
  }

  @Override
  public void hessian(double l1, double l2, double l3, double[] out) {
    of.hessian(l1, l2, l3, out);
  }

  @Override
  public double shearModulus() {
    return of.shearModulus();
  }

  @Override
  public StrainEnergy scaled(double factor) {
    StrainEnergy scaled = of.scaled(factor);
    return new LawInData(scaled, range);
  }

  @Override
  public String toString() {
    return of + ", " + range;
  }
}
