package org.flexwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Optional;
import org.flexwright.evidence.Factor;
import org.flexwright.evidence.RangeCheck;
import org.flexwright.grade.Grade;
import org.flexwright.quantity.Length;
import org.flexwright.response.Channel;
import org.flexwright.response.Lever;
import org.flexwright.response.LoadCase;
import org.flexwright.response.LoadPath;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.response.ScaledValue;

/**
 * What every part must do, whatever it is: finite states that start at rest, laws of scale,
 * exponents that are those of the sizes, loads that follow the modulus, rising paths, work that is
 * the stored energy, caveats wherever a range is left and only there.
 */
public final class PartHarness {

  private static final int TRIES = 40;
  private static final Map<Channel, Integer> SCALE =
      Map.of(
          Channel.TRAVEL, 1,
          Channel.ANGLE, 0,
          Channel.FORCE, 2,
          Channel.MOMENT, 3,
          Channel.PRESSURE, 0,
          Channel.VOLUME, 3,
          Channel.STRAIN, 0);

  private PartHarness() {}

  /**
   * Holds a case against all of it.
   *
   * @param c the case; its ranges should cross the borders where caveats begin
   * @param grade the material
   * @param seed of the tries
   */
  public static <P extends Part<P>> void check(PartCase<P> c, Grade grade, long seed) {
    check(c, grade, seed, TRIES);
  }

  /**
   * The same with another number of tries, for parts that are solved.
   *
   * @param c the case; its ranges should cross the borders where caveats begin
   * @param grade the material
   * @param seed of the tries
   * @param tries how many
   */
  public static <P extends Part<P>> void check(PartCase<P> c, Grade grade, long seed, int tries) {
    int clean = 0;
    int doubtful = 0;
    for (int i = 0; i < tries; i++) {
      long one = 1000003L * seed + i;
      P part = c.part().apply(1.0, new Draw(one));
      LoadCase load = c.load().apply(1.0, new Draw(one + 77));
      Response r = part.respond(grade, load);
      String what = c + ", try " + i + ": " + part + " " + load + " -> " + r;
      states(c, r, what);
      asked(r, load, what);
      levers(part, what);
      scale(c, grade, one, r, what);
      exponents(c, part, grade, load, r, what);
      modulus(part, grade, load, r, what);
      ranges(r, what);
      if (c.energy() != null && r.termination().complete()) {
        work(r, c.energy().of(part, grade, load), what);
      }
      if (r.caveats().stream().anyMatch(v -> v.excursion().isPresent())) {
        doubtful++;
      } else {
        clean++;
      }
    }
    assertThat(clean).as("tries of " + c + " inside all ranges").isPositive();
    assertThat(doubtful).as("tries of " + c + " outside a range").isPositive();
  }

  private static void states(PartCase<?> c, Response r, String what) {
    LoadPath path = r.path();
    Channel channel = r.load().channel();
    assertThat(path.has(channel)).as(what).isTrue();
    assertThat(path.value(channel, 0)).as(what).isZero();
    assertThat(path.value(Channel.STRAIN, 0)).as(what).isZero();
    assertThat(r.load().nominal()).as(what).isPositive().isFinite();
    assertThat(r.strain().nominal()).as(what).isPositive().isFinite();
    assertThat(path.last(channel) / r.load().nominal()).as(what).isCloseTo(1.0, within(1e-9));
    assertThat(path.peak(Channel.STRAIN) / r.strain().nominal())
        .as(what)
        .isCloseTo(1.0, within(1e-9));
    assertThat(r.sources()).as(what).isNotEmpty();
    if (c.rises()) {
      for (int i = 1; i < path.size(); i++) {
        assertThat(path.value(channel, i))
            .as(what)
            .isGreaterThanOrEqualTo(path.value(channel, i - 1) * (1.0 - 1e-12));
        assertThat(path.value(Channel.STRAIN, i))
            .as(what)
            .isGreaterThanOrEqualTo(path.value(Channel.STRAIN, i - 1) * (1.0 - 1e-12));
      }
    }
  }

  /** The last state is exactly the one asked for. */
  private static void asked(Response r, LoadCase load, String what) {
    if (!r.termination().complete()) {
      return;
    }
    if (load instanceof LoadCase.ToTravel to) {
      assertThat(r.path().last(Channel.TRAVEL)).as(what).isEqualTo(to.travel().m());
    } else if (load instanceof LoadCase.ToAngle to) {
      assertThat(r.path().last(Channel.ANGLE)).as(what).isEqualTo(to.angle().rad());
    } else if (load instanceof LoadCase.ToHold hold) {
      assertThat(r.path().last(Channel.FORCE)).as(what).isEqualTo(hold.force().newtons());
    }
  }

