package org.flexwright.response;

import java.util.List;
import java.util.Optional;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Volume;
import org.flexwright.run.RunControl;

/**
 * A part that can be asked how it responds. Open to users: implement it for a part of your own.
 *
 * <p>Parts are immutable; a changed dimension is a new part, see {@link Lever}.
 *
 * @param <P> the part's own type
 */
public interface Part<P extends Part<P>> {

  /** The name of the input to blame when a part cannot be asked a kind of load. */
  String LOAD_CASE = "load case";

  /**
   * The response of the part in a grade.
   *
   * @param grade the material
   * @param load what is asked
   * @param run progress and stop
   * @return the response; outside a model's range it carries caveats
   * @throws org.flexwright.InvalidInputException if the part cannot be asked this; where the kind
   *     of load is at fault the quantity named is {@link #LOAD_CASE}
   */
  Response respond(Grade grade, LoadCase load, RunControl run);

  /**
   * The response of the part in a grade, unwatched.
   *
   * @param grade the material
   * @param load what is asked
   * @return the response
   */
  default Response respond(Grade grade, LoadCase load) {
    return respond(grade, load, RunControl.none());
  }

  /**
   * The dimensions that are free to choose.
   *
   * @return the levers
   */
  List<Lever<P>> levers();

  /**
   * This part made ready to be asked at many sizes. A part that is solved may gather beforehand
   * what its answers have in common; its answers stay within the bands they state.
   *
   * @param lever the dimension that will vary
   * @param least its least value
   * @param most its greatest value
   * @return a part with the same dimensions, or nothing if being ready makes no difference
   */
  default Optional<P> prepared(Lever<P> lever, Length least, Length most) {
    return Optional.empty();
  }

  /**
   * The volume of material.
   *
   * @return the volume
   */
  Volume printedVolume();

  /**
   * The thinnest feature, which the process must be able to make.
   *
   * @return the feature
   */
  Feature thinnest();

  /**
   * The same part at the extremes of its service that are not dimensions of its own: the widest
   * bore, the wettest contact. A sure answer must hold in all of them.
   *
   * @return the variants, empty if service changes nothing
   */
  default List<P> serviceExtremes() {
    return List.of();
  }
}
