package org.flexwright.law.classical;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.flexwright.internal.Require;
import org.flexwright.law.LawFamily;
import org.flexwright.law.LawFamily.Constant;
import org.flexwright.law.StrainEnergy;
import org.flexwright.quantity.Pressure;

/**
 * The families of the classical laws, with bounds that keep a law stable where simple bounds do.
 *
 * <p>Every point inside the bounds is a law. All are stable as far as they do not lock, except
 * {@link #YEOH}, whose C20 is free since rubber wants it negative: ask {@link StrainEnergy#range}.
 * "Above 0" is written as a bound of 1e-6 Pa. Searches start in ranges of vulcanised rubber and
 * soft polyurethane, stresses in shear moduli of the data.
 *
 * <p>JShell: {@code LawFamilies.ALL}
 */
public final class LawFamilies {

  /** Above 0, in pascals: nothing beside any elastomer. */
  private static final double ABOVE_ZERO = 1e-6;

  private static final double UNLIMITED = Double.POSITIVE_INFINITY;
  private static final Pattern OGDEN_NAME = Pattern.compile("Ogden-([1-9][0-9]?)");

  /** {@link NeoHookean}. */
  public static final LawFamily NEO_HOOKEAN =
      new Family<>(
          "neo-Hookean",
          List.of(Constant.stress("mu", ABOVE_ZERO, 0.5, 2.0)),
          NeoHookean.class,
          v -> NeoHookean.of(Pressure.pa(v[0])),
          law -> new double[] {law.shear().pa()});

  /** {@link MooneyRivlin}. */
  public static final LawFamily MOONEY_RIVLIN =
      new Family<>(
          "Mooney-Rivlin",
          List.of(
              Constant.stress("C10", ABOVE_ZERO, 0.1, 0.6), Constant.stress("C01", 0.0, 0.0, 0.4)),
          MooneyRivlin.class,
          v -> MooneyRivlin.of(Pressure.pa(v[0]), Pressure.pa(v[1])),
          law -> new double[] {law.c10().pa(), law.c01().pa()});

  /** {@link MooneyRivlinPolynomial} of three constants, the third being C11. */
  public static final LawFamily MOONEY_RIVLIN_3 =
      new Family<>(
          "Mooney-Rivlin-3",
          List.of(
              Constant.stress("C10", ABOVE_ZERO, 0.1, 0.6),
              Constant.stress("C01", 0.0, 0.0, 0.4),
              Constant.stress("C11", 0.0, 0.0, 0.02)),
          MooneyRivlinPolynomial.class,
          v -> MooneyRivlinPolynomial.of(Pressure.pa(v[0]), Pressure.pa(v[1]), Pressure.pa(v[2])),
          law ->
              law.c20().pa() == 0.0 && law.c02().pa() == 0.0
                  ? new double[] {law.c10().pa(), law.c01().pa(), law.c11().pa()}
                  : new double[0]);

  /** {@link MooneyRivlinPolynomial} of five constants. */
  public static final LawFamily MOONEY_RIVLIN_5 =
      new Family<>(
          "Mooney-Rivlin-5",
          List.of(
              Constant.stress("C10", ABOVE_ZERO, 0.1, 0.6),
              Constant.stress("C01", 0.0, 0.0, 0.4),
              Constant.stress("C20", 0.0, 0.0, 0.02),
              Constant.stress("C11", 0.0, 0.0, 0.02),
              Constant.stress("C02", 0.0, 0.0, 0.005)),
          MooneyRivlinPolynomial.class,
          v ->
              MooneyRivlinPolynomial.of(Pressure.pa(v[0]), Pressure.pa(v[1]), Pressure.pa(v[3]))
                  .squares(Pressure.pa(v[2]), Pressure.pa(v[4])),
          law ->
              new double[] {
                law.c10().pa(), law.c01().pa(), law.c20().pa(), law.c11().pa(), law.c02().pa()
              });

