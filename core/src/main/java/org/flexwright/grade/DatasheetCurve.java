package org.flexwright.grade;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Factor;
import org.flexwright.evidence.Factors;
import org.flexwright.evidence.Source;
import org.flexwright.grade.Datasheet.Figure;
import org.flexwright.grade.Datasheet.Kind;
import org.flexwright.hardness.HardnessReading;
import org.flexwright.hardness.ShoreD;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.law.Deformation;
import org.flexwright.law.HenckyCurve;
import org.flexwright.quantity.Pressure;

/**
 * The stress curve of a datasheet, with what is missing filled.
 *
 * <p>A place is filled from the generic polyurethane of that Shore D at which its curve has the
 * figure of the sheet that lies nearest in ln strain. Scatter of the places against the stress at
 * 100 %, as ln-deviations over property sheets to 60 Shore D: 0.24 at 1 % (scatter of both fits),
 * 0.11 at 50 % (8 sheets), 0.17 at 300 % (15 sheets).
 */
final class DatasheetCurve {

  private static final Source SHEETS =
      Source.derived("ratios of property sheets of moulded thermoplastic polyurethanes");
  private static final Source OWN =
      Source.assumption("datasheet figures, x/ 1.2 from batch to batch unless stated");
  private static final double LEAST_D = 5.0;
  private static final double MOST_D = 80.0;
  private static final double SLIP = 4.0;
  private static final double SOFTEST = 0.75;
  private static final double STIFFEST = 60.0;

  /** A place that the curve must have a point at: filled unless a figure lies between the ends. */
  private enum Place {
    REST("modulus at 1 %", 0.01, 0.0, 0.06, 0.24),
    HALF("stress at 50 %", Math.log(1.5), Math.log(1.2), Math.log(1.75), 0.11),
    ONE("stress at 100 %", Math.log(2.0), Math.log(1.75), Math.log(2.7), 0.0),
    THREE("stress at 300 %", Math.log(4.0), Math.log(2.7), Math.log(5.0), 0.17);

    private final String words;
    private final double hencky;
    private final double from;
    private final double to;
    private final double scatter;

    Place(String words, double hencky, double from, double to, double scatter) {
      this.words = words;
      this.hencky = hencky;
      this.from = from;
      this.to = to;
      this.scatter = scatter;
    }

    boolean taken(Figure f) {
      return f.kind() != Kind.STRENGTH && f.hencky() >= from && f.hencky() <= to;
    }

    static double scatterAt(Figure f) {
      Place nearest = REST;
      for (Place p : values()) {
        if (Math.abs(p.hencky - f.hencky()) < Math.abs(nearest.hencky - f.hencky())) {
          nearest = p;
        }
      }
      return nearest.scatter;
    }
  }

  private final Datasheet sheet;
  private final List<Figure> figures;
  private final TreeMap<Double, Double> points = new TreeMap<>();
  private final List<Caveat> caveats = new ArrayList<>();
  private double fillSigma;

  private DatasheetCurve(Datasheet sheet) {
    this.sheet = sheet;
    figures = sorted(sheet.figures());
    Require.that(
        figures.stream().anyMatch(f -> f.kind() != Kind.STRENGTH),
        "figures of " + sheet.name(),
        figures.size(),
        "at least one modulus or one stress at an elongation",
        "from hardness alone take Grade.polyurethane, Grade.rubber or Grade.silicone");
    figures.forEach(f -> points.put(f.hencky(), f.truePa()));
    for (Place place : Place.values()) {
      if (figures.stream().noneMatch(place::taken)) {
        fill(place);
      }
    }
  }

  static GradeBuilder grade(Datasheet sheet) {
    DatasheetCurve curve = new DatasheetCurve(sheet);
    GradeBuilder b = new GradeBuilder(sheet.name(), law(curve.points));
    double widest = curve.figures.stream().mapToDouble(Figure::band).max().orElse(Datasheet.BATCH);
    double own = Math.log(widest) / Factors.COVERAGE;
    b.factors = b.factors.with(Factor.MODULUS, Math.hypot(own, curve.fillSigma));
    sheet.density().ifPresent(d -> b.density = d);
    b.tested.add(Deformation.UNIAXIAL);
    b.sources.add(OWN);
    if (curve.fillSigma > 0.0) {
      b.sources.add(SHEETS);
    }
    b.caveats.addAll(curve.caveats);
    sheet.hardness().ifPresent(h -> curve.compare(h).ifPresent(b.caveats::add));
    b.caveats.add(GradeBuilder.ONE_CURVE);
    curve.broken(b);
    return b;
  }

  private static HenckyCurve law(Map<Double, Double> points) {
    double[] strain = points.keySet().stream().mapToDouble(Double::doubleValue).toArray();
    Pressure[] stress = points.values().stream().map(Pressure::pa).toArray(Pressure[]::new);
    return HenckyCurve.through(strain, stress);
  }

  private void broken(GradeBuilder b) {
    OptionalDouble strain =
        figures.stream()
            .filter(f -> f.kind() == Kind.STRENGTH)
            .mapToDouble(Figure::strain)
            .findFirst();
    b.strainAtBreak = strain.orElse(b.strainAtBreak);
    if (strain.isEmpty()) {
      b.caveats.add(GradeBuilder.breakAssumed(b.strainAtBreak));
    }
  }

