package org.flexwright.response;

import java.util.function.BiFunction;
import java.util.function.Function;
import org.flexwright.quantity.Length;

/**
 * A free dimension of a part.
 *
 * <p>Immutable and thread-safe as long as the functions are.
 *
 * @param <P> the part
 */
public final class Lever<P> {

  private final String name;
  private final Function<P, Length> get;
  private final BiFunction<P, Length, P> set;

  private Lever(String name, Function<P, Length> get, BiFunction<P, Length, P> set) {
    this.name = name;
    this.get = get;
    this.set = set;
  }

  /**
   * A lever from a getter and a wither.
   *
   * @param name the name for tables
   * @param get reads the dimension
   * @param set makes the part with another value
   * @param <P> the part
   * @return the lever
   */
  public static <P> Lever<P> of(
      String name, Function<P, Length> get, BiFunction<P, Length, P> set) {
    return new Lever<>(name, get, set);
  }

  /**
   * The name for tables.
   *
   * @return the name
   */
  public String name() {
    return name;
  }

  /**
   * The value in a part.
   *
   * @param part the part
   * @return the dimension
   */
  public Length of(P part) {
    return get.apply(part);
  }

  /**
   * The part with another value.
   *
   * @param part the part
   * @param value the new value
   * @return the new part
   */
  public P set(P part, Length value) {
    return set.apply(part, value);
  }

  /** The name. */
  @Override
  public String toString() {
    return name;
  }
}
