package org.flexwright.lattice.pad;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.flexwright.evidence.Estimate;
import org.flexwright.evidence.Factor;
import org.flexwright.grade.Grade;
import org.flexwright.hardness.ShoreA;
import org.flexwright.lattice.cell.Cells;
import org.flexwright.lattice.cell.UnitCell;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.response.Channel;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Response;

class LatticePadPropertiesTest {

  private static final Properties RANGES = ranges();
  private static final Grade GRADE = Grade.polyurethane(ShoreA.of(90).plusMinus(2));

  record Case(LatticePad pad, double strain, double poisson) {
    LoadCase load() {
      return LoadCase.toTravel(pad.height().times(strain));
    }

    Grade grade() {
      return GRADE.poisson(poisson);
    }
  }

  private static Properties ranges() {
    Properties p = new Properties();
    try (InputStream in = LatticePadPropertiesTest.class.getResourceAsStream("ranges.properties")) {
      p.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return p;
  }

  private static double range(String name) {
    return Double.parseDouble(RANGES.getProperty(name));
  }

  private static Arbitrary<Double> between(String name, String unit) {
    double low = range(name + ".least" + unit);
    double high = range(name + ".most" + unit);
    return Arbitraries.doubles().between(0.0, 1.0).map(t -> low * Math.pow(high / low, t));
  }

  private static Arbitrary<Integer> count(int most) {
    return Arbitraries.integers().between((int) range("cells.least"), most);
  }

  @Provide
  Arbitrary<Case> cases() {
    int most = (int) range("cells.most");
    Arbitrary<int[]> counts =
        Combinators.combine(count(most), count(most), count((int) range("high.most")))
            .as((a, b, c) -> new int[] {a, b, c});
    return Combinators.combine(
            Arbitraries.of(Cells.all()),
            counts,
            between("edge", ".mm"),
            between("slenderness", ""),
            between("strain", ""),
            between("poisson", ""),
            Arbitraries.of(Face.class),
            Arbitraries.of(Face.class))
        .as(LatticePadPropertiesTest::made);
  }

  private static Case made(
      UnitCell unit,
      int[] n,
      double edge,
      double slender,
      double strain,
      double poisson,
      Face lower,
      Face upper) {
    Length cell = Length.mm(edge);
    double x = slender * unit.mergingSlenderness();
    LatticePad pad =
        LatticePad.of(unit)
            .footprint(cell.times(n[0]), cell.times(n[1]))
            .height(cell.times(n[2]))
            .cell(cell)
            .strut(cell.times(x * unit.strutOverCell()))
            .lower(lower)
            .upper(upper);
    return new Case(pad, strain, poisson);
  }

  @Property(tries = 5000, seed = "20260101")
  void anyPadAnswers(@ForAll("cases") Case c) {
    Response r = c.pad().respond(c.grade(), c.load());
    assertThat(r.path().last(Channel.TRAVEL)).isEqualTo(c.pad().height().times(c.strain()).m());
    assertThat(r.load().nominal()).isPositive().isFinite();
    assertThat(r.strain().nominal()).isPositive().isFinite();
    assertThat(r.load().modelLow()).isPositive();
    assertThat(r.load().modelHigh()).isFinite();
    assertThat(r.strain().modelHigh()).isFinite();
    double exponent = r.load().exponents().of(Factor.SIZE_BIAS);
    assertThat(exponent).isBetween(1.0, 7.0);
    assertThat(r.toString()).isNotBlank();
  }

  @Property(tries = 5000, seed = "20260102")
  void modulusStaysInItsBracket(@ForAll("cases") Case c) {
    Estimate<Pressure> e = c.pad().modulus(c.grade());
    assertThat(e.low().pa()).isPositive();
    assertThat(e.high().pa()).isFinite();
    assertThat(e.nominal().compareTo(e.high())).isLessThanOrEqualTo(0);
  }

  @Property(tries = 5000, seed = "20260103")
  void twiceTheSizeCarriesFourTimesTheLoad(@ForAll("cases") Case c) {
    LatticePad p = c.pad();
    LatticePad twice =
        new LatticePad(
            p.unit(),
            p.width().times(2),
            p.depth().times(2),
            p.height().times(2),
            p.cell().times(2),
            p.strut().times(2),
            p.lower(),
            p.upper());
    Response one = p.respond(c.grade(), c.load());
    Response two =
        twice.respond(c.grade(), LoadCase.toTravel(p.height().times(2).times(c.strain())));
    assertThat(two.load().nominal() / one.load().nominal()).isCloseTo(4.0, within(1e-9));
    assertThat(two.strain().nominal() / one.strain().nominal()).isCloseTo(1.0, within(1e-9));
  }

  @Property(tries = 5000, seed = "20260104")
  void thickerStrutsAreStiffer(@ForAll("cases") Case c) {
    LatticePad p = c.pad();
    Length thinner = p.strut().times(0.98);
    double thick = p.respond(c.grade(), c.load()).load().nominal();
    assertThat(p.strut(thinner).respond(c.grade(), c.load()).load().nominal()).isLessThan(thick);
  }

  @Property(tries = 5000, seed = "20260105")
  void morePathIsMoreForce(@ForAll("cases") Case c) {
    Response r = c.pad().respond(c.grade(), c.load());
    double[] force = r.path().values(Channel.FORCE);
    // stretched struts buckle: flat from there on
    boolean rises = c.pad().unit().path(c.pad().slenderness()).caveats(c.strain()).isEmpty();
    for (int i = 1; i < force.length; i++) {
      if (rises || i == 1) {
        assertThat(force[i]).isGreaterThan(force[i - 1]);
      } else {
        assertThat(force[i]).isGreaterThanOrEqualTo(force[i - 1] * (1.0 - 1e-12));
      }
    }
  }
}
