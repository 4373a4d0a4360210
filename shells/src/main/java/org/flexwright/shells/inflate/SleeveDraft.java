package org.flexwright.shells.inflate;

import java.util.Objects;
import org.flexwright.grade.BuildDirection;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Length;
import org.jspecify.annotations.Nullable;

/** A sleeve that is not complete yet. Immutable and thread-safe. */
public final class SleeveDraft {
  private final Length outside;
  private final @Nullable Length span;
  private final @Nullable Length wall;

  SleeveDraft(Length outside, @Nullable Length span, @Nullable Length wall) {
    this.outside = outside;
    this.span = span;
    this.wall = wall;
  }

  /**
   * With its span.
   *
   * @param of free length between the stiff ends
   * @return the draft
   */
  public SleeveDraft span(Length of) {
    return new SleeveDraft(outside, of, wall);
  }

  /**
   * With its wall.
   *
   * @param of wall thickness
   * @return the draft
   */
  public SleeveDraft wall(Length of) {
    return new SleeveDraft(outside, span, of);
  }

  /**
   * With its bore, which completes it; built axis up.
   *
   * @param bore the bore
   * @return the sleeve
   * @throws org.flexwright.InvalidInputException if a dimension is missing or makes no sense
   */
  public Sleeve into(Bore bore) {
    Require.that(span != null, "span", "not given", "a length", "add span(...)");
    Require.that(wall != null, "wall", "not given", "a length", "add wall(...)");
    return new Sleeve(
        outside,
        Objects.requireNonNull(span),
        Objects.requireNonNull(wall),
        bore,
        BuildDirection.AXIS_UP);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "draft of a sleeve, outside " + outside;
  }
}
