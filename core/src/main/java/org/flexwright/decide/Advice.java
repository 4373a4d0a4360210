package org.flexwright.decide;

import org.flexwright.grade.Grade;
import org.flexwright.response.Part;

/**
 * A lever that turns the verdict into "meets", with its figure. A life test that is needed besides
 * another lever says so by {@code enough} false; the other levers then include it.
 *
 * @param kind what kind of lever
 * @param name the lever
 * @param figure what it must become, with its unit
 * @param enough whether the verdict is "meets" with this lever alone
 * @param change how far it must move: |ln(new/old)|, for ranking
 * @param sentence one sentence a person can act on
 * @param question the question with the lever moved
 * @param grade the grade with the knowledge narrowed
 * @param <P> the part
 */
public record Advice<P extends Part<P>>(
    Kind kind,
    String name,
    String figure,
    boolean enough,
    double change,
    String sentence,
    Question<P> question,
    Grade grade) {

  /** Kinds of lever. */
  public enum Kind {
    /** Know a factor better: a test print. */
    KNOWLEDGE,
    /** Another value of another dimension. */
    DIMENSION,
    /** A size that the list of realisable sizes lacks. */
    SIZE,
    /** A wider limit. */
    LIMIT
  }

  /**
   * Asks the question again with this lever moved.
   *
   * @return the new answer
   */
  public Window<P> solve() {
    return question.answer(grade);
  }

  /** The sentence. */
  @Override
  public String toString() {
    return sentence;
  }
}
