package org.flexwright.law.classical;

import org.apache.commons.math3.RealFieldElement;
import org.flexwright.law.StrainEnergy;

/**
 * The energies of the laws as the books write them, on any kind of number: with derivatives for the
 * kernels' derivatives, with forty digits for their digits near rest. Written apart from the
 * kernels, which use other forms.
 */
final class Formulas {

  private Formulas() {}

  static <T extends RealFieldElement<T>> T energy(StrainEnergy law, T a, T b, T c) {
    if (law instanceof Ogden ogden) {
      return ogden(ogden, a, b, c);
    }
    T j1 = a.multiply(a).add(b.multiply(b)).add(c.multiply(c)).subtract(3.0);
    T ab = a.multiply(b);
    T bc = b.multiply(c);
    T ca = c.multiply(a);
    T j2 = ab.multiply(ab).add(bc.multiply(bc)).add(ca.multiply(ca)).subtract(3.0);
    if (law instanceof ExtendedTube tube) {
      return tube(tube, j1, a, b, c);
    }
    if (law instanceof MooneyRivlinPolynomial p) {
      return j1.multiply(p.c10().pa())
          .add(j2.multiply(p.c01().pa()))
          .add(j1.multiply(j1).multiply(p.c20().pa()))
          .add(j1.multiply(j2).multiply(p.c11().pa()))
          .add(j2.multiply(j2).multiply(p.c02().pa()));
    }
    return ofInvariants(law, j1, j2);
  }

  private static <T extends RealFieldElement<T>> T ofInvariants(StrainEnergy law, T j1, T j2) {
    if (law instanceof NeoHookean nh) {
      return j1.multiply(nh.shear().pa()).divide(2.0);
    }
    if (law instanceof MooneyRivlin mr) {
      return j1.multiply(mr.c10().pa()).add(j2.multiply(mr.c01().pa()));
    }
    if (law instanceof Yeoh y) {
      T square = j1.multiply(j1);
      return j1.multiply(y.c10().pa())
          .add(square.multiply(y.c20().pa()))
          .add(square.multiply(j1).multiply(y.c30().pa()));
    }
    if (law instanceof Gent g) {
      return gent(g.shear().pa(), g.locking(), j1);
    }
    if (law instanceof GentGent g) {
      return gent(g.mu().pa(), g.locking(), j1).add(logOfThird(j2).multiply(g.c2().pa()));
    }
    if (law instanceof GentThomas g) {
      return j1.multiply(g.c1().pa()).add(logOfThird(j2).multiply(g.c2().pa()));
    }
    if (law instanceof ArrudaBoyce ab) {
      T i1 = j1.add(3.0);
      T three = i1.subtract(i1).add(3.0);
      double factor = ab.network().pa() * ab.segments();
      return chains(i1, ab.segments()).subtract(chains(three, ab.segments())).multiply(factor);
    }
    return series((ArrudaBoyceSeries) law, j1.add(3.0));
  }

  private static <T extends RealFieldElement<T>> T gent(double mu, double jm, T j1) {
    return j1.divide(jm).negate().add(1.0).log().multiply(jm).multiply(mu).divide(-2.0);
  }

  private static <T extends RealFieldElement<T>> T logOfThird(T j2) {
    return j2.add(3.0).divide(3.0).log();
  }

  private static <T extends RealFieldElement<T>> T ogden(Ogden law, T a, T b, T c) {
    T sum = a.subtract(a);
    for (Ogden.Term t : law.terms()) {
      T powers = power(a, t.alpha()).add(power(b, t.alpha())).add(power(c, t.alpha()));
      sum = sum.add(powers.subtract(3.0).multiply(t.mu().pa()).divide(t.alpha()));
    }
    return sum;
  }

  private static <T extends RealFieldElement<T>> T power(T a, double exponent) {
    return a.log().multiply(exponent).exp();
  }

  private static <T extends RealFieldElement<T>> T tube(ExtendedTube law, T d, T a, T b, T c) {
    T square = d.subtract(d).add(law.delta()).multiply(law.delta());
    T left = square.multiply(d).negate().add(1.0);
    T chains = square.negate().add(1.0).multiply(d).divide(left).add(left.log());
    T powers = power(a, -law.beta()).add(power(b, -law.beta())).add(power(c, -law.beta()));
    return chains
        .multiply(law.crosslinks().pa())
        .divide(2.0)
        .add(
            powers
                .subtract(3.0)
                .multiply(2.0)
                .multiply(law.tubes().pa())
                .divide(law.beta())
                .divide(law.beta()));
  }

  private static <T extends RealFieldElement<T>> T series(ArrudaBoyceSeries law, T i1) {
    int[] over = {1, 1, 11, 19, 519};
    int[] under = {2, 20, 1050, 7000, 673750};
    T sum = i1.subtract(i1);
    T power = sum.add(1.0);
    for (int i = 0; i < 5; i++) {
      power = power.multiply(i1);
      T term =
          power.subtract(Math.pow(3, i + 1)).multiply((double) over[i]).divide((double) under[i]);
      for (int k = 0; k < i; k++) {
        term = term.divide(law.segments());
      }
      sum = sum.add(term);
    }
    return sum.multiply(law.network().pa());
  }

  /** The energy of the chains over mu N, x y + ln(x/sinh x), not yet zero at rest. */
  private static <T extends RealFieldElement<T>> T chains(T i1, double segments) {
    T y = i1.divide(3.0).divide(segments).sqrt();
    T x = inverseLangevin(y);
    T e = fading(x);
    // ln sinh x = x + ln((1 - e)/2)
    return x.multiply(y).add(x.log()).subtract(x).subtract(e.negate().add(1.0).divide(2.0).log());
  }

  /** e^-2x, which is nothing to fifty digits from x = 100 on. */
  private static <T extends RealFieldElement<T>> T fading(T x) {
    return x.getReal() > 100.0 ? x.subtract(x) : x.multiply(-2.0).exp();
  }

  /** By bisection in doubles, then Newton steps, which carry derivatives and digits along. */
  static <T extends RealFieldElement<T>> T inverseLangevin(T y) {
    double low = 0.0;
    double high = 2.0 / (1.0 - y.getReal());
    for (int i = 0; i < 200; i++) {
      double mid = 0.5 * (low + high);
      double value = mid < 1e-3 ? mid / 3.0 : 1.0 / Math.tanh(mid) - 1.0 / mid;
      if (value < y.getReal()) {
        low = mid;
      } else {
        high = mid;
      }
    }
    T x = y.subtract(y).add(low);
    for (int i = 0; i < 6; i++) {
      T e = fading(x);
      T w = e.negate().add(1.0);
      T off = e.multiply(2.0).divide(w).subtract(x.reciprocal()).add(y.negate().add(1.0));
      T slope = x.multiply(x).reciprocal().subtract(e.multiply(4.0).divide(w.multiply(w)));
      x = x.subtract(off.divide(slope));
    }
    return x;
  }
}
