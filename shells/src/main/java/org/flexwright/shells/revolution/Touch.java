package org.flexwright.shells.revolution;

import java.util.List;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;

/**
 * How a shell presses against one obstacle.
 *
 * <p>Formula: force F = sum of pressure times area over the touching elements, mean pressure F over
 * the touching area; friction holds mu F at most, an upper bound where the pressure is uneven.
 *
 * @param obstacle what is touched
 * @param length length of the touching meridian as deformed
 * @param mean mean pressure, zero if nothing touches
 * @param peak largest pressure of an element
 * @param normal the sum of all normal forces, without regard to their directions
 * @param nearest where the shell is nearest to the obstacle
 * @param patches the touching elements, from the first end on
 */
public record Touch(
    Obstacle obstacle,
    Length length,
    Pressure mean,
    Pressure peak,
    Force normal,
    Nearest nearest,
    List<Patch> patches) {

  /**
   * Where a shell is nearest to an obstacle.
   *
   * @param element counted from the first end
   * @param gap distance of the face, between elements by a parabola; about zero where it touches
   */
  public record Nearest(int element, Length gap) {

    Nearest at(int other) {
      return new Nearest(other, gap);
    }
  }

  /**
   * One element that touches.
   *
   * @param element counted from the first end
   * @param wall its wall at rest
   * @param length of its pressed face along the meridian, as deformed
   * @param pressure on that face
   */
  public record Patch(int element, Length wall, Length length, Pressure pressure) {}

  /**
   * Keeps the list from being changed.
   *
   * @param obstacle what is touched
   * @param length length of the touching meridian as deformed
   * @param mean mean pressure, zero if nothing touches
   * @param peak largest pressure of an element
   * @param normal the sum of all normal forces
   * @param nearest where the shell is nearest to the obstacle
   * @param patches the touching elements
   */
  public Touch {
    patches = List.copyOf(patches);
  }

  /**
   * The most that friction can hold against sliding along the obstacle.
   *
   * @param friction coefficient of Coulomb friction, not negative
   * @return the force
   * @throws org.flexwright.InvalidInputException if the coefficient is negative
   */
  public Force holds(double friction) {
    return Force.newtons(Require.notNegative("friction", friction, "") * normal.newtons());
  }

  /** One readable line. */
  @Override
  public String toString() {
    return obstacle + ": touches over " + length + ", mean " + mean + ", " + normal;
  }
}
