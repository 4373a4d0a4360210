package org.flexwright.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.law.LawFamily;

/**
 * What the data of a fit say about the constants: their scatter, and which of them cannot be told
 * apart.
 *
 * <p>Formula: J the derivatives of the weighted residuals by the constants, D its column lengths, J
 * D^-1 = U S V' (singular values); covariance = s^2 D^-1 V S^-2 V' D^-1 with s^2 the weighted sum
 * of squares over points less constants. A constant whose own size moves the curves by less than
 * 1e-7, or a direction with a singular value below 1e-7 of the greatest, leaves the curves
 * unchanged: the data say nothing about it, and the constants in it have no standard error.
 * Constants held at a bound are left out.
 *
 * <p>Symbols: the covariance is in the units of the constants (Pa for a stress). Range: errors
 * small enough for the curves to follow the constants linearly; errors of the points independent,
 * and alike in the weighting of the fit. A law that misses the trend of the data has residuals that
 * are not independent; the errors are then too small. Source: the linear theory of least squares.
 *
 * <p>JShell: {@code fitted.identifiability().statements()}
 */
public final class Identifiability {

  private static final double NOTHING = 1e-7;
  private static final double HARDLY = 1e-3;
  private static final double INVOLVED = 0.05;
  private static final double DETERMINED = 1e-5;

  private final List<LawFamily.Constant> constants;
  private final List<String> names;
  private final int notHeld;
  // those not held that have any effect
  private final int[] free;
  private final double[] singular;
  private final double[][] covariance;
  private final boolean[] determined;
  private final boolean scatter;
  private final List<String> statements;

  /**
   * From derivatives.
   *
   * @param constants all constants of the family
   * @param unheld those not held at a bound
   * @param size a size of each of these, in its unit
   * @param jacobian the derivatives of the weighted residuals by these, changed
   * @param signal the length of the vector of weighted stresses
   * @param variance of a weighted residual
   * @param data the deformations in words
   */
  Identifiability(
      List<LawFamily.Constant> constants,
      int[] unheld,
      double[] size,
      double[][] jacobian,
      double signal,
      OptionalDouble variance,
      String data) {
    this.constants = List.copyOf(constants);
    names = constants.stream().map(LawFamily.Constant::name).toList();
    covariance = new double[names.size()][names.size()];
    determined = new boolean[names.size()];
    scatter = variance.isPresent();
    notHeld = unheld.length;
    double[] all = Search.scaleColumns(jacobian);
    List<String> said = new ArrayList<>();
    int[] telling =
        IntStream.range(0, notHeld).filter(c -> all[c] * size[c] > NOTHING * signal).toArray();
    free = IntStream.of(telling).map(c -> unheld[c]).toArray();
    for (int c = 0; c < notHeld; c++) {
      if (all[c] * size[c] <= NOTHING * signal) {
        said.add(data + " data alone cannot tell " + names.get(unheld[c]));
      }
    }
    double[] length = IntStream.of(telling).mapToDouble(c -> all[c]).toArray();
    for (int c : free) {
      determined[c] = true;
    }
    singular = new double[free.length];
    if (free.length > 0) {
      decompose(columns(jacobian, telling), length, variance.orElse(0.0), said, data);
    }
    statements = List.copyOf(said);
  }

  private static double[][] columns(double[][] all, int[] which) {
    double[][] some = new double[all.length][which.length];
    for (int k = 0; k < all.length; k++) {
      for (int c = 0; c < which.length; c++) {
        some[k][c] = all[k][which[c]];
      }
    }
    return some;
  }

  private void decompose(
      double[][] unit, double[] length, double variance, List<String> said, String data) {
    SingularValueDecomposition svd =
        new SingularValueDecomposition(new Array2DRowRealMatrix(unit, false));
    System.arraycopy(svd.getSingularValues(), 0, singular, 0, free.length);
    double[][] v = svd.getV().getData();
    for (int s = 0; s < free.length; s++) {
      double[] direction = column(v, s);
      if (s < rank()) {
        add(direction, length, variance / (singular[s] * singular[s]));
      } else {
        leaveOut(direction);
      }
      if (!(singular[s] >= HARDLY * singular[0])) {
        said.add(words(direction, length, s >= rank(), data));
      }
    }
  }

  private static double[] column(double[][] v, int s) {
    double[] column = new double[v.length];
    for (int c = 0; c < v.length; c++) {
      column[c] = v[c][s];
    }
    return column;
  }

  private void add(double[] direction, double[] length, double factor) {
    for (int a = 0; a < free.length; a++) {
      for (int b = 0; b < free.length; b++) {
        covariance[free[a]][free[b]] +=
            factor * direction[a] / length[a] * direction[b] / length[b];
      }
    }
  }

