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
   * The law with the common part of its own range and that of the data.
   *
   * @param law the law
   * @param data the stretches of the data
   * @return the law, ending at its data
   */
  public static LawInData of(StrainEnergy law, StretchRange data) {
    StretchRange own = law.range();
    boolean low = own.low() > data.low();
    boolean high = own.high() < data.high();
    String reason = low || high ? data.reason() + "; law: " + own.reason() : data.reason();
    return new LawInData(
        law,
        new StretchRange(
            low ? own.low() : data.low(), high ? own.high() : data.high(), reason, data.source()));
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
