package org.flexwright.hardness.relation;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.hardness.HardnessChart;
import org.flexwright.hardness.HardnessReading;
import org.flexwright.hardness.HardnessRelation;
import org.flexwright.hardness.Irhd;
import org.flexwright.hardness.ShoreA;
import org.flexwright.hardness.ShoreD;
import org.flexwright.internal.Require;
import org.jspecify.annotations.Nullable;

/** The shares of relations at one reading, by the rule that {@link ModulusFromHardness} states. */
final class Choice {

  /** Up to here only relations on rubber scales count, in points of Shore A. */
  static final double RUBBER_ALONE = 80.0;

  /** From here only relations on Shore D count, in points of Shore A. */
  static final double D_ALONE = 90.0;

  /** Over so many points beyond its range a relation loses its share to better placed ones. */
  private static final double FADE = 10.0;

  /** A relation at a reading. */
  record Member(
      HardnessRelation relation,
      HardnessReading at,
      double pascals,
      boolean rubber,
      double excess,
      double share) {

    /** This member without a share. */
    Member unshared() {
      return sharing(0.0);
    }

    private Member sharing(double newShare) {
      return new Member(relation, at, pascals, rubber, excess, newShare);
    }
  }

  private final List<Member> members;

  private Choice(List<Member> members) {
    this.members = members;
  }

  /** The relations at a reading; those whose scale the reading cannot reach are not members. */
  static Choice at(HardnessReading reading, List<HardnessRelation> relations) {
    Views views = Views.of(reading);
    List<Member> reached = new ArrayList<>(relations.size());
    for (HardnessRelation relation : relations) {
      HardnessReading at = views.on(relation);
      if (at != null) {
        reached.add(member(relation, at, views));
      }
    }
    if (reached.isEmpty()) {
      throw new InvalidInputException(
          "list of hardness relations for " + reading,
          relations.isEmpty() ? "empty" : "without one for this reading",
          "at least one relation on a scale to which the reading can be converted",
          "add a relation on " + reading.scale());
    }
    return new Choice(shared(reached, views.rubberShare()));
  }

  private static Member member(HardnessRelation relation, HardnessReading at, Views views) {
    double pascals = relation.modulus(at.points()).pa();
    Require.positive("modulus by " + relation.name(), pascals, "Pa");
    double excess = excess(relation.range(), at.points());
    boolean rubber = !(at instanceof ShoreD);
    boolean crossed = rubber && at instanceof Irhd != views.reading() instanceof Irhd;
    if (crossed) {
      excess = Math.max(excess, excess(HardnessChart.irhdRange(), at.points()));
    }
    return new Member(relation, at, pascals, rubber, excess, 0.0);
  }

  /** How far a value lies outside a range. */
  static double excess(ValidityRange range, double value) {
    return Math.max(0.0, Math.max(range.low() - value, value - range.high()));
  }

  private static List<Member> shared(List<Member> reached, double rubberShare) {
    double[] least = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
    for (Member m : reached) {
      least[family(m)] = Math.min(least[family(m)], m.excess());
    }
    double[] sum = new double[2];
    for (Member m : reached) {
      sum[family(m)] += weight(m, least);
    }
    double[] gate = {rubberShare, 1.0 - rubberShare};
    if (sum[0] == 0.0 || sum[1] == 0.0) {
      gate[0] = sum[0] == 0.0 ? 0.0 : 1.0;
      gate[1] = 1.0 - gate[0];
    }
    List<Member> result = new ArrayList<>(reached.size());
    for (Member m : reached) {
      result.add(m.sharing(gate[family(m)] * weight(m, least) / sum[family(m)]));
    }
    return result;
  }

  private static int family(Member m) {
    return m.rubber() ? 0 : 1;
  }

  private static double weight(Member m, double[] least) {
    return Math.max(0.0, 1.0 - (m.excess() - least[family(m)]) / FADE);
  }

  List<Member> members() {
    return members;
  }

  /** The natural logarithm of the nominal modulus in Pa. */
  double logNominal() {
    double sum = 0.0;
    for (Member m : members) {
      if (m.share() > 0.0) {
        sum += m.share() * Math.log(m.pascals());
      }
    }
    return sum;
  }

  /** The lowest modulus of the relations in use, in Pa. */
  double lowest() {
    double least = Double.POSITIVE_INFINITY;
    for (Member m : members) {
      least = m.share() > 0.0 ? Math.min(least, m.pascals()) : least;
    }
    return least;
  }

  /** The highest modulus of the relations in use, in Pa. */
  double highest() {
    double most = 0.0;
    for (Member m : members) {
      most = m.share() > 0.0 ? Math.max(most, m.pascals()) : most;
    }
    return most;
  }

  /** A reading as it looks on each of the scales, its tolerance left aside. */
  private record Views(HardnessReading reading, @Nullable ShoreA a, ShoreD d) {

    static Views of(HardnessReading reading) {
      if (reading instanceof ShoreD given) {
        boolean exists = given.points() < HardnessChart.topOfShoreD();
        ShoreD d = ShoreD.of(given.points());
        return new Views(reading, exists ? HardnessChart.toShoreA(d) : null, d);
      }
      ShoreA a = ShoreA.of(reading.points());
      return new Views(reading, a, HardnessChart.toShoreD(a));
    }

    @Nullable HardnessReading on(HardnessRelation relation) {
      Class<? extends HardnessReading> scale = relation.scale();
      if (scale == ShoreD.class) {
        return d;
      }
      Require.that(
          scale == ShoreA.class || scale == Irhd.class,
          "scale of relation " + relation.name(),
          scale.getSimpleName(),
          "ShoreA, ShoreD or Irhd",
          "return one of these classes from scale()");
      if (a == null) {
        return null;
      }
      return scale == ShoreA.class ? a : HardnessChart.toIrhd(a);
    }

    double rubberShare() {
      if (reading instanceof Irhd) {
        return 1.0;
      }
      double onA = a == null ? 100.0 : a.points();
      return Math.max(0.0, Math.min(1.0, (D_ALONE - onA) / (D_ALONE - RUBBER_ALONE)));
    }
  }
}
