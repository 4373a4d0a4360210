package org.flexwright.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import org.flexwright.evidence.Estimate;
import org.flexwright.grade.Grade;
import org.flexwright.hardness.ShoreA;
import org.flexwright.hardness.relation.ModulusFromHardness;
import org.flexwright.quantity.Length;
import org.junit.jupiter.api.Test;

class FeelsLikeTest {

  private static final Grade GRADE = Grade.polyurethane(ShoreA.of(95).plusMinus(2));
  private static final FeelsLike<Slab> FEEL = FeelsLike.of(Slab.of(30), Slab.WALL, mm(2));

  @Test
  void thereAndBackAgain() {
    for (double points : new double[] {30, 40, 55, 70}) {
      Length wall = FEEL.size(ShoreA.of(points), GRADE, mm(0.1), mm(3));
      Estimate<ShoreA> back = FEEL.hardness(wall, GRADE);
      assertThat(back.nominal().points()).isCloseTo(points, within(1e-4));
      assertThat(back.low()).isLessThan(back.nominal());
      assertThat(back.high()).isGreaterThan(back.nominal());
    }
  }

  @Test
  void aBendingPartFollowsTheCubeOfItsWall() {
    Length wall = FEEL.size(ShoreA.of(40), GRADE, mm(0.1), mm(3));
    double rubber = ModulusFromHardness.of(ShoreA.of(40)).spread().nominal().pa();
    double expected = 2.0 * Math.cbrt(rubber / GRADE.modulusAtRest().pa());
    assertThat(wall.mm()).isCloseTo(expected, within(1e-9));
  }

  @Test
  void aHardnessOutOfReachNamesWhatIsInReach() {
    assertThatThrownBy(() -> FEEL.size(ShoreA.of(40), GRADE, mm(1.5), mm(3)))
        .hasMessageContaining("feels-like hardness is")
        .hasMessageContaining("widen the range of the wall");
  }
}
