package org.flexwright.examples.brief.input;

import java.util.List;
import java.util.Optional;
import org.flexwright.decide.Question;
import org.flexwright.decide.Target;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.response.Lever;
import org.flexwright.response.Part;

/**
 * What a brief asks of one part.
 *
 * @param path the part's place in the brief
 * @param name its name
 * @param frame part, lever, sizes and life: everything but the target
 * @param target what the part shall do
 * @param wishes targets asked besides
 * @param second the other dimension with listed values, if any
 * @param rubberSize the size of a rubber part to compare the feel with, if wanted
 * @param <P> the part
 */
public record PartQuestion<P extends Part<P>>(
    String path,
    String name,
    Question<P> frame,
    Target target,
    List<Target> wishes,
    Optional<Lever<P>> second,
    Optional<Length> rubberSize) {

  /** Keeps the list from being changed. */
  public PartQuestion {
    wishes = List.copyOf(wishes);
  }

  /**
   * The supply pressure of an inflated part.
   *
   * @return the gauge pressure, or nothing if no target names a supply
   */
  public Optional<Pressure> supply() {
    return target instanceof Target.Hold hold ? Optional.of(hold.supply()) : Optional.empty();
  }

  /**
   * The question in words.
   *
   * @param asked the target it asks for
   * @return one sentence
   */
  public String words(Target asked) {
    return "Which "
        + frame.lever()
        + " of the "
        + name
        + " gives: "
        + asked
        + "; prints; and survives "
        + frame.survival()
        + "?";
  }
}