  /** {@link Yeoh}. */
  public static final LawFamily YEOH =
      new Family<>(
          "Yeoh",
          List.of(
              Constant.stress("C10", ABOVE_ZERO, 0.25, 0.75),
              Constant.stress("C20", -UNLIMITED, -0.02, 0.02),
              Constant.stress("C30", 0.0, 0.0, 0.005)),
          Yeoh.class,
          v -> Yeoh.of(Pressure.pa(v[0]), Pressure.pa(v[1]), Pressure.pa(v[2])),
          law -> new double[] {law.c10().pa(), law.c20().pa(), law.c30().pa()});

  /** {@link Gent}. */
  public static final LawFamily GENT =
      new Family<>(
          "Gent",
          List.of(
              Constant.stress("mu", ABOVE_ZERO, 0.4, 1.2),
              Constant.number("Jm", 1e-3, UNLIMITED, 10.0, 200.0)),
          Gent.class,
          v -> Gent.of(Pressure.pa(v[0]), v[1]),
          law -> new double[] {law.shear().pa(), law.locking()});

  /** {@link GentGent}. */
  public static final LawFamily GENT_GENT =
      new Family<>(
          "Gent-Gent",
          List.of(
              Constant.stress("mu", ABOVE_ZERO, 0.3, 1.2),
              Constant.number("Jm", 1e-3, UNLIMITED, 10.0, 200.0),
              Constant.stress("C2", 0.0, 0.0, 1.0)),
          GentGent.class,
          v -> GentGent.of(Pressure.pa(v[0]), v[1], Pressure.pa(v[2])),
          law -> new double[] {law.mu().pa(), law.locking(), law.c2().pa()});

  /** {@link GentThomas}. */
  public static final LawFamily GENT_THOMAS =
      new Family<>(
          "Gent-Thomas",
          List.of(
              Constant.stress("C1", ABOVE_ZERO, 0.1, 0.6), Constant.stress("C2", 0.0, 0.0, 1.0)),
          GentThomas.class,
          v -> GentThomas.of(Pressure.pa(v[0]), Pressure.pa(v[1])),
          law -> new double[] {law.c1().pa(), law.c2().pa()});

  /** {@link ArrudaBoyce}. */
  public static final LawFamily ARRUDA_BOYCE =
      new Family<>(
          "Arruda-Boyce",
          List.of(
              Constant.stress("mu", ABOVE_ZERO, 0.4, 1.2),
              Constant.number("N", 1.001, UNLIMITED, 4.0, 80.0)),
          ArrudaBoyce.class,
          v -> ArrudaBoyce.of(Pressure.pa(v[0]), v[1]),
          law -> new double[] {law.network().pa(), law.segments()});

  /** {@link ArrudaBoyceSeries}. */
  public static final LawFamily ARRUDA_BOYCE_SERIES =
      new Family<>(
          "Arruda-Boyce-series",
          List.of(
              Constant.stress("mu", ABOVE_ZERO, 0.4, 1.2),
              Constant.number("N", 1.001, UNLIMITED, 4.0, 80.0)),
          ArrudaBoyceSeries.class,
          v -> ArrudaBoyceSeries.of(Pressure.pa(v[0]), v[1]),
          law -> new double[] {law.network().pa(), law.segments()});

  /** {@link ExtendedTube}. */
  public static final LawFamily EXTENDED_TUBE =
      new Family<>(
          "extended-tube",
          List.of(
              Constant.stress("Gc", ABOVE_ZERO, 0.1, 0.9),
              Constant.stress("Ge", 0.0, 0.1, 0.9),
              Constant.number("beta", 1e-3, 1.0, 0.1, 1.0),
              Constant.number("delta", 0.0, 0.7, 0.03, 0.25)),
          ExtendedTube.class,
          v -> ExtendedTube.of(Pressure.pa(v[0]), Pressure.pa(v[1])).beta(v[2]).delta(v[3]),
          law -> new double[] {law.crosslinks().pa(), law.tubes().pa(), law.beta(), law.delta()});

  /** All families, Ogden's with one to three terms. */
  public static final List<LawFamily> ALL =
      List.of(
          NEO_HOOKEAN,
          MOONEY_RIVLIN,
          MOONEY_RIVLIN_3,
          MOONEY_RIVLIN_5,
          YEOH,
          GENT,
          GENT_GENT,
          GENT_THOMAS,
          ogden(1),
          ogden(2),
          ogden(3),
          ARRUDA_BOYCE,
          ARRUDA_BOYCE_SERIES,
          EXTENDED_TUBE);

