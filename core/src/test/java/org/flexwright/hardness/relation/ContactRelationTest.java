package org.flexwright.hardness.relation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.RombergIntegrator;
import org.apache.commons.math3.analysis.solvers.BisectionSolver;
import org.flexwright.InvalidInputException;
import org.flexwright.hardness.Durometer;
import org.flexwright.hardness.HardnessRelation;
import org.flexwright.hardness.LinearContact;
import org.flexwright.hardness.contact.Ball;
import org.flexwright.hardness.contact.FlatPunch;
import org.flexwright.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The closed integrals against Romberg quadrature of Sneddon's integrals and bisection. */
class ContactRelationTest {

  private static final double ALPHA = Math.toRadians(15);

  private static double integral(DoubleUnaryOperator f, double from, double to) {
    return to - from < 1e-12
        ? 0
        : new RombergIntegrator(1e-13, 1e-13, 4, 30).integrate(1 << 20, f::applyAsDouble, from, to);
  }

  /** int_0^a r^n f'(r) (a^2 - r^2)^(-1/2) dr with r = a sin t; kink at the edge of the sphere. */
  private static double sneddon(int n, double a, double tip) {
    double edge = tip * Math.cos(ALPHA);
    double kink = a <= edge ? Math.PI / 2 : Math.asin(edge / a);
    DoubleUnaryOperator sphere =
        t -> {
          double r = a * Math.sin(t);
          return Math.pow(r, n) * r / Math.sqrt(tip * tip - r * r);
        };
    DoubleUnaryOperator cone = t -> Math.pow(a * Math.sin(t), n) / Math.tan(ALPHA);
    return integral(sphere, 0, kink) + integral(cone, kink, Math.PI / 2);
  }

  private static double byQuadrature(double points, double tip) {
    double depth = 2.5 * (1 - points / 100);
    double force = 0.4445 * points;
    double a =
        new BisectionSolver(1e-15, 1e-15)
            .solve(200, x -> x * sneddon(0, x, tip) - depth, 1e-6, 2 * depth + 2 * tip);
    return 0.75 * force / (2 * sneddon(2, a, tip));
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 20, 30, 46, 60, 75, 90, 92, 92.3, 95, 98})
  void agreesWithQuadrature(double points) {
    double expected = byQuadrature(points, 0.1);
    assertThat(ContactRelation.roundedConeOnD().modulus(points).mpa())
        .isCloseTo(expected, within(1e-9 * expected));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.03, 0.13, 0.4})
  void agreesWithQuadratureForAWornTip(double tip) {
    double expected = byQuadrature(46, tip);
    assertThat(ContactRelation.roundedConeOnD(Length.mm(tip)).modulus(46).mpa())
        .isCloseTo(expected, within(1e-9 * expected));
  }

  @Test
  void sharpTipIsTheSneddonCone() {
    HardnessRelation sharp = ContactRelation.roundedConeOnD(Length.mm(1e-7));
    for (double points : new double[] {5, 30, 46, 75}) {
      double cone = ContactRelation.sharpConeOnD().modulus(points).mpa();
      assertThat(sharp.modulus(points).mpa()).isCloseTo(cone, within(1e-5 * cone));
    }
  }

  // F = (4/3) E / (1 - nu^2) R^(1/2) d^(3/2) for a depth far below the radius
  @Test
  void shallowDepthIsTheSphereOfHertz() {
    double points = 99.99;
    double depth = 2.5 * (1 - points / 100);
    double hertz = 0.75 * 0.4445 * points * 0.75 / (Math.sqrt(0.1) * Math.pow(depth, 1.5));
    assertThat(ContactRelation.roundedConeOnD().modulus(points).mpa())
        .isCloseTo(hertz, within(2e-3 * hertz));
  }

  // 0.69 and 0.49: computed by a separate program
  @Test
  void roundedTipReadsSofter() {
    assertThat(
            ContactRelation.roundedConeOnD()
                .modulus(45)
                .ratioTo(ContactRelation.sharpConeOnD().modulus(45)))
        .isCloseTo(0.69, within(0.005));
    assertThat(
            ContactRelation.roundedConeOnD()
                .modulus(75)
                .ratioTo(ContactRelation.sharpConeOnD().modulus(75)))
        .isCloseTo(0.49, within(0.005));
    assertThat(ContactRelation.roundedConeOnD(Length.mm(0.13)).modulus(46))
        .isLessThan(ContactRelation.roundedConeOnD().modulus(46));
  }

  @Test
  void smoothWhereTheContactLeavesTheSphere() {
    HardnessRelation relation = ContactRelation.roundedConeOnD();
    for (double s = 91; s < 93; s += 0.01) {
      assertThat(relation.logSlope(s)).isCloseTo(relation.logSlope(s + 0.01), within(2e-3));
    }
  }

  @Test
  void tipOutOfReasonIsRefused() {
    for (double mm : new double[] {0, -0.1, 1.1}) {
      Length tip = Length.mm(mm);
      assertThatThrownBy(() -> ContactRelation.roundedConeOnD(tip))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageStartingWith("tip radius of the type D indenter is ");
    }
    assertThat(ContactRelation.roundedConeOnD().toString())
        .endsWith("cone of half angle 15 deg, tip rounded to 0.1 mm");
  }

  // rounded cone on D against the truncated cone on A at the pairs of the comparison chart
  @Test
  void closesTheChartWithinAFifth() {
    double[][] pairs = {{60, 16}, {70, 22}, {80, 29}, {85, 33}, {90, 39}};
    for (double[] pair : pairs) {
      double ratio =
          ContactRelation.truncatedConeOnA()
              .modulus(pair[0])
              .ratioTo(ContactRelation.roundedConeOnD().modulus(pair[1]));
      assertThat(ratio).isBetween(0.79, 1.2);
    }
  }

  @Test
  void onlyScalesWithARelation() {
    LinearContact soft = LinearContact.of(Durometer.SHORE_OO);
    assertThatThrownBy(() -> new ContactRelation(soft))
        .isInstanceOf(InvalidInputException.class)
        .hasMessage(
            "durometer of a contact relation is Shore OO, allowed is Shore A or Shore D; for other"
                + " scales ask LinearContact");
    LinearContact a = LinearContact.of(Durometer.SHORE_A);
    assertThat(new ContactRelation(a.indenter(new FlatPunch(Length.mm(0.395)))).name())
        .isEqualTo("Flat punch");
    assertThat(new ContactRelation(a.indenter(new Ball(Length.mm(1)))).name()).isEqualTo("Ball");
    assertThat(new ContactRelation(a).range().low()).isEqualTo(30);
  }
}
