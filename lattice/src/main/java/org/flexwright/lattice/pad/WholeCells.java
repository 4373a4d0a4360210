package org.flexwright.lattice.pad;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.InvalidInputException;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Length;

/**
 * The counts of cells along the sides of a pad.
 *
 * @param wide along the width
 * @param deep along the depth
 * @param high along the height
 */
record WholeCells(int wide, int deep, int high) {

  private static final double SLACK = 0.01 + 1e-9;
  private static final int MOST = 1000;

  static WholeCells in(Length width, Length depth, Length height, Length edge) {
    Require.positive("footprint width", width.m(), "m");
    Require.positive("footprint depth", depth.m(), "m");
    Require.positive("pad height", height.m(), "m");
    Require.positive("cell edge", edge.m(), "m");
    int wide = count("footprint width", width, edge);
    int deep = count("footprint depth", depth, edge);
    int high = count("pad height", height, edge);
    if (!fits(width, edge) || !fits(depth, edge) || !fits(height, edge)) {
      throw new InvalidInputException(
          "cell edge",
          edge.toString(),
          "one that divides the pad of "
              + width
              + " x "
              + depth
              + " x "
              + height
              + " into whole cells within 1 %",
          advice(width, depth, height, edge));
    }
    return new WholeCells(wide, deep, high);
  }

  private static int count(String name, Length side, Length edge) {
    double n = side.ratioTo(edge);
    Require.that(
        n < MOST + 0.5,
        name,
        side,
        () -> "at most " + MOST + " cells of " + edge,
        "take a larger cell; so many cells are a solid foam");
    return (int) Math.max(1, Math.round(n));
  }

  /** Whether whole cells fill a side within 1 %. */
  private static boolean fits(Length side, Length edge) {
    double n = side.ratioTo(edge);
    long whole = Math.max(1, Math.round(n));
    return Math.abs(n - whole) <= SLACK * whole;
  }

  private static String advice(Length width, Length depth, Length height, Length edge) {
    List<Length> near = new ArrayList<>();
    int middle = (int) Math.max(1, Math.round(height.ratioTo(edge)));
    for (int step = 0; step <= middle + 1 && near.size() < 2; step++) {
      for (int n : step == 0 ? new int[] {middle} : new int[] {middle - step, middle + step}) {
        if (n >= 1 && near.size() < 2) {
          Length one = height.times(1.0 / n);
          if (fits(width, one) && fits(depth, one)) {
            near.add(one);
          }
        }
      }
    }
    if (near.isEmpty()) {
      int high = Math.max(1, middle);
      int wide = (int) Math.max(1, Math.round(width.ratioTo(height) * high));
      int deep = (int) Math.max(1, Math.round(depth.ratioTo(height) * high));
      Length one = height.times(1.0 / high);
      return "no near cell divides it; "
          + one
          + " would with a footprint of "
          + one.times(wide)
          + " x "
          + one.times(deep);
    }
    StringBuilder words = new StringBuilder("the nearest cells that do: ");
    for (int i = 0; i < near.size(); i++) {
      words.append(i == 0 ? "" : " and ").append(Text.number(near.get(i).mm(), 6)).append(" mm");
    }
    return words.toString();
  }
}
