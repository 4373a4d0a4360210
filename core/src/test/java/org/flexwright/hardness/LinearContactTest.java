package org.flexwright.hardness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Caveat;
import org.flexwright.hardness.contact.Cone;
import org.flexwright.hardness.contact.FlatPunch;
import org.flexwright.hardness.contact.Frustum;
import org.flexwright.hardness.contact.Indenter;
import org.flexwright.hardness.contact.RoundedCone;
import org.flexwright.quantity.Pressure;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class LinearContactTest {

  @RegisterExtension
  static final VerificationTable TABLE =
      VerificationTable.of(LinearContactTest.class, "linear.csv");

  static Stream<ReferenceCase> cases() {
    return TABLE.cases();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void meetsReferenceValue(ReferenceCase c) {
    LinearContact contact = LinearContact.of(Durometer.valueOf(c.text("type")));
    if (c.text("shape").equals("simple")) {
      contact = contact.indenter(simple(contact.indenter()));
    }
    if (c.inputs().containsKey("nu")) {
      contact = contact.poisson(c.input("nu"));
    }
    double points = c.input("points");
    boolean modulus = c.quantity().startsWith("modulus");
    TABLE.check(c, modulus ? contact.modulus(points).mpa() : contact.contactRadius(points).mm());
  }

  private static Indenter simple(Indenter own) {
    if (own instanceof Frustum f) {
      return new FlatPunch(f.flatRadius());
    }
    return new Cone(((RoundedCone) own).halfAngle());
  }

  @ParameterizedTest
  @EnumSource
  void everyTypeHasTwoRoutes(Durometer type) {
    String formula = "linear contact, " + type.scale().replace("Shore", "type");
    assertThat(TABLE.cases(formula).map(ReferenceCase::source).distinct().count())
        .isGreaterThanOrEqualTo(2);
  }

  @Property(seed = "71", tries = 300)
  void readingAndModulusInvert(
      @ForAll @Scale(5) @DoubleRange(min = 0.01, max = 99.9) double points,
      @ForAll @DoubleRange(min = 0, max = 0.5) double nu) {
    for (Durometer type : Durometer.values()) {
      LinearContact contact = LinearContact.of(type).poisson(nu);
      assertThat(contact.points(contact.modulus(points)))
          .as("%s", type)
          .isCloseTo(points, within(1e-9));
    }
  }

  // only the reduced modulus E / (1 - nu^2) is measured
  @Property(seed = "72", tries = 300)
  void risesWithTheReadingAndFallsWithPoisson(
      @ForAll @Scale(5) @DoubleRange(min = 0.01, max = 99.9) double points,
      @ForAll @DoubleRange(min = 0, max = 0.5) double nu) {
    for (Durometer type : Durometer.values()) {
      LinearContact rubber = LinearContact.of(type);
      double here = rubber.modulus(points).pa();
      assertThat(rubber.modulus(points + 0.05).pa()).as("%s", type).isGreaterThan(here);
      double reduced = (1 - nu * nu) / 0.75 * here;
      assertThat(rubber.poisson(nu).modulus(points).pa())
          .as("%s", type)
          .isCloseTo(reduced, within(1e-12 * reduced));
    }
  }

  // 4.39849 MPa on a half-space; the factor 1.388729 of the layer and the reading 66.79474 by a
  // separate program that solves the integral equation of the layer at twice the points
  @Test
  void thinPieceReadsTooHard() {
    LinearContact thick = LinearContact.of(Durometer.SHORE_A);
    LinearContact thin = thick.on(mm(2));
    assertThat(thin.modulus(60).mpa()).isCloseTo(4.39849 / 1.388729, within(2e-5));
    assertThat(thin.points(Pressure.mpa(4.39849 / 1.388729))).isCloseTo(60, within(1e-4));
    assertThat(thin.points(thick.modulus(60))).isCloseTo(66.79474, within(1e-5));
    // first order in a / h, with ln E rising by 0.0436 per point from 55 to 65 points
    double far = 1.12695 * 0.49252 / 600 / 0.0436;
    assertThat(thick.on(mm(600)).points(thick.modulus(60))).isCloseTo(60 + far, within(2e-4));
  }

  @ParameterizedTest
  @EnumSource(names = {"SHORE_A", "SHORE_D", "SHORE_OO", "SHORE_M"})
  void readingAndModulusInvertOnALayer(Durometer type) {
    double before = 0;
    for (double nu : new double[] {0, 0.3, 0.5}) {
      LinearContact contact = LinearContact.of(type).poisson(nu).on(mm(3));
      for (double points : new double[] {20, 55, 90}) {
        assertThat(contact.points(contact.modulus(points))).isCloseTo(points, within(1e-8));
      }
      double tooHard = LinearContact.of(type).poisson(nu).modulus(55).ratioTo(contact.modulus(55));
      assertThat(tooHard).isGreaterThan(Math.max(1, before));
      before = tooHard;
    }
  }

  // 54.7466 by bracketing on the quadrature of Sneddon's integrals in a separate program
  @Test
  void readingOfAKnownModulus() {
    assertThat(LinearContact.of(Durometer.SHORE_OO).points(Pressure.kpa(300)))
        .isCloseTo(54.7466, within(1e-4));
  }

  @Test
  void saysWhatIsOutOfRange() {
    LinearContact a = LinearContact.of(Durometer.SHORE_A);
    assertThat(a.check(60)).isEmpty();
    assertThat(a.check(10)).isEmpty();
    assertThat(a.check(9)).extracting(Caveat::message).singleElement().asString().contains("10");
    LinearContact oo = LinearContact.of(Durometer.SHORE_OO);
    // the ball of 1.19 mm touches half its radius at 0.2975 mm, which is 88.1 points
    assertThat(oo.check(88.2)).isEmpty();
    assertThat(oo.check(88)).hasSize(1);
    assertThat(oo.check(15)).hasSize(2);
    assertThat(a.on(mm(6)).check(60)).isEmpty();
    assertThat(a.on(mm(5.9)).check(60)).extracting(Caveat::message).hasSize(1);
    // 1 mm deep in 2 mm: too thin a piece and too much strain
    assertThat(a.on(mm(2)).check(60)).hasSize(2);
  }

  @ParameterizedTest
  @EnumSource
  void nonsenseIsRefused(Durometer type) {
    LinearContact contact = LinearContact.of(type);
    for (double points : new double[] {0, 100, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> contact.modulus(points))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageStartingWith(type.scale() + " reading is ");
      assertThatThrownBy(() -> contact.contactRadius(points))
          .isInstanceOf(InvalidInputException.class);
      assertThatThrownBy(() -> contact.check(points)).isInstanceOf(InvalidInputException.class);
    }
    for (double nu : new double[] {-0.01, 0.501, Double.NaN}) {
      assertThatThrownBy(() -> contact.poisson(nu))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageStartingWith("Poisson's ratio is ");
    }
    for (double mpa : new double[] {0, -1, 1e30}) {
      assertThatThrownBy(() -> contact.points(Pressure.mpa(mpa)))
          .isInstanceOf(InvalidInputException.class);
    }
    for (double mm : new double[] {0, -1, 1001}) {
      assertThatThrownBy(() -> contact.on(mm(mm))).isInstanceOf(InvalidInputException.class);
    }
    // the radius of contact is above 0.1 mm for every type
    assertThatThrownBy(() -> contact.on(mm(0.001)).modulus(50))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("radius of contact over thickness");
  }

  @Test
  void saysWhatItIs() {
    LinearContact a = LinearContact.of(Durometer.SHORE_A);
    assertThat(a.source().toString()).contains("Sneddon").contains("derived");
    assertThat(a.toString()).startsWith("Shore A durometer with a truncated cone");
    assertThat(a.on(mm(2)).toString()).endsWith(", bonded layer of 2 mm");
  }
}
