package org.flexwright.examples.brief.answer;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.examples.brief.input.Brief;
import org.flexwright.examples.brief.input.BriefException;
import org.flexwright.examples.brief.input.PartQuestion;
import org.flexwright.fit.FitComparison;
import org.flexwright.fit.TestCurve;
import org.flexwright.grade.Grade;
import org.flexwright.hardness.relation.ModulusFromHardness;
import org.flexwright.quantity.Pressure;
import org.flexwright.response.Part;

/**
 * The whole answer to a brief.
 *
 * @param brief the brief
 * @param relations small-strain modulus by the hardness relations, if the grade rests on hardness
 * @param laws the classical laws on the measured curves, if the grade rests on curves
 * @param parts the answers, in the order of the brief
 * @param plan what to test-print first
 */
public record BriefAnswer(
    Brief brief,
    Optional<ModulusFromHardness> relations,
    Optional<FitComparison> laws,
    List<PartAnswer<?>> parts,
    TestPlan plan) {

  /** Strains at which the grade's curve is shown. */
  public static final List<Double> STRAINS = List.of(0.0, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1.0);

  /** Test pressure over supply pressure named in the cautions; common practice. */
  public static final double PROOF = 1.5;

  /** Keeps the list from being changed. */
  public BriefAnswer {
    parts = List.copyOf(parts);
  }

  /**
   * Answers a brief.
   *
   * @param brief the brief
   * @return the answer
   */
  public static BriefAnswer of(Brief brief) {
    List<PartAnswer<?>> parts = new ArrayList<>();
    for (PartQuestion<?> part : brief.parts()) {
      parts.add(answer(part, brief.grade()));
    }
    return new BriefAnswer(
        brief,
        brief.basis().reading().map(ModulusFromHardness::of),
        laws(brief.basis().curves()),
        parts,
        TestPlan.of(parts));
  }

  private static Optional<FitComparison> laws(List<TestCurve> curves) {
    try {
      return curves.isEmpty() ? Optional.empty() : Optional.of(FitComparison.of(curves));
    } catch (InvalidInputException e) {
      throw BriefException.inside("material.curves", e);
    }
  }

  private static <P extends Part<P>> PartAnswer<P> answer(PartQuestion<P> part, Grade grade) {
    return PartAnswer.of(part, grade);
  }

  /**
   * How many responses the windows took.
   *
   * @return the count, without the search for levers
   */
  public int effort() {
    return parts.stream().flatMap(p -> p.answers().stream()).mapToInt(Answer::effort).sum();
  }

  /**
   * What a person must mind, beyond the caveats of the single figures.
   *
   * @return the sentences
   */
  public List<String> cautions() {
    List<String> cautions = new ArrayList<>();
    for (PartAnswer<?> part : parts) {
      part.asked().supply().ifPresent(p -> pressurised(part.asked().name(), p, cautions));
    }
    cautions.add(
        "Every figure is an estimate with a band for choosing what to print and test; it is no"
            + " proof of fitness. Check the first prints by measurement.");
    cautions.add(
        "A gripper can lose its grip or its air: keep people out of the path of what it carries,"
            + " and see that a dropped load does no harm.");
    return cautions;
  }

  private static void pressurised(String name, Pressure supply, List<String> cautions) {
    cautions.add(
        "The "
            + name
            + " is under pressure (supply "
            + supply
            + "): compressed air stores energy and a burst throws pieces. Prove it first filled"
            + " with liquid, behind a shield, from a distance, with the air bled out.");
    cautions.add(
        "Common practice is a proof test at "
            + supply.times(PROOF)
            + " ("
            + PROOF
            + " x supply) before each use of a new print, with a relief valve on the supply; local"
            + " codes and licensed practice come first and may ask for more.");
  }

  /**
   * The sources of the grade and of the responses behind the choices.
   *
   * @return the sources, each once
   */
  public List<Source> sources() {
    Set<Source> sources = new LinkedHashSet<>();
    relations.ifPresent(r -> sources.addAll(r.spread().sources()));
    sources.addAll(brief.grade().sources());
    for (PartAnswer<?> part : parts) {
      sources.addAll(sources(part));
    }
    return List.copyOf(sources);
  }

  private <P extends Part<P>> List<Source> sources(PartAnswer<P> answer) {
    return answer.chosen().respond(brief.grade(), answer.main().target().load()).sources();
  }

  /**
   * The reservations about one part that the grade does not carry already.
   *
   * @param part the part
   * @return the caveats, each once
   */
  public List<Caveat> caveats(PartAnswer<?> part) {
    Set<Caveat> caveats = new LinkedHashSet<>(part.main().window().of().caveats());
    part.main().best().ifPresent(b -> caveats.addAll(b.caveats()));
    caveats.removeAll(brief.grade().caveats());
    return List.copyOf(caveats);
  }
}
