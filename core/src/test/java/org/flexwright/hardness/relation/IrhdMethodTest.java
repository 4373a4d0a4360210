package org.flexwright.hardness.relation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.flexwright.InvalidInputException;
import org.flexwright.hardness.Irhd;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class IrhdMethodTest {

  @RegisterExtension
  static final VerificationTable TABLE =
      VerificationTable.of(IrhdMethodTest.class, "/reference/hardness_ball.csv");

  static Stream<ReferenceCase> cases() {
    return TABLE.cases();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void meetsReferenceValue(ReferenceCase c) {
    Length depth = Length.mm(c.input("depth_mm"));
    boolean irhd = c.quantity().equals("IRHD");
    IrhdMethod method = IrhdMethod.valueOf(c.text("method"));
    TABLE.check(c, irhd ? method.irhd(depth).points() : method.modulus(depth).mpa());
    Pressure there = method.modulus(depth);
    assertThat(method.depth(there).mm()).isCloseTo(depth.mm(), within(1e-12));
  }

  @Test
  void midPointAndTheOtherConstant() {
    assertThat(new IrhdProbit().points(Pressure.mpa(2.31206))).isCloseTo(50, within(1e-4));
    // constant in micrometres
    assertThat(5.4 / (0.00017 * Math.pow(1.25, 0.65) * Math.pow(1000, 1.35)))
        .isCloseTo(IrhdMethod.N.modulus(Length.mm(1)).mpa(), within(0.005));
  }

  // ISO 48-2: the depth of the micro-test is a sixth of that of the normal test, from memory
  @Test
  void methodMIsMethodNShrunkSixTimes() {
    for (double mm = 0.15; mm < 2; mm += 0.05) {
      assertThat(IrhdMethod.M.irhd(Length.mm(mm / 6)).points())
          .isCloseTo(IrhdMethod.N.irhd(Length.mm(mm)).points(), within(0.05));
    }
  }

  /** The contact of Hertz between contact force and total force */
  private static double hertz(IrhdMethod method, double modulusMpa) {
    Pressure e = Pressure.mpa(modulusMpa);
    double first = method.ball().depthUnder(method.contactForce(), e, 0.5).mm();
    return method.ball().depthUnder(method.contactForce().plus(method.addedForce()), e, 0.5).mm()
        - first;
  }

  @Test
  void hertzAgreesWhereTheBallSinksModerately() {
    for (IrhdMethod method : IrhdMethod.values()) {
      double depth = 0.56 * method.ball().radius().mm();
      double e = method.modulus(Length.mm(depth)).mpa();
      assertThat(hertz(method, e)).as("%s", method).isCloseTo(depth, within(0.09 * depth));
    }
  }

  @Property(seed = "43")
  void depthAndReadingInvert(@ForAll @DoubleRange(min = 1, max = 99.9) double points) {
    for (IrhdMethod method : IrhdMethod.values()) {
      Length depth = method.depth(Irhd.of(points));
      if (depth.mm() < 4 * method.ball().radius().mm()) {
        assertThat(method.irhd(depth).points()).isCloseTo(points, within(1e-9));
      }
    }
  }

  @Test
  void outsideTheMethod() {
    assertThat(IrhdMethod.N.check(Irhd.of(50))).isEmpty();
    assertThat(IrhdMethod.N.check(Irhd.of(20))).isPresent();
    assertThat(IrhdMethod.H.range().low()).isEqualTo(85);
    assertThat(IrhdMethod.L.range().high()).isEqualTo(35);
    assertThat(IrhdMethod.M.addedForce().newtons()).isEqualTo(0.145);
    assertThat(IrhdMethod.N.source().toString()).contains("memory");
    assertThat(IrhdMethod.N.toString()).startsWith("IRHD method N, ball of radius 1.25 mm, 0.3 N");
    for (double mm : new double[] {0, -1, 5.1}) {
      assertThatThrownBy(() -> IrhdMethod.N.modulus(Length.mm(mm)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageStartingWith("depth of the ball is ");
    }
    assertThatThrownBy(() -> IrhdMethod.N.depth(Pressure.pa(0)))
        .isInstanceOf(InvalidInputException.class);
  }
}
