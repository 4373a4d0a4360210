package org.flexwright.shells.revolution;

import java.util.Arrays;
import java.util.List;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Length;

/** The line that a meridian is drawn by: curves end to end, in pieces. Immutable. */
final class DrawnLine {

  private static final double KINK = 1e-6;
  private static final double ON_AXIS = 1e-9;

  private final List<Curve> curves;
  private final double[] start; // arc length at the start of each curve, and at the end
  private final int[] pieceOf;
  private final List<Meridian.Piece> pieces;

  /**
   * A line.
   *
   * @param curves end to end
   * @param pieceOf piece of each curve, counted from 0
   * @param names of the pieces, empty where there is none
   */
  DrawnLine(List<Curve> curves, int[] pieceOf, List<String> names) {
    this.curves = List.copyOf(curves);
    this.pieceOf = pieceOf.clone();
    start = new double[curves.size() + 1];
    for (int i = 0; i < curves.size(); i++) {
      start[i + 1] = start[i] + curves.get(i).length();
    }
    Meridian.Piece[] made = new Meridian.Piece[names.size()];
    for (int i = 0, c = 0; i < made.length; i++) {
      double from = start[c];
      while (c < pieceOf.length && pieceOf[c] == i) {
        c++;
      }
      made[i] = new Meridian.Piece(i + 1, names.get(i), Length.m(from), Length.m(start[c]));
    }
    pieces = List.of(made);
  }

  List<Meridian.Piece> pieces() {
    return pieces;
  }

  double length() {
    return start[curves.size()];
  }

  int curves() {
    return curves.size();
  }

  Curve curve(int i) {
    return curves.get(i);
  }

  /** Arc length at the start of a curve; that of the count of curves is the length. */
  double start(int i) {
    return start[i];
  }

  /** The curve at an arc length, the one before at a joint. */
  int curveAt(double s) {
    int i = Arrays.binarySearch(start, s);
    int found = i >= 0 ? i - 1 : -i - 2;
    return Math.max(0, Math.min(found, curves.size() - 1));
  }

  /** A point of a curve; beyond its ends straight on. */
  Spot at(int i, double s) {
    Curve curve = curves.get(i);
    double in = s - start[i];
    if (in < 0.0) {
      return curve.at(0.0).ahead(in);
    }
    double over = in - curve.length();
    Spot at = over > 0.0 ? curve.at(curve.length()).ahead(over) : curve.at(in);
    return Math.abs(at.r()) <= ON_AXIS * length()
        ? new Spot(0.0, at.z(), at.angle(), at.curvature())
        : at;
  }

  /** The turn between a curve and the next one, positive to the left; 0 where it is smooth. */
  double turn(int i) {
    Curve curve = curves.get(i);
    double turn =
        Spot.near(curves.get(i + 1).at(0.0).angle() - curve.at(curve.length()).angle(), 0.0);
    return Math.abs(turn) < KINK ? 0.0 : turn;
  }

  int piece(int curve) {
    return pieceOf[curve];
  }

  boolean startsOnAxis() {
    return at(0, 0.0).r() == 0.0;
  }

  boolean endsOnAxis() {
    return at(curves.size() - 1, length()).r() == 0.0;
  }

  /** A place in words. */
  String place(int curve, double s) {
    double inside = Math.min(Math.max(s, 0.0), length());
    return pieces.get(pieceOf[curve]).label() + ", " + Text.number(1e3 * inside) + " mm along";
  }
}
