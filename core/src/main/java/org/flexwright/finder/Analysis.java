package org.flexwright.finder;

import java.util.HashSet;
import java.util.Set;
import java.util.function.Function;
import org.flexwright.grade.Grade;
import org.flexwright.quantity.Angle;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Part;
import org.flexwright.response.Response;

/**
 * One analysis of a catalogue: what it is for, what it needs to know, and how to ask it. Open to
 * users: {@link #toTravel} makes one from any part.
 *
 * @param name what it is called, unique in its catalogue
 * @param shape what it is for
 * @param needs the dimensions that it must know
 * @param turns whether it must know the angle
 * @param ask asks it in a grade
 */
public record Analysis(String name, Shape shape, Set<Dimension> needs, boolean turns, Ask ask) {

  /** How to ask an analysis. */
  @FunctionalInterface
  public interface Ask {

    /**
     * The response for a described thing.
     *
     * @param thing the description; all needed dimensions are there
     * @param grade the material
     * @return the response
     */
    Response of(Described thing, Grade grade);
  }

  /**
   * Keeps the needs from being changed.
   *
   * @param name what it is called, unique in its catalogue
   * @param shape what it is for
   * @param needs the dimensions that it must know
   * @param turns whether it must know the angle
   * @param ask asks it in a grade
   */
  public Analysis {
    needs = Set.copyOf(needs);
  }

  /**
   * An analysis that asks a part for the described travel.
   *
   * @param name what it is called
   * @param shape what it is for
   * @param part makes the part from a description
   * @param needs the dimensions that the part needs; the travel is added
   * @return the analysis
   */
  public static Analysis toTravel(
      String name, Shape shape, Function<Described, Part<?>> part, Dimension... needs) {
    Set<Dimension> all = new HashSet<>(Set.of(needs));
    all.add(Dimension.TRAVEL);
    return new Analysis(
        name,
        shape,
        all,
        false,
        (thing, grade) ->
            part.apply(thing).respond(grade, LoadCase.toTravel(thing.get(Dimension.TRAVEL))));
  }

  /**
   * An analysis that asks a part for its limit load.
   *
   * @param name what it is called
   * @param shape what it is for
   * @param part makes the part from a description
   * @param needs the dimensions that the part needs
   * @return the analysis
   */
  public static Analysis toLimit(
      String name, Shape shape, Function<Described, Part<?>> part, Dimension... needs) {
    return new Analysis(
        name,
        shape,
        Set.of(needs),
        false,
        (thing, grade) -> part.apply(thing).respond(grade, LoadCase.toLimit()));
  }

  /**
   * An analysis that asks a part for the described angle.
   *
   * @param name what it is called
   * @param shape what it is for
   * @param part makes the part from a description
   * @param needs the dimensions that the part needs; the angle is added
   * @return the analysis
   */
  public static Analysis toAngle(
      String name, Shape shape, Function<Described, Part<?>> part, Dimension... needs) {
    return new Analysis(
        name,
        shape,
        Set.of(needs),
        true,
        (thing, grade) -> {
          Angle angle = thing.angle().orElseThrow();
          return part.apply(thing).respond(grade, LoadCase.toAngle(angle));
        });
  }

  /** One readable line. */
  @Override
  public String toString() {
    return name + ", for a " + shape;
  }
}
