package org.flexwright.examples.brief.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.flexwright.InvalidInputException;
import org.flexwright.decide.Candidate;
import org.flexwright.decide.FeelsLike;
import org.flexwright.decide.Question;
import org.flexwright.evidence.Estimate;
import org.flexwright.examples.brief.input.BriefException;
import org.flexwright.examples.brief.input.PartQuestion;
import org.flexwright.grade.Grade;
import org.flexwright.hardness.ShoreA;
import org.flexwright.quantity.Length;
import org.flexwright.response.Part;

/**
 * All answers about one part.
 *
 * @param asked what was asked
 * @param main the answer to the main question
 * @param wishes the answers to the targets asked besides
 * @param feel the hardness that the best size feels like, if asked for
 * @param <P> the part
 */
public record PartAnswer<P extends Part<P>>(
    PartQuestion<P> asked, Answer<P> main, List<Answer<P>> wishes, Optional<Feel> feel) {

  /**
   * A feels-like hardness with what it compares.
   *
   * @param words what is compared, without the hardness
   * @param hardness the hardness with its band
   */
  public record Feel(String words, Estimate<ShoreA> hardness) {}

  /** Keeps the list from being changed. */
  public PartAnswer {
    wishes = List.copyOf(wishes);
  }

  static <P extends Part<P>> PartAnswer<P> of(PartQuestion<P> asked, Grade grade) {
    try {
      Answer<P> main = Answer.of(asked, asked.target(), grade);
      List<Answer<P>> wishes = new ArrayList<>();
      asked.wishes().forEach(t -> wishes.add(Answer.of(asked, t, grade)));
      return new PartAnswer<>(asked, main, wishes, feel(asked, main, grade));
    } catch (InvalidInputException e) {
      throw BriefException.together(asked.path(), e);
    }
  }

  private static <P extends Part<P>> Optional<Feel> feel(
      PartQuestion<P> asked, Answer<P> main, Grade grade) {
    if (asked.rubberSize().isEmpty() || main.best().isEmpty()) {
      return Optional.empty();
    }
    Question<P> question = main.window().of().question();
    Length rubber = asked.rubberSize().get();
    Length size = main.best().get().size();
    Estimate<ShoreA> hardness =
        FeelsLike.of(question.part(), question.lever(), rubber).hardness(size, grade);
    String words =
        "at rest the "
            + asked.name()
            + " with "
            + question.lever()
            + " "
            + size
            + " feels like the same part of rubber with "
            + question.lever()
            + " "
            + rubber;
    return Optional.of(new Feel(words, hardness));
  }

  /**
   * The part as chosen, or at the greatest size asked for if every size fails.
   *
   * @return the part
   */
  public P chosen() {
    Question<P> question = main.window().of().question();
    Length size = main.best().map(Candidate::size).orElse(question.to());
    return question.lever().set(question.part(), size);
  }

  /**
   * The main answer and the wishes.
   *
   * @return the answers, the main one first
   */
  public List<Answer<P>> answers() {
    List<Answer<P>> all = new ArrayList<>(List.of(main));
    all.addAll(wishes);
    return all;
  }
}
