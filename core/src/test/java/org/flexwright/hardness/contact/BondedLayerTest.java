package org.flexwright.hardness.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Angle.degrees;
import static org.flexwright.quantity.Length.mm;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.flexwright.InvalidInputException;
import org.flexwright.quantity.Length;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BondedLayerTest {

  @RegisterExtension
  static final VerificationTable TABLE = VerificationTable.of(BondedLayerTest.class, "layer.csv");

  private static final Indenter TYPE_A = new Frustum(mm(0.395), degrees(17.5));
  private static final Indenter TYPE_D = new RoundedCone(mm(0.1), degrees(15));

  static Stream<ReferenceCase> cases() {
    return TABLE.cases();
  }

  private static double punch(double ratio, double nu) {
    return new BondedLayer(mm(1)).factor(new FlatPunch(mm(ratio)), mm(0.01), nu);
  }

  private static double ball(double c, double nu) {
    return new BondedLayer(mm(1)).factor(new Ball(mm(1)), mm(c * c), nu);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void meetsReferenceValue(ReferenceCase c) {
    double nu = c.input("nu");
    double factor =
        switch (c.text("shape")) {
          case "punch" -> punch(c.input("a_over_h"), nu);
          case "ball" -> ball(c.input("c"), nu);
          case "typeA" -> onLayer(c, TYPE_A);
          case "typeD" -> onLayer(c, TYPE_D);
          default -> onLayer(c, new Cone(degrees(15)));
        };
    TABLE.check(c, factor);
  }

  private static double onLayer(ReferenceCase c, Indenter shape) {
    BondedLayer layer = new BondedLayer(mm(c.input("h")));
    return layer.factor(shape, mm(c.input("depth")), c.input("nu"));
  }

  // rows of a separate program with 120 points and 1800 points of the kernel; it agrees with itself
  // on 160 and 2400 points to 1e-9
  @Test
  void convergedForWidePunches() {
    assertThat(punch(5, 0.5)).isCloseTo(50.13973796835, within(1e-7));
    assertThat(punch(10, 0.5)).isCloseTo(252.898141478, within(1e-7));
    // so wide a punch is resolved to 5e-8 of the factor
    assertThat(punch(20, 0.5)).isCloseTo(1560.40906340, within(1.6e-4));
  }

  // lubrication flow between a free and a fixed face: force 3 pi G d a^4 / (8 h^3) over 8 G a d;
  // the edge adds a length of about 2 h, which leaves the growth of the cube root with a / h
  @Test
  void wideIncompressibleContactIsALubricationFilm() {
    double growth = Math.cbrt(punch(20, 0.5)) - Math.cbrt(punch(10, 0.5));
    double film = 10 * Math.cbrt(3 * Math.PI / 64);
    assertThat(growth).isCloseTo(film, within(2e-3 * film));
  }

  // nothing but compression: E (1 - nu) / ((1 + nu)(1 - 2 nu)) pi a^2 d / h, with an edge
  @Test
  void wideCompressibleContactIsUniformCompression() {
    double nu = 0.2;
    double column = (1 - nu) / ((1 + nu) * (1 - 2 * nu)) * Math.PI / 2 * (1 - nu * nu);
    double growth = (punch(20, nu) - punch(10, nu)) / 10;
    assertThat(growth).isCloseTo(column, within(5e-3 * column));
  }

  // first order: the factor is 1 + 1.12695 a / h for every shape, a on the half-space
  @Test
  void thickLayerIsAHalfSpace() {
    for (Indenter shape : shapes()) {
      double far = new BondedLayer(Length.m(1)).factor(shape, mm(0.3), 0.5);
      double a = shape.contactRadius(mm(0.3)).m();
      assertThat(far - 1).isCloseTo(1.12695 * a, within(0.01 * a));
    }
  }

  private static List<Indenter> shapes() {
    return List.of(
        new FlatPunch(mm(0.4)), new Ball(mm(1.2)), new Cone(degrees(15)), TYPE_A, TYPE_D);
  }

  @Property(seed = "61", tries = 150)
  void resistsMoreTheThinnerItIs(
      @ForAll @Scale(5) @DoubleRange(min = 0.001, max = 2.5) double depth,
      @ForAll @DoubleRange(min = 0.3, max = 30) double thickness,
      @ForAll @DoubleRange(min = 0, max = 0.5) double nu) {
    for (Indenter shape : shapes()) {
      double thin = new BondedLayer(mm(thickness)).factor(shape, mm(depth), nu);
      double thick = new BondedLayer(mm(1.1 * thickness)).factor(shape, mm(depth), nu);
      assertThat(thin).as("%s", shape).isFinite().isGreaterThan(thick);
      assertThat(thick).as("%s", shape).isGreaterThan(1.0);
    }
  }

  @Test
  void saysWhenTheLayerIsStrainedTooMuchAndRefusesNonsense() {
    BondedLayer layer = new BondedLayer(mm(1));
    assertThat(layer.check(mm(0.2))).isEmpty();
    assertThat(layer.check(mm(0.3)).orElseThrow().message())
        .contains("depth over thickness is 0.3");
    assertThat(layer.source().toString()).contains("1972").contains("memory");
    assertThat(layer).hasToString("bonded layer of 1 mm");
    assertThatThrownBy(() -> layer.factor(new FlatPunch(mm(21)), mm(0.1), 0.5))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("radius of contact over thickness is 21, allowed is up to 20");
    for (double nu : new double[] {-0.1, 0.51, Double.NaN}) {
      assertThatThrownBy(() -> layer.factor(TYPE_A, mm(0.1), nu))
          .isInstanceOf(InvalidInputException.class);
    }
    assertThatThrownBy(() -> layer.factor(TYPE_A, mm(0), 0.5))
        .isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(() -> new BondedLayer(mm(0))).isInstanceOf(InvalidInputException.class);
  }
}