  private static <P extends Part<P>> void levers(P part, String what) {
    assertThat(part.printedVolume().m3()).as(what).isPositive();
    assertThat(part.toString()).as(what).matches("\\p{ASCII}+");
    for (Lever<P> lever : part.levers()) {
      Length least = lever.of(part).times(1.0 + 1e-9);
      P changed = lever.set(part, least);
      // a lever may be the difference of two dimensions, so to the last digits of a double
      assertThat(lever.of(changed).ratioTo(least)).as(what).isCloseTo(1.0, within(1e-12));
      P back = lever.set(changed, lever.of(part));
      assertThat(lever.of(back).ratioTo(lever.of(part))).as(what).isCloseTo(1.0, within(1e-12));
    }
  }

  private static <P extends Part<P>> void scale(
      PartCase<P> c, Grade grade, long seed, Response r, String what) {
    double s = 2.5;
    P big = c.part().apply(s, new Draw(seed));
    Response of = big.respond(grade, c.load().apply(s, new Draw(seed + 77)));
    for (Channel channel : r.path().channels()) {
      double power = Math.pow(s, SCALE.get(channel));
      for (int i = 0; i < r.path().size(); i++) {
        double small = r.path().value(channel, i);
        assertThat(of.path().value(channel, i))
            .as("scaled " + channel + " of " + what)
            .isCloseTo(small * power, within(1e-7 * Math.abs(small * power) + 1e-18));
      }
    }
    assertThat(of.caveats()).as(what).hasSameSizeAs(r.caveats());
  }

  /** The exponent of the size bias is what the lever of the thinnest feature does. */
  private static <P extends Part<P>> void exponents(
      PartCase<P> c, P part, Grade grade, LoadCase load, Response r, String what) {
    Length size = part.thinnest().size();
    Optional<Lever<P>> lever =
        part.levers().stream()
            .filter(v -> Math.abs(v.of(part).ratioTo(size) - 1.0) < 1e-12)
            .findFirst();
    if (lever.isEmpty() || !r.termination().complete()) {
      return;
    }
    double h = 1e-3;
    Response up = lever.get().set(part, size.times(Math.exp(h))).respond(grade, load);
    Response down = lever.get().set(part, size.times(Math.exp(-h))).respond(grade, load);
    slope(r.load(), up.load(), down.load(), h, what);
    if (c.stiffens() != null) {
      assertThat(up.load().nominal() > down.load().nominal())
          .as("thicker is stiffer: " + what)
          .isEqualTo(c.stiffens());
    }
    slope(r.strain(), up.strain(), down.strain(), h, what);
  }

  private static void slope(
      ScaledValue at, ScaledValue up, ScaledValue down, double h, String what) {
    double measured = (up.nominal() - down.nominal()) / (2.0 * h) / (at.nominal() - at.offset());
    double said = at.exponents().of(Factor.SIZE_BIAS);
    assertThat(said)
        .as("exponent of the " + at.channel() + " of " + what)
        .isCloseTo(measured, within(2e-3 * (1.0 + Math.abs(measured))));
  }

  private static <P extends Part<P>> void modulus(
      P part, Grade grade, LoadCase load, Response r, String what) {
    Response stiff = part.respond(grade.measuredModulus(1.2, 1.1), load);
    double said = r.load().at(Factor.MODULUS, 1.2);
    double near = r.load().offset() == 0.0 ? 1e-9 : 0.02;
    assertThat(stiff.load().nominal() / said).as(what).isCloseTo(1.0, within(near));
    double strain = r.strain().at(Factor.MODULUS, 1.2);
    assertThat(stiff.strain().nominal() / strain).as(what).isCloseTo(1.0, within(near));
  }

  private static void ranges(Response r, String what) {
    for (RangeCheck range : r.ranges()) {
      boolean told =
          r.caveats().stream().anyMatch(v -> range.caveat().filter(v::equals).isPresent());
      assertThat(told).as(range + " of " + what).isEqualTo(!range.inside());
      assertThat(range.excess()).as(range + " of " + what).isNotNegative().isFinite();
    }
  }

  private static void work(Response r, double energy, String what) {
    LoadPath path = r.path();
    Channel along =
        r.load().channel() == Channel.PRESSURE
            ? Channel.VOLUME
            : path.has(Channel.ANGLE) ? Channel.ANGLE : Channel.TRAVEL;
    double sum = 0.0;
    double[] x = path.values(along);
    double[] f = path.values(r.load().channel());
    for (int i = 1; i < x.length; i++) {
      sum += 0.5 * (f[i] + f[i - 1]) * (x[i] - x[i - 1]);
    }
    // trapezia over 16 states: 1 % on curves without corners
    assertThat(sum / energy).as("work over energy of " + what).isCloseTo(1.0, within(0.012));
  }
}
