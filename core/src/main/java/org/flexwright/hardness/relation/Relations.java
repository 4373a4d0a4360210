package org.flexwright.hardness.relation;

import java.util.List;
import org.flexwright.hardness.HardnessRelation;

/**
 * The relations that the library knows.
 *
 * <pre>{@code
 * Relations.all().forEach(System.out::println);
 * }</pre>
 */
public final class Relations {

  private static final List<HardnessRelation> INDEPENDENT =
      List.of(
          new Gent1958(),
          new IrhdProbit(),
          QiJoyceBoyce2003.onShoreA(),
          QiJoyceBoyce2003.throughShoreD(),
          new SneddonCone(),
          new RadiusedCone());

  private static final List<HardnessRelation> ALL =
      List.of(
          INDEPENDENT.get(0),
          INDEPENDENT.get(1),
          INDEPENDENT.get(2),
          new KunzStuder2006(),
          INDEPENDENT.get(3),
          INDEPENDENT.get(4),
          INDEPENDENT.get(5),
          new ShoreDFormula());

  private Relations() {}

  /**
   * Every relation of the library.
   *
   * @return an immutable list, relations on rubber scales first
   */
  public static List<HardnessRelation> all() {
    return ALL;
  }

  /**
   * The relations that count as separate witnesses: all but {@link KunzStuder2006}, which is the
   * flat-ended cylinder of {@link Gent1958} on another radius, and {@link ShoreDFormula}, which is
   * the {@link SneddonCone} with rounded constants.
   *
   * @return an immutable list
   */
  public static List<HardnessRelation> independent() {
    return INDEPENDENT;
  }
}
