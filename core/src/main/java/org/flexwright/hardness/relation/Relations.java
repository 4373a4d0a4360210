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
          ContactRelation.sharpConeOnD(),
          ContactRelation.roundedConeOnD());

  private static final List<HardnessRelation> ALL =
      List.of(
          INDEPENDENT.get(0),
          INDEPENDENT.get(1),
          INDEPENDENT.get(2),
          new KunzStuder2006(),
          ContactRelation.truncatedConeOnA(),
          new BattermannKoehler1982(),
          new ErrorFunctionFit(),
          new LindleyTable(),
          INDEPENDENT.get(3),
          INDEPENDENT.get(4),
          INDEPENDENT.get(5),
          new ShoreDFormula(),
          new MouldedPolyurethane());

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
   * The relations that count as separate witnesses. Not among them: {@link KunzStuder2006} and the
   * truncated cone of {@link ContactRelation}, which are the contact of {@link Gent1958} on another
   * radius; {@link BattermannKoehler1982} and {@link ErrorFunctionFit}, which follow it in its
   * range and leave it beyond; {@link ShoreDFormula}, which is the sharp cone with rounded
   * constants; {@link LindleyTable} and {@link MouldedPolyurethane}, which hold for one family of
   * materials.
   *
   * @return an immutable list
   */
  public static List<HardnessRelation> independent() {
    return INDEPENDENT;
  }
}
