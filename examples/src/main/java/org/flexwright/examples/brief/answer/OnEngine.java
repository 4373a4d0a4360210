package org.flexwright.examples.brief.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.flexwright.decide.Candidate;
import org.flexwright.decide.Question;
import org.flexwright.decide.Window;
import org.flexwright.grade.Grade;
import org.flexwright.quantity.Length;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Part;
import org.flexwright.run.RunControl;
import org.flexwright.shells.solved.Solved;

/**
 * What the engine of shells of revolution says, beside the closed form, and the shape it finds.
 *
 * @param rows both figures at each size of the table
 * @param size the size that is drawn
 * @param load what it is asked
 * @param shapes its wall at rest and at that load
 */
public record OnEngine(List<Row> rows, Length size, LoadCase load, Solved.Shapes shapes) {

  /**
   * Both figures at one size.
   *
   * @param size the size
   * @param both engine and closed form
   */
  public record Row(Length size, Solved.Comparison both) {}

  /** Keeps the list from being changed. */
  public OnEngine {
    rows = List.copyOf(rows);
  }

  static <P extends Part<P>> Optional<OnEngine> of(Window<P> window, LoadCase load, Grade grade) {
    Question<P> question = window.question();
    List<Row> rows = new ArrayList<>();
    for (Candidate c : window.candidates()) {
      if (c.load().nominal() > 0.0 // else no part of that size exists
          && question.lever().set(question.part(), c.size()) instanceof Solved<?> at) {
        rows.add(new Row(c.size(), at.compare(grade, load)));
      }
    }
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    Length size = window.best().map(Candidate::size).orElse(rows.get(rows.size() - 1).size());
    return question.lever().set(question.part(), size) instanceof Solved<?> drawn
        ? Optional.of(new OnEngine(rows, size, load, drawn.shapes(grade, load, RunControl.none())))
        : Optional.empty();
  }

  /**
   * Both figures at a size.
   *
   * @param at the size
   * @return the figures, if the engine was asked at that size
   */
  public Optional<Solved.Comparison> at(Length at) {
    return rows.stream().filter(r -> r.size().equals(at)).map(Row::both).findFirst();
  }
}
