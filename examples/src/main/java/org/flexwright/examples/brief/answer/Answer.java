package org.flexwright.examples.brief.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.flexwright.decide.Advice;
import org.flexwright.decide.Candidate;
import org.flexwright.decide.Question;
import org.flexwright.decide.Target;
import org.flexwright.decide.Verdict;
import org.flexwright.decide.Window;
import org.flexwright.examples.brief.input.PartQuestion;
import org.flexwright.grade.Grade;
import org.flexwright.response.Lever;
import org.flexwright.response.Part;

/**
 * The answer to one question.
 *
 * @param words the question in words
 * @param target what was asked for
 * @param choices one window for each value of the second lever, the part's own first
 * @param window the one to work with
 * @param levers what would turn its verdict into "meets", least change first
 * @param budget where the band of the best size comes from
 * @param engine what the engine says beside the closed form, if the part is solved by it
 * @param <P> the part
 */
public record Answer<P extends Part<P>>(
    String words,
    Target target,
    List<Choice<P>> choices,
    Choice<P> window,
    List<Advice<P>> levers,
    Optional<Budget> budget,
    Optional<OnEngine> engine) {

  /**
   * A window at one value of the second lever.
   *
   * @param label that value in words, empty if there is no second lever
   * @param of the window
   * @param <P> the part
   */
  public record Choice<P extends Part<P>>(String label, Window<P> of) {}

  /** Keeps the lists from being changed. */
  public Answer {
    choices = List.copyOf(choices);
    levers = List.copyOf(levers);
  }

  static <P extends Part<P>> Answer<P> of(PartQuestion<P> asked, Target target, Grade grade) {
    Question<P> question = asked.frame().meet(target);
    Window<P> first = question.answer(grade);
    List<Choice<P>> choices = new ArrayList<>();
    choices.add(choice(asked.second(), first));
    first.alternatives().forEach(w -> choices.add(choice(asked.second(), w)));
    Window<P> preferred = first.preferred();
    return new Answer<>(
        asked.words(target),
        target,
        choices,
        choice(asked.second(), preferred),
        preferred.levers(),
        Budget.of(preferred.question(), target, grade, preferred.best()),
        OnEngine.of(preferred, target.load(), grade));
  }

  private static <P extends Part<P>> Choice<P> choice(Optional<Lever<P>> second, Window<P> window) {
    return new Choice<>(
        second.map(s -> s + " " + s.of(window.question().part())).orElse(""), window);
  }

  /**
   * The verdict of the window to work with.
   *
   * @return the verdict
   */
  public Verdict verdict() {
    return window.of().verdict();
  }

  /**
   * The size to take or to test first.
   *
   * @return the row, or nothing if every size fails
   */
  public Optional<Candidate> best() {
    return window.of().best();
  }

  /**
   * The answer in one sentence.
   *
   * @return verdict, size and what binds
   */
  public String sentence() {
    String lever = window.of().question().lever().name();
    String at = window.label().isEmpty() ? "" : ", " + window.label();
    return switch (verdict()) {
      case MEETS ->
          best()
              .map(
                  b ->
                      "meets: take "
                          + lever
                          + " "
                          + b.size()
                          + at
                          + "; nearest to failing: "
                          + b.binds())
              .orElse("meets");
      case NOT_DECIDABLE ->
          best()
              .map(
                  b ->
                      "not decidable yet: test "
                          + lever
                          + " "
                          + b.size()
                          + at
                          + " first; open: "
                          + b.binds())
              .orElse("not decidable yet");
      case FAILS ->
          "fails: " + window.of().conflict().orElse("no realisable size lies in the window");
    };
  }

  /**
   * Whether better knowledge alone would decide.
   *
   * @return true if a lever says so
   */
  boolean knowledgeDecides() {
    return levers.stream().anyMatch(a -> a.kind() == Advice.Kind.KNOWLEDGE && a.enough());
  }

  /**
   * How many responses the windows took.
   *
   * @return the count, without the search for levers
   */
  public int effort() {
    return choices.stream().mapToInt(c -> c.of().effort()).sum();
  }
}