  private LawFamilies() {}

  /**
   * {@link Ogden} of a number of terms, each by its share of the shear modulus at rest and its
   * exponent: g_i = mu_i alpha_i/2 and alpha_i. All g_i above 0 is the stable law, which bounds on
   * mu_i could not say. The exponents are above 0 but the last of two or more, which is below 0; a
   * law with its signs in another order has its values too, outside these bounds. To and fro the
   * values keep all digits but the last.
   *
   * @param terms the number of terms, at least one
   * @return the family
   * @throws org.flexwright.InvalidInputException if the number is below 1
   */
  public static LawFamily ogden(int terms) {
    return new OgdenFamily(Require.atLeast("Ogden terms", terms, 1));
  }

  /**
   * The family of a name, Ogden's of up to 99 terms included.
   *
   * @param name a name as {@link LawFamily#name} gives it
   * @return the family, empty if there is none of this name
   */
  public static Optional<LawFamily> named(String name) {
    Matcher ogden = OGDEN_NAME.matcher(name);
    return ogden.matches()
        ? Optional.of(ogden(Integer.parseInt(ogden.group(1))))
        : ALL.stream().filter(family -> family.name().equals(name)).findFirst();
  }

  private static void requireAll(LawFamily family, double[] values) {
    int size = family.constants().size();
    Require.that(
        values.length == size,
        "constants of " + family.name(),
        values.length + " values",
        size + " values, " + family,
        "");
  }

  private static String text(LawFamily family) {
    return family.name() + family.constants().stream().map(Constant::name).toList();
  }

  /** A family of one class of laws; no values where a law of the class is not of the family. */
  private record Family<L extends StrainEnergy>(
      String name,
      List<Constant> constants,
      Class<L> type,
      Function<double[], L> from,
      Function<L, double[]> to)
      implements LawFamily {

    @Override
    public StrainEnergy law(double[] values) {
      requireAll(this, values);
      return from.apply(values);
    }

    @Override
    public Optional<double[]> values(StrainEnergy law) {
      return Optional.of(law)
          .filter(type::isInstance)
          .map(type::cast)
          .map(to)
          .filter(v -> v.length > 0);
    }

    /** The name and the constants. */
    @Override
    public String toString() {
      return text(this);
    }
  }

  private record OgdenFamily(int terms) implements LawFamily {

    private static final double LEAST = 0.1;
    private static final double MOST = 20.0;

    @Override
    public String name() {
      return "Ogden-" + terms;
    }

    @Override
    public List<Constant> constants() {
      return Stream.iterate(1, i -> i + 1).limit(terms).flatMap(this::term).toList();
    }

    private Stream<Constant> term(int i) {
      boolean negative = i > 1 && i == terms;
      String exponent = "alpha" + i;
      return Stream.of(
          Constant.stress("g" + i, ABOVE_ZERO, 1e-3, 1.0),
          negative
              ? Constant.number(exponent, -MOST, -LEAST, -5.0, -0.5)
              : i == 1
                  ? Constant.number(exponent, LEAST, MOST, 0.5, 3.0)
                  : Constant.number(exponent, LEAST, MOST, 3.0, 9.0));
    }

    @Override
    public StrainEnergy law(double[] values) {
      requireAll(this, values);
      Stream<Ogden.Term> all =
          Stream.iterate(0, i -> i + 2)
              .limit(terms)
              .map(
                  i -> new Ogden.Term(Pressure.pa(2.0 * values[i] / values[i + 1]), values[i + 1]));
      return new Ogden(all.toList());
    }

    @Override
    public Optional<double[]> values(StrainEnergy law) {
      return law instanceof Ogden ogden && ogden.terms().size() == terms
          ? Optional.of(
              ogden.terms().stream()
                  .flatMapToDouble(t -> DoubleStream.of(0.5 * t.mu().pa() * t.alpha(), t.alpha()))
                  .toArray())
          : Optional.empty();
    }

    /** The name and the constants. */
    @Override
    public String toString() {
      return text(this);
    }
  }
}