  private void fill(Place place) {
    Figure nearest =
        figures.stream()
            .filter(f -> f.kind() != Kind.STRENGTH)
            .min(Comparator.comparingDouble(f -> Math.abs(Math.log(f.hencky() / place.hencky))))
            .orElseThrow();
    double shoreD = shoreD(nearest);
    double stress = GenericPolyurethane.curve(shoreD).stress(place.hencky);
    var before = points.lowerEntry(place.hencky);
    var after = points.higherEntry(place.hencky);
    if ((before != null && stress <= before.getValue())
        || (after != null && stress >= after.getValue())) {
      return; // the sheet's own figures to both sides know better
    }
    points.put(place.hencky, stress);
    double sigma = Math.hypot(place.scatter, Place.scatterAt(nearest));
    fillSigma = Math.max(fillSigma, sigma);
    caveats.add(
        Caveat.note(
            "datasheet of " + sheet.name(),
            place.words
                + " is not given: that of the generic polyurethane of "
                + Text.number(shoreD, 3)
                + " Shore D with the same "
                + nearest.label()
                + ", x/ "
                + Text.number(Math.exp(Factors.COVERAGE * sigma), 3)
                + "; give the figure, above all for another kind of material",
            SHEETS));
  }

  /** The Shore D at which the generic curve has a figure. */
  private double shoreD(Figure f) {
    UnivariateFunction miss =
        d -> Math.log(GenericPolyurethane.curve(d).stress(f.hencky()) / f.truePa());
    Require.that(
        miss.value(LEAST_D) < 0.0 && miss.value(MOST_D) > 0.0,
        f.label() + " of " + sheet.name(),
        f.value(),
        "a value that some polyurethane of 5 to 80 Shore D has",
        "what is missing cannot be filled: give a modulus and the stresses at 50, 100 and 300 %, and"
            + " check the units");
    return new BrentSolver(1e-12, 1e-12).solve(200, miss, LEAST_D, MOST_D);
  }

  /** Whether the hardness and the figure of least strain belong together. */
  private Optional<Caveat> compare(HardnessReading reading) {
    ShoreD d = GenericPolyurethane.toShoreD(reading);
    Figure f = figures.get(0);
    double ratio = f.truePa() / GenericPolyurethane.curve(d.points()).stress(f.hencky());
    double band =
        Math.exp(
            Factors.COVERAGE
                * Math.hypot(
                    GenericPolyurethane.fitSigma(d.points()), GenericPolyurethane.readingSigma(d)));
    if (ratio <= band && ratio >= 1.0 / band) {
      return Optional.empty();
    }
    return Optional.of(
        Caveat.note(
            "datasheet of " + sheet.name(),
            f.label()
                + " is "
                + Text.number(ratio, 3)
                + " of that of a generic polyurethane of "
                + reading
                + " (band x/ "
                + Text.number(band, 3)
                + "): check units and hardness, or it is another kind of material",
            SHEETS));
  }

  private static List<Figure> sorted(List<Figure> figures) {
    return figures.stream().sorted(Comparator.comparingDouble(Figure::hencky)).toList();
  }

  /** Refuses figures that cannot be of one material. */
  static void check(List<Figure> figures) {
    List<Figure> rising = sorted(figures);
    for (int i = 1; i < rising.size(); i++) {
      Figure a = rising.get(i - 1);
      Figure b = rising.get(i);
      Require.that(
          b.hencky() > a.hencky() * (1.0 + 1e-6),
          "strain of the " + b.label(),
          b.strain(),
          "another strain than that of the " + a.label(),
          "give each strain once");
      checkPair(a, b);
      Require.that(
          b.truePa() > a.truePa(),
          "true stress of the " + b.label(),
          Pressure.pa(b.truePa()),
          "above " + Pressure.pa(a.truePa()) + ", that of the " + a.label(),
          "stresses are nominal, force over first area; check their order and units");
    }
    Require.that(
        figures.stream().filter(f -> f.kind() == Kind.STRENGTH).count() <= 1,
        "tensile strengths",
        "two",
        "one",
        "make one sheet for each material");
  }

  private static void checkPair(Figure a, Figure b) {
    if (b.kind().modulus()) {
      return;
    }
    double stretch = 1.0 + b.strain();
    if (a.kind().modulus()) {
      double neoHookean = 3.0 * b.value().pa() / (stretch - 1.0 / (stretch * stretch));
      Require.that(
          b.strain() > 1.5 || a.value().pa() >= SOFTEST * neoHookean,
          a.label(),
          a.value(),
          "at least " + Pressure.pa(SOFTEST * neoHookean) + ", as the " + b,
          "a \"100 % modulus\" is a stress: give it with stress(1, ...)");
      Require.that(
          a.value().pa() <= STIFFEST * neoHookean,
          a.label(),
          a.value(),
          "at most " + Pressure.pa(STIFFEST * neoHookean) + ", as the " + b,
          "check the units");
      return;
    }
    double most = SLIP * a.value().pa() * Math.pow(stretch / (1.0 + a.strain()), 2);
    Require.that(
        b.value().pa() <= most,
        b.label(),
        b.value(),
        "at most " + Pressure.pa(most) + ", as the " + a,
        "check that both have the same unit");
  }
}
