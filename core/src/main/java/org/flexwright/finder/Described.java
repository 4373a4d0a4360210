package org.flexwright.finder;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import org.flexwright.InvalidInputException;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Length;

/**
 * A wall, a block or a lattice, described by what is known about it. Any set of dimensions will do;
 * the finder says which analyses need more.
 *
 * <p>Immutable and thread-safe.
 *
 * <p>JShell: {@code Described.as(Shape.TUBE).with(Dimension.WALL, mm(1)).with(Dimension.RADIUS,
 * mm(10))}
 */
public final class Described {

  private final Shape shape;
  private final Map<Dimension, Length> sizes;
  private final int count;
  private final Optional<Angle> angle;

  private Described(Shape shape, Map<Dimension, Length> sizes, int count, Optional<Angle> angle) {
    this.shape = shape;
    this.sizes = Collections.unmodifiableMap(sizes);
    this.count = count;
    this.angle = angle;
  }

  /**
   * Starts a description.
   *
   * @param shape what it is
   * @return a description without dimensions
   */
  public static Described as(Shape shape) {
    return new Described(shape, new EnumMap<>(Dimension.class), 1, Optional.empty());
  }

  /**
   * With one more dimension.
   *
   * @param dimension which one
   * @param size its size, above 0
   * @return the new description
   * @throws InvalidInputException if the size is not above 0
   */
  public Described with(Dimension dimension, Length size) {
    Require.positive(dimension.toString(), size.m(), "m");
    Map<Dimension, Length> more = copy();
    more.put(dimension, size);
    return new Described(shape, more, count, angle);
  }

  /**
   * With a count of like pieces: the convolutions of a bellows.
   *
   * @param of the count, at least 1
   * @return the new description
   * @throws InvalidInputException if the count is below 1
   */
  public Described count(int of) {
    return new Described(shape, copy(), Require.atLeast("count", of, 1), angle);
  }

  /**
   * With the angle that it is turned to.
   *
   * @param of the angle, above 0
   * @return the new description
   * @throws InvalidInputException if the angle is not above 0
   */
  public Described turnedTo(Angle of) {
    Require.positive("angle", of.rad(), "rad");
    return new Described(shape, copy(), count, Optional.of(of));
  }

  private Map<Dimension, Length> copy() {
    Map<Dimension, Length> copy = new EnumMap<>(Dimension.class);
    copy.putAll(sizes);
    return copy;
  }

  /**
   * What it is.
   *
   * @return the shape
   */
  public Shape shape() {
    return shape;
  }

  /**
   * Whether a dimension is known.
   *
   * @param dimension which one
   * @return true if known
   */
  public boolean has(Dimension dimension) {
    return sizes.containsKey(dimension);
  }

  /**
   * A known dimension.
   *
   * @param dimension which one
   * @return its size
   * @throws InvalidInputException if it is not known
   */
  public Length get(Dimension dimension) {
    Length size = sizes.get(dimension);
    if (size == null) {
      throw new InvalidInputException(
          dimension.toString(), "not given", "a length", "describe it with(...)");
    }
    return size;
  }

  /**
   * The count of like pieces.
   *
   * @return the count, 1 unless told
   */
  public int count() {
    return count;
  }

  /**
   * The angle that it is turned to.
   *
   * @return the angle, if told
   */
  public Optional<Angle> angle() {
    return angle;
  }

  /** One readable line. */
  @Override
  public String toString() {
    StringJoiner line = new StringJoiner(", ");
    line.add(count == 1 ? shape.toString() : count + " x " + shape);
    sizes.forEach((d, l) -> line.add(d + " " + l));
    angle.ifPresent(a -> line.add("turned to " + a));
    return line.toString();
  }
}
