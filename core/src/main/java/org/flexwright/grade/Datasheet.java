package org.flexwright.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.flexwright.hardness.HardnessReading;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Density;
import org.flexwright.quantity.Pressure;

/**
 * The figures of a material's datasheet from which {@link Grade#ofDatasheet} makes a grade.
 *
 * <p>Formula: a nominal stress P at the elongation x is the true stress P (1 + x) at the Hencky
 * strain ln(1 + x); a tensile modulus E at the strain x is the nominal stress E x there; a flexural
 * modulus is the secant of the curve at its strain. The curve of the grade is exact at every
 * figure.
 *
 * <p>Any of modulus, stresses and strength may be missing as long as there is one modulus or one
 * stress. What is missing at 1, 50, 100 and 300 % is taken from the generic polyurethane that has
 * the nearest figure of the sheet, with a caveat and a wider band. A hardness is only compared.
 *
 * <p>Refused: figures whose true stress does not rise; a modulus below three quarters of what a
 * neo-Hookean material with the next stress would have, which is what a "100 % modulus" taken for a
 * modulus looks like, or above 60 times that; two stresses further apart than 4 times the square of
 * their stretches, which is what a slip of units looks like. Elongations are fractions: 0.5 means
 * 50 %.
 *
 * <p>Band: each figure x/ 1.2 from batch to batch unless {@link #within} says otherwise; the widest
 * counts, since one factor serves the whole curve. Source: the limits are ours, from property
 * sheets of moulded polyurethanes, whose modulus is 4.9 to 60 times their stress at 100 % (1.7
 * times for a neo-Hookean material).
 *
 * <p>JShell: {@code Datasheet.of("43 D").flexural(mpa(68.9), 0.01).stress(0.5, mpa(7.58)).stress(1,
 * mpa(9.03)).stress(3, mpa(20.7)).strength(mpa(54.5), 5)}
 *
 * @param name a name for tables
 * @param figures the figures in the order they were given
 * @param hardness the hardness, only compared with the figures
 * @param density the density; 1.2 g/cm3 if the sheet gives none
 */
