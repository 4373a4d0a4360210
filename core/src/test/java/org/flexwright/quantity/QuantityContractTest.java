package org.flexwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.flexwright.InvalidInputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every quantity must do, whatever its unit. */
class QuantityContractTest {

  /** A unit of a quantity; the SI value of one is a definition (SI Brochure; NIST SP 811). */
  record Unit<Q extends Comparable<Q>>(
      String symbol,
      double inSi,
      DoubleFunction<Q> make,
      ToDoubleFunction<Q> read,
      ToDoubleFunction<Q> si,
      Function<String, Q> parse) {

    @Override
    public String toString() {
      return symbol;
    }
  }

  static Stream<Unit<?>> units() {
    List<Unit<?>> units =
        List.of(
            new Unit<>("m", 1, Length::m, Length::m, Length::m, Length::parse),
            new Unit<>("mm", 1e-3, Length::mm, Length::mm, Length::m, Length::parse),
            new Unit<>("cm", 1e-2, Length::cm, Length::cm, Length::m, Length::parse),
            new Unit<>("um", 1e-6, Length::um, Length::um, Length::m, Length::parse),
            new Unit<>("in", 0.0254, Length::inches, Length::inches, Length::m, Length::parse),
            new Unit<>("thou", 2.54e-5, Length::thou, Length::thou, Length::m, Length::parse),
            new Unit<>("mm2", 1e-6, Area::mm2, Area::mm2, Area::m2, Area::parse),
            new Unit<>("cm2", 1e-4, Area::cm2, Area::cm2, Area::m2, Area::parse),
            new Unit<>("mm3", 1e-9, Volume::mm3, Volume::mm3, Volume::m3, Volume::parse),
            new Unit<>("cm3", 1e-6, Volume::cm3, Volume::cm3, Volume::m3, Volume::parse),
            new Unit<>("l", 1e-3, Volume::litres, Volume::litres, Volume::m3, Volume::parse),
            new Unit<>(
                "deg", Math.PI / 180, Angle::degrees, Angle::degrees, Angle::rad, Angle::parse),
            new Unit<>("N", 1, Force::newtons, Force::newtons, Force::newtons, Force::parse),
            new Unit<>(
                "kN", 1e3, Force::kilonewtons, Force::kilonewtons, Force::newtons, Force::parse),
            new Unit<>("Pa", 1, Pressure::pa, Pressure::pa, Pressure::pa, Pressure::parse),
            new Unit<>("kPa", 1e3, Pressure::kpa, Pressure::kpa, Pressure::pa, Pressure::parse),
            new Unit<>("MPa", 1e6, Pressure::mpa, Pressure::mpa, Pressure::pa, Pressure::parse),
            new Unit<>("bar", 1e5, Pressure::bar, Pressure::bar, Pressure::pa, Pressure::parse),
            // pound-force 4.4482216152605 N on a square inch of 6.4516e-4 m2
            new Unit<>(
                "psi",
                4.4482216152605 / 6.4516e-4,
                Pressure::psi,
                Pressure::psi,
                Pressure::pa,
                Pressure::parse),
            new Unit<>(
                "N/mm",
                1e3,
                Stiffness::newtonsPerMm,
                Stiffness::newtonsPerMm,
                Stiffness::newtonsPerM,
                Stiffness::parse),
            new Unit<>(
                "N mm",
                1e-3,
                Moment::newtonMillimetres,
                Moment::newtonMillimetres,
                Moment::newtonMetres,
                Moment::parse),
            new Unit<>("J", 1, Energy::joules, Energy::joules, Energy::joules, Energy::parse),
            new Unit<>("g", 1e-3, Mass::grams, Mass::grams, Mass::kg, Mass::parse),
            new Unit<>(
                "g/cm3",
                1e3,
                Density::gPerCm3,
                Density::gPerCm3,
                Density::kgPerM3,
                Density::parse));
    return units.stream();
  }

  @ParameterizedTest
  @MethodSource("units")
  <Q extends Comparable<Q>> void unitMeansWhatItsDefinitionSays(Unit<Q> unit) {
    Q q = unit.make().apply(2.5);
    assertThat(unit.si().applyAsDouble(q))
        .isCloseTo(2.5 * unit.inSi(), within(1e-14 * unit.inSi()));
    assertThat(unit.read().applyAsDouble(q)).isCloseTo(2.5, within(1e-14));
  }

