package org.flexwright.hardness.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Angle.degrees;
import static org.flexwright.quantity.Length.mm;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.apache.commons.math3.analysis.integration.RombergIntegrator;
import org.flexwright.InvalidInputException;
import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The closed laws against Romberg quadrature of Sneddon's integrals over the bare profile. */
class IndenterTest {

  @RegisterExtension
  static final VerificationTable TABLE = VerificationTable.of(IndenterTest.class, "contact.csv");

  static Stream<ReferenceCase> cases() {
    return TABLE.cases();
  }

  private static List<Indenter> shapes() {
    return List.of(
        new FlatPunch(mm(0.395)),
        new Frustum(mm(0.395), degrees(17.5)),
        new Frustum(mm(0.01), degrees(60)),
        new Cone(degrees(15)),
        new RoundedCone(mm(0.1), degrees(15)),
        new RoundedCone(mm(2), degrees(50)),
        new Ball(mm(1.19)));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void meetsReferenceValue(ReferenceCase c) {
    Indenter shape =
        switch (c.formula()) {
          case "flat punch" -> new FlatPunch(mm(c.input("r")));
          case "ball" -> new Ball(mm(c.input("r")));
          case "sharp cone" -> new Cone(degrees(c.input("alpha")));
          case "rounded cone" -> new RoundedCone(mm(c.input("r")), degrees(c.input("alpha")));
          default -> new Frustum(mm(c.input("r")), degrees(c.input("alpha")));
        };
    Length depth = mm(c.input("depth"));
    double value =
        c.quantity().startsWith("modulus")
            ? shape.modulus(depth, Force.newtons(c.input("force")), c.input("nu")).mpa()
            : shape.contactRadius(depth).mm();
    TABLE.check(c, value);
  }

  /** Slope of the profile at a radius in mm and the radius at which it has a kink. */
  private record Profile(DoubleUnaryOperator slope, double kink) {}

  private static Profile profile(Indenter shape) {
    if (shape instanceof Frustum f) {
      double b = f.flatRadius().mm();
      double cot = 1 / Math.tan(f.halfAngle().rad());
      return new Profile(r -> r <= b ? 0 : cot, b);
    }
    if (shape instanceof Cone c) {
      return new Profile(r -> 1 / Math.tan(c.halfAngle().rad()), 0);
    }
    if (shape instanceof Ball b) {
      return new Profile(r -> r / b.radius().mm(), 0);
    }
    RoundedCone c = (RoundedCone) shape;
    double tip = c.tipRadius().mm();
    double edge = tip * Math.cos(c.halfAngle().rad());
    double cot = 1 / Math.tan(c.halfAngle().rad());
    return new Profile(r -> r <= edge ? r / Math.sqrt(tip * tip - r * r) : cot, edge);
  }

  /** int_0^a r^n f'(r) (a^2 - r^2)^(-1/2) dr with r = a sin t. */
  private static double sneddon(int n, double a, Profile p) {
    double kink = p.kink() == 0 ? 0 : p.kink() >= a ? Math.PI / 2 : Math.asin(p.kink() / a);
    // a hair off the kink, so that both sides see their own slope
    return part(n, a, p, 0, kink - 1e-13) + part(n, a, p, kink + 1e-13, Math.PI / 2);
  }

  private static double part(int n, double a, Profile p, double from, double to) {
    if (to - from < 1e-10) {
      return 0;
    }
    DoubleUnaryOperator f =
        t -> Math.pow(a * Math.sin(t), n) * p.slope().applyAsDouble(a * Math.sin(t));
    return new RombergIntegrator(1e-12, 1e-13, 4, 30)
        .integrate(1 << 22, f::applyAsDouble, from, to);
  }

  @Test
  void agreesWithQuadrature() {
    for (Indenter shape : shapes().subList(1, 7)) {
      Profile p = profile(shape);
      for (double a : new double[] {0.41, 0.5, 0.7, 1.3}) {
        Length depth = shape.depthAt(mm(a));
        double byHand = a * sneddon(0, a, p);
        assertThat(depth.mm()).as("%s", shape).isCloseTo(byHand, within(1e-9 * byHand));
        double area = sneddon(2, a, p);
        assertThat(shape.forceArea(depth).mm2())
            .as("%s", shape)
            .isCloseTo(area, within(1e-8 * area));
        assertThat(shape.contactRadius(depth).mm()).isCloseTo(a, within(1e-9 * a));
      }
    }
  }

  // dF/dd = 2 E a / (1 - nu^2) for every indenter of revolution (K. L. Johnson, Contact Mechanics)
  @Property(seed = "51", tries = 300)
  void stiffnessIsTheRadiusOfContact(
      @ForAll @Scale(5) @DoubleRange(min = 1e-3, max = 5) double depth) {
    for (Indenter shape : shapes()) {
      double h = 1e-4 * depth;
      double up = shape.forceArea(mm(depth + h)).mm2();
      double down = shape.forceArea(mm(depth - h)).mm2();
      double a = shape.contactRadius(mm(depth)).mm();
      assertThat((up - down) / (2 * h)).as("%s", shape).isCloseTo(a, within(2e-7 * a + 1e-8));
    }
  }

  @Property(seed = "52", tries = 300)
  void forceModulusAndDepthFollowFromOneAnother(
      @ForAll @Scale(5) @DoubleRange(min = 1e-3, max = 5) double depth,
      @ForAll @DoubleRange(min = 0.01, max = 500) double mpa,
      @ForAll @DoubleRange(min = 0, max = 0.5) double nu) {
    for (Indenter shape : shapes()) {
      Force force = shape.force(mm(depth), Pressure.mpa(mpa), nu);
      assertThat(shape.modulus(mm(depth), force, nu).mpa()).isCloseTo(mpa, within(1e-12 * mpa));
      assertThat(shape.depthUnder(force, Pressure.mpa(mpa), nu).mm())
          .as("%s", shape)
          .isCloseTo(depth, within(1e-9 * depth));
      assertThat(shape.contactRadius(mm(depth)))
          .isLessThanOrEqualTo(shape.contactRadius(mm(1.01 * depth)));
    }
  }

  // the exact profile of a sphere is the tip of a rounded cone: 0.972 of the paraboloid at a = R /
  // 2
  @Test
  void ballAgainstTheExactSphere() {
    Indenter sphere = new RoundedCone(mm(1), degrees(1));
    Length depth = sphere.depthAt(mm(0.5));
    double paraboloid = new Ball(mm(1)).forceArea(depth).mm2();
    assertThat(sphere.forceArea(depth).mm2() / paraboloid).isCloseTo(0.97246, within(1e-5));
  }

  @Test
  void limitsOfTheConesMeet() {
    Length depth = mm(1);
    double cone = new Cone(degrees(15)).forceArea(depth).mm2();
    assertThat(new Frustum(mm(1e-6), degrees(15)).forceArea(depth).mm2())
        .isCloseTo(cone, within(1e-4 * cone));
    assertThat(new RoundedCone(mm(1e-6), degrees(15)).forceArea(depth).mm2())
        .isCloseTo(cone, within(1e-4 * cone));
    double punch = new FlatPunch(mm(5)).forceArea(mm(1e-6)).mm2();
    assertThat(new Frustum(mm(5), degrees(15)).forceArea(mm(1e-6)).mm2())
        .isCloseTo(punch, within(1e-6 * punch));
  }

  @Test
  void extremeDepthsStayFinite() {
    for (Indenter shape : shapes()) {
      for (double mm : new double[] {0, Double.MIN_NORMAL, 1e-9, 1e6}) {
        assertThat(shape.contactRadius(mm(mm)).m()).as("%s", shape).isFinite().isNotNegative();
        assertThat(shape.forceArea(mm(mm)).m2()).as("%s", shape).isFinite().isNotNegative();
      }
      assertThat(shape.depthAt(mm(0)).m()).isZero();
    }
  }

  @Test
  void nonsenseIsRefused() {
    for (Indenter shape : shapes()) {
      Length up = mm(-1);
      assertThatThrownBy(() -> shape.forceArea(up)).isInstanceOf(InvalidInputException.class);
      assertThatThrownBy(() -> shape.contactRadius(up)).isInstanceOf(InvalidInputException.class);
      assertThatThrownBy(() -> shape.depthAt(up)).isInstanceOf(InvalidInputException.class);
      Pressure e = Pressure.mpa(1);
      for (double nu : new double[] {-0.1, 0.6, Double.NaN}) {
        assertThatThrownBy(() -> shape.force(mm(1), e, nu))
            .isInstanceOf(InvalidInputException.class)
            .hasMessageStartingWith("Poisson's ratio is ");
      }
      assertThatThrownBy(() -> shape.force(mm(1), Pressure.pa(0), 0.5))
          .isInstanceOf(InvalidInputException.class);
      assertThatThrownBy(() -> shape.modulus(mm(0), Force.newtons(1), 0.5))
          .isInstanceOf(InvalidInputException.class);
      assertThatThrownBy(() -> shape.depthUnder(Force.newtons(1e300), Pressure.pa(1e-300), 0.5))
          .isInstanceOf(InvalidInputException.class);
      assertThat(shape.toString()).matches("\\p{ASCII}+");
    }
    for (double mm : new double[] {0, -1, 1001}) {
      assertThatThrownBy(() -> new FlatPunch(mm(mm))).isInstanceOf(InvalidInputException.class);
      assertThatThrownBy(() -> new Ball(mm(mm))).isInstanceOf(InvalidInputException.class);
      Angle angle = degrees(15);
      assertThatThrownBy(() -> new Frustum(mm(mm), angle))
          .isInstanceOf(InvalidInputException.class);
      assertThatThrownBy(() -> new RoundedCone(mm(mm), angle))
          .isInstanceOf(InvalidInputException.class);
    }
    for (double deg : new double[] {0, 90, -3}) {
      assertThatThrownBy(() -> new Cone(degrees(deg))).isInstanceOf(InvalidInputException.class);
    }
  }
}