public record Datasheet(
    String name,
    List<Figure> figures,
    Optional<HardnessReading> hardness,
    Optional<Density> density) {

  /** The band of a figure from batch to batch. */
  static final double BATCH = 1.2;

  private static final double LONGEST = 20.0;

  /** What a figure is. */
  public enum Kind {
    /** Secant modulus in bending. */
    FLEXURAL("flexural modulus"),
    /** Secant modulus in tension. */
    TENSILE("tensile modulus"),
    /** Nominal stress at an elongation. */
    STRESS("stress"),
    /** Nominal stress at break. */
    STRENGTH("tensile strength");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    boolean modulus() {
      return this == FLEXURAL || this == TENSILE;
    }

    /** The name in words. */
    @Override
    public String toString() {
      return words;
    }
  }

  /**
   * One figure.
   *
   * @param kind what it is
   * @param strain its strain or elongation over length, above 0: 0.5 means 50 %
   * @param value the modulus or nominal stress, above 0
   * @param band how well it is known: 1.2 means from 1/1.2 to 1.2 of it
   */
  public record Figure(Kind kind, double strain, Pressure value, double band) {

    /**
     * Refuses a figure that makes no sense.
     *
     * @param kind what it is
     * @param strain its strain or elongation over length
     * @param value the modulus or nominal stress
     * @param band how well it is known
     * @throws org.flexwright.InvalidInputException if the strain is not above 0 or far above what
     *     an elastomer bears, a modulus is not one of small strain, the value is not above 0 or the
     *     band is below 1
     */
    public Figure {
      Require.positive("strain of the " + kind, strain, "");
      Require.that(
          strain <= (kind.modulus() ? 0.1 : LONGEST),
          "strain of the " + kind,
          strain,
          kind.modulus() ? "at most 0.1" : "at most 20",
          kind.modulus()
              ? "a 100 % modulus is a stress: give it with stress(1, ...)"
              : "a fraction, not per cent: 0.5 means 50 %");
      Require.positive(label(kind, strain), value.pa(), "Pa");
      Require.between("band of the " + kind, band, 1.0, 100.0, "");
    }

    /** The Hencky strain. */
    double hencky() {
      return kind == Kind.FLEXURAL ? strain : Math.log1p(strain);
    }

    /** The true stress. */
    double truePa() {
      return switch (kind) {
        case FLEXURAL -> value.pa() * strain;
        case TENSILE -> value.pa() * strain * (1.0 + strain);
        case STRESS, STRENGTH -> value.pa() * (1.0 + strain);
      };
    }

    private static String label(Kind kind, double strain) {
      return kind + " at " + Text.number(100.0 * strain) + " %";
    }

    /** What it is and at which strain. */
    String label() {
      return label(kind, strain);
    }

    /** One readable line. */
    @Override
    public String toString() {
      return label() + " " + value;
    }
  }

  /**
   * Refuses figures that cannot be of one material.
   *
   * @param name a name for tables
   * @param figures the figures in the order they were given
   * @param hardness the hardness, only compared with the figures
   * @param density the density
   * @throws org.flexwright.InvalidInputException if true stress does not rise with strain, a
   *     modulus is a stress or a unit slipped
   */
  public Datasheet {
    figures = List.copyOf(figures);
    DatasheetCurve.check(figures);
    density.ifPresent(d -> Require.positive("density", d.kgPerM3(), "kg/m3"));
  }

  /**
   * A sheet without figures yet.
   *
   * @param name a name for tables
   * @return the sheet
   */
  public static Datasheet of(String name) {
    return new Datasheet(name, List.of(), Optional.empty(), Optional.empty());
  }

  /**
   * This sheet with a flexural modulus.
   *
   * @param modulus the modulus
   * @param strain the strain of its secant, 0.01 unless the sheet says otherwise
   * @return the new sheet
   */
  public Datasheet flexural(Pressure modulus, double strain) {
    return and(new Figure(Kind.FLEXURAL, strain, modulus, BATCH));
  }

  /**
   * This sheet with a tensile modulus.
   *
   * @param modulus the modulus: nominal stress over strain
   * @param strain the strain of its secant
   * @return the new sheet
   */
  public Datasheet tensile(Pressure modulus, double strain) {
    return and(new Figure(Kind.TENSILE, strain, modulus, BATCH));
  }

  /**
   * This sheet with a stress.
   *
   * @param elongation elongation over length: 0.5 means 50 %
   * @param nominal force over first area
   * @return the new sheet
   */
  public Datasheet stress(double elongation, Pressure nominal) {
    return and(new Figure(Kind.STRESS, elongation, nominal, BATCH));
  }

  /**
   * This sheet with the strength and the strain at break, which the grade takes over.
   *
   * @param nominal force at break over first area
   * @param strainAtBreak elongation over length: 5 means 500 %
   * @return the new sheet
   */
  public Datasheet strength(Pressure nominal, double strainAtBreak) {
    return and(new Figure(Kind.STRENGTH, strainAtBreak, nominal, BATCH));
  }

  /**
   * This sheet with the figure given last known to another band than x/ 1.2.
   *
   * @param band the end of the band, at least 1
   * @return the new sheet
   * @throws org.flexwright.InvalidInputException if there is no figure yet or the band is below 1
   */
  public Datasheet within(double band) {
    Require.that(
        !figures.isEmpty(), "figures", 0, "at least one", "give the figure first, then its band");
    List<Figure> all = new ArrayList<>(figures);
    Figure last = all.remove(all.size() - 1);
    all.add(new Figure(last.kind, last.strain, last.value, band));
    return new Datasheet(name, all, hardness, density);
  }

  /**
   * This sheet with a hardness, which is compared with the figures and changes none.
   *
   * @param reading the hardness
   * @return the new sheet
   */
  public Datasheet hardness(HardnessReading reading) {
    return new Datasheet(name, figures, Optional.of(reading), density);
  }

  /**
   * This sheet with a density.
   *
   * @param of the density, above 0
   * @return the new sheet
   */
  public Datasheet density(Density of) {
    return new Datasheet(name, figures, hardness, Optional.of(of));
  }

  private Datasheet and(Figure figure) {
    List<Figure> all = new ArrayList<>(figures);
    all.add(figure);
    return new Datasheet(name, all, hardness, density);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return name + ": " + figures.stream().map(Figure::toString).collect(Collectors.joining(", "));
  }
}