  @ParameterizedTest
  @MethodSource("units")
  <Q extends Comparable<Q>> void readsItsOwnUnit(Unit<Q> unit) {
    for (String text : List.of("2.5 ", "+2.5", " 25e-1  ")) {
      Q q = unit.parse().apply(text + unit.symbol());
      assertThat(unit.read().applyAsDouble(q)).isCloseTo(2.5, within(1e-14));
    }
  }

  @ParameterizedTest
  @MethodSource("units")
  <Q extends Comparable<Q>> void printsAndReadsBack(Unit<Q> unit) {
    for (double value : new double[] {0.0, 1e-7, 0.1234, 1.0, 12.34, 5678, -3.5}) {
      Q q = unit.make().apply(value);
      String text = q.toString();
      assertThat(text).matches("[ -~]+").doesNotContain(",");
      Q back = unit.parse().apply(text);
      double si = unit.si().applyAsDouble(q);
      assertThat(unit.si().applyAsDouble(back)).isCloseTo(si, within(6e-4 * Math.abs(si)));
    }
  }

  @ParameterizedTest
  @MethodSource("units")
  <Q extends Comparable<Q>> void ordersAsItsValues(Unit<Q> unit) {
    Q small = unit.make().apply(1.0);
    Q large = unit.make().apply(2.0);
    assertThat(small).isLessThan(large).isEqualByComparingTo(unit.make().apply(1.0));
    assertThat(small).isEqualTo(unit.make().apply(1.0)).hasSameHashCodeAs(unit.make().apply(1.0));
  }

  @ParameterizedTest
  @MethodSource("units")
  <Q extends Comparable<Q>> void refusesWhatIsNoNumber(Unit<Q> unit) {
    for (double bad :
        new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
      assertThatThrownBy(() -> unit.make().apply(bad))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("allowed is a finite number");
    }
    for (String bad : List.of("", "2.5", "2,5 " + unit.symbol(), "two " + unit.symbol(), "2 x")) {
      assertThatThrownBy(() -> unit.parse().apply(bad))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("\"" + bad + "\"");
    }
  }

  @Test
  void theProductsThatUsersWrite() {
    assertThat(Length.mm(2).times(Length.mm(3)).mm2()).isCloseTo(6, within(1e-12));
    assertThat(Area.mm2(6).times(Length.mm(2)).mm3()).isCloseTo(12, within(1e-12));
    assertThat(Length.mm(2).times(Area.mm2(6)).mm3()).isCloseTo(12, within(1e-12));
    assertThat(Pressure.mpa(2).times(Area.mm2(3)).newtons()).isCloseTo(6, within(1e-12));
    assertThat(Force.newtons(6).per(Length.mm(2)).newtonsPerMm()).isCloseTo(3, within(1e-12));
    assertThat(Force.newtons(6).per(Area.mm2(2)).mpa()).isCloseTo(3, within(1e-12));
    assertThat(Stiffness.newtonsPerMm(3).times(Length.mm(2)).newtons()).isCloseTo(6, within(1e-12));
    assertThat(Volume.cm3(2).times(Density.gPerCm3(1.2)).grams()).isCloseTo(2.4, within(1e-12));
    assertThat(Length.mm(3).ratioTo(Length.mm(2))).isCloseTo(1.5, within(1e-15));
    assertThat(Length.mm(3).plus(Length.mm(2)).minus(Length.mm(4)).mm())
        .isCloseTo(1, within(1e-12));
  }

  @Test
  void dividingByNothingIsRefused() {
    assertThatThrownBy(() -> Force.newtons(1).per(Length.mm(0)))
        .hasMessage("travel is 0 m, allowed is finite and above 0");
    assertThatThrownBy(() -> Length.mm(1).ratioTo(Length.mm(0)))
        .hasMessage("divisor is 0 m, allowed is finite and not 0");
  }

  @Test
  void temperatureKnowsBothScales() {
    assertThat(Temperature.celsius(25).kelvin()).isCloseTo(298.15, within(1e-12));
    assertThat(Temperature.parse("60 degC").celsius()).isCloseTo(60, within(1e-12));
    assertThat(Temperature.parse("300 K").celsius()).isCloseTo(26.85, within(1e-12));
    assertThat(Temperature.celsius(23)).hasToString("23 degC").isLessThan(Temperature.kelvin(300));
    assertThatThrownBy(() -> Temperature.kelvin(-1))
        .hasMessage("temperature is -1 K, allowed is finite and not below 0");
    assertThatThrownBy(() -> Temperature.parse("20 F"))
        .hasMessageContaining("one of the units K, degC");
  }
}