  private void leaveOut(double[] direction) {
    for (int c = 0; c < free.length; c++) {
      determined[free[c]] &= Math.abs(direction[c]) < DETERMINED;
    }
  }

  private String words(double[] direction, double[] length, boolean nothing, String data) {
    List<Integer> involved = new ArrayList<>();
    for (int c = 0; c < free.length; c++) {
      if (Math.abs(direction[c]) > INVOLVED) {
        involved.add(c);
      }
    }
    String much = nothing ? "cannot" : "can hardly";
    if (involved.size() == 1) {
      return data + " data alone " + much + " tell " + name(involved.get(0));
    }
    List<String> which = involved.stream().map(this::name).toList();
    String all =
        data
            + " data alone "
            + much
            + " separate "
            + String.join(", ", which.subList(0, which.size() - 1))
            + " from "
            + which.get(which.size() - 1);
    if (which.size() != 2) {
      return all;
    }
    int a = involved.get(0);
    int b = involved.get(1);
    if (constants.get(free[a]).kind() != constants.get(free[b]).kind()) {
      return all;
    }
    // moving along the direction leaves a + factor b as it is
    double factor = -(direction[a] / length[a]) / (direction[b] / length[b]);
    return all + "; " + (nothing ? "only " : "mainly ") + sum(a, b, factor) + " is known";
  }

  private String sum(int a, int b, double factor) {
    String sign = factor < 0.0 ? " - " : " + ";
    String number = Text.number(Math.abs(factor), 3);
    return name(a) + sign + (number.equals("1") ? "" : number + " ") + name(b);
  }

  private String name(int c) {
    return names.get(free[c]);
  }

  private int index(String name) {
    int at = names.indexOf(name);
    Require.that(at >= 0, "name of a constant", name, () -> "one of " + names, "");
    return at;
  }

  /**
   * The number of combinations of the free constants that the data determine.
   *
   * @return the rank of the derivatives
   */
  public int rank() {
    return (int) Arrays.stream(singular).filter(s -> s > NOTHING * singular[0]).count();
  }

  /**
   * The number of constants not held at a bound.
   *
   * @return the number
   */
  public int free() {
    return notHeld;
  }

  /**
   * The greatest over the least singular value of the derivatives with columns of length 1.
   *
   * @return 1 for constants that do not disturb each other, infinity if the rank is not full
   */
  public double condition() {
    if (notHeld == 0) {
      return 1.0;
    }
    return rank() < notHeld
        ? Double.POSITIVE_INFINITY
        : singular[0] / singular[singular.length - 1];
  }

  /**
   * Which constants the data cannot tell apart, or hardly, in words.
   *
   * @return one sentence for each such direction, none if all are well known
   */
  public List<String> statements() {
    return statements;
  }

  /**
   * The covariance of two constants.
   *
   * @param first the name of a constant
   * @param second the name of a constant, the same for a variance
   * @return the covariance in the product of their units, nothing if one of them is held at a bound
   *     or not determined by the data, or if there are no more points than constants
   * @throws org.flexwright.InvalidInputException if a name is not known
   */
  public OptionalDouble covariance(String first, String second) {
    int a = index(first);
    int b = index(second);
    return scatter && determined[a] && determined[b]
        ? OptionalDouble.of(covariance[a][b])
        : OptionalDouble.empty();
  }

  /**
   * The standard error of a constant.
   *
   * @param name the name of a constant
   * @return the error in its unit, nothing as for {@link #covariance}
   * @throws org.flexwright.InvalidInputException if the name is not known
   */
  public OptionalDouble standardError(String name) {
    OptionalDouble square = covariance(name, name);
    return square.isPresent()
        ? OptionalDouble.of(Math.sqrt(square.getAsDouble()))
        : OptionalDouble.empty();
  }

  /**
   * The correlation of the errors of two constants.
   *
   * @param first the name of a constant
   * @param second the name of a constant
   * @return -1 to 1, nothing as for {@link #covariance} or without any scatter
   * @throws org.flexwright.InvalidInputException if a name is not known
   */
  public OptionalDouble correlation(String first, String second) {
    OptionalDouble both = covariance(first, second);
    double errors = standardError(first).orElse(0.0) * standardError(second).orElse(0.0);
    return both.isPresent() && errors > 0.0
        ? OptionalDouble.of(Math.max(-1.0, Math.min(1.0, both.getAsDouble() / errors)))
        : OptionalDouble.empty();
  }

  /** Rank, condition and the statements. */
  @Override
  public String toString() {
    String head = "rank " + rank() + " of " + free() + ", condition " + Text.number(condition(), 3);
    return statements.isEmpty() ? head : head + ": " + String.join("; ", statements);
  }
}
