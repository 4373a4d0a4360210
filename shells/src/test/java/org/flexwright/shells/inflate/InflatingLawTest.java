package org.flexwright.shells.inflate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Caveat;
import org.flexwright.grade.Grade;
import org.flexwright.law.Deformation;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.Gent;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.law.classical.Ogden;
import org.flexwright.law.classical.Yeoh;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Part;
import org.flexwright.shells.Grades;
import org.junit.jupiter.api.Test;

final class InflatingLawTest {

  private static final Balloon BALLOON = Balloon.of(Length.mm(40), Length.mm(1));

  private static List<Caveat> said(Part<?> part, Grade grade, Length travel) {
    return part.respond(grade, LoadCase.toTravel(travel)).caveats();
  }

  /** One term of exponent -3: eight times its own tension curve at an inflation of 2. */
  @Test
  void aTensionOnlyLawIsNoLawForABalloon() {
    Grade unknown = Grade.ofLaw("o", Ogden.of(Pressure.mpa(-5), -3));
    assertThat(said(BALLOON, unknown, Length.mm(20)))
        .anyMatch(c -> c.message().contains("of that of its own tension curve"));
    Grade known = unknown.tested(Set.of(Deformation.UNIAXIAL));
    assertThatThrownBy(() -> said(BALLOON, known, Length.mm(1)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("tested in uniaxial alone");
    FlatMembrane sheet = FlatMembrane.of(Length.mm(20), Length.mm(0.5));
    assertThatThrownBy(() -> said(sheet, known, Length.mm(6)))
        .isInstanceOf(InvalidInputException.class);
    Grade rubber =
        Grade.ofLaw("n", NeoHookean.of(Pressure.mpa(1))).tested(Set.of(Deformation.UNIAXIAL));
    assertThat(said(BALLOON, rubber, Length.mm(1))).isEmpty();
  }

  /** A law that softens too much for a sheet to stand so high: said, and without a number. */
  @Test
  void aSheetBeyondItsLawSaysSo() {
    Grade soft =
        Grade.ofLaw("y", Yeoh.of(Pressure.mpa(0.2), Pressure.mpa(-0.02), Pressure.mpa(0.001)));
    List<Caveat> said = said(FlatMembrane.of(Length.mm(20), Length.mm(0.5)), soft, Length.mm(20));
    assertThat(said).anyMatch(c -> c.message().contains("carries no state to the end asked for"));
    assertThat(said).noneMatch(c -> c.toString().contains("NaN"));
  }

  /** A stretch of 2 is inside this law, though its tension would lock at the same strain. */
  @Test
  void aLawThatLocksInTensionFirstIsInflated() {
    Grade gent = Grade.ofLaw("g", Gent.of(Pressure.mpa(0.3), 10));
    assertThat(said(BALLOON, gent, Length.mm(20))).isEmpty();
  }

  /** A law of a curve has corners; the middles of twenty thousand shells do not care. */
  @Test
  void aLawWithCornersIsIntegratedToSevenDigits() {
    StrainEnergy law = Grades.polyurethane().law();
    for (double inner : new double[] {8.0, 5.0, 1.0}) {
      for (double bore : new double[] {1.05, 1.5, 2.5}) {
        double sphere = 0.0;
        double force = 0.0;
        double[] g = new double[3];
        int n = 20_000;
        double layer = (10.0 - inner) / n;
        for (int i = 0; i < n; i++) {
          double r = inner + (i + 0.5) * layer;
          double a = bore * inner;
          double l = Math.cbrt(a * a * a + r * r * r - inner * inner * inner) / r;
          law.gradient(l, l, 1.0 / (l * l), g);
          sphere += 2.0 * (g[0] - g[2] / (l * l * l)) / (l * l * r) * layer;
          double h = Math.sqrt(a * a + (r * r - inner * inner) / 1.2) / r;
          law.gradient(h, 1.2, 1.0 / (1.2 * h), g);
          force += Math.PI / 1.2 * (2.4 * g[1] - h * g[0] - g[2] / (1.2 * h)) * r * layer;
        }
        double p = new SphereWall(law, inner, 10.0).pressure(bore);
        assertThat(p).isCloseTo(sphere, within(1e-7 * sphere));
        double f = new TubeWall(law, inner, 10.0).force(bore, 1.2);
        assertThat(f).isCloseTo(force, within(1e-7 * Math.abs(force)));
      }
    }
  }
}
