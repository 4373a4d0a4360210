package org.flexwright.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.flexwright.InvalidInputException;
import org.flexwright.grade.Grade;
import org.flexwright.hardness.ShoreD;
import org.flexwright.law.classical.Gent;
import org.flexwright.law.classical.MooneyRivlin;
import org.flexwright.law.classical.MooneyRivlinPolynomial;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.law.classical.Ogden;
import org.flexwright.quantity.Pressure;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class StabilityTest {

  @RegisterExtension
  static final VerificationTable TABLE = VerificationTable.of(StabilityTest.class, "stability.csv");

  static final StrainEnergy MR_A = mooney(0.2588, -0.0449);
  static final StrainEnergy MR_B = mooney(0.2348, -0.065);
  static final StrainEnergy OGDEN_T =
      Ogden.of(Pressure.mpa(-79.56), -1.8223)
          .and(Pressure.mpa(4.39e-6), 7.7609)
          .and(Pressure.mpa(80.83), -1.7775);
  static final StrainEnergy OGDEN =
      Ogden.of(Pressure.mpa(0.63), 1.3).and(Pressure.mpa(0.0012), 5).and(Pressure.mpa(-0.01), -2);

  static Stream<ReferenceCase> cases() {
    return TABLE.cases();
  }

  static StrainEnergy mooney(double c10, double c01) {
    return MooneyRivlinPolynomial.of(Pressure.mpa(c10), Pressure.mpa(c01), Pressure.mpa(0));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void meetsReferenceValue(ReferenceCase c) {
    StrainEnergy law =
        switch (c.text("law")) {
          case "mr-a" -> MR_A;
          case "mr-b" -> MR_B;
          case "ogden-t" -> OGDEN_T;
          default -> throw new IllegalArgumentException(c.text("law"));
        };
    Deformation mode = Deformation.valueOf(c.text("mode").toUpperCase(Locale.ROOT));
    Stability stability = Stability.of(law);
    OptionalDouble limit =
        c.text("side").equals("tension")
            ? stability.tensionLimit(mode)
            : stability.compressionLimit(mode);
    TABLE.check(c, limit.orElseThrow());
  }

  /** Blank places of the same scans: stable to 7.5, 4.5, 5.5 and down to 0.12. */
  @Test
  void lawsThatAScanFoundStableAreStable() {
    double[] far = {7.5, 4.5, 5.5};
    StrainEnergy yeoh = new FirstInvariant(0.1755355e6, -0.001878527e6, 4.632237e-5 * 1e6);
    for (StrainEnergy law : new StrainEnergy[] {mooney(0.1713, 0.0047), OGDEN, yeoh}) {
      for (Deformation mode : Deformation.values()) {
        Stability s = Stability.of(law);
        assertThat(s.tensionLimit(mode).orElse(20)).isGreaterThan(far[mode.ordinal()]);
        assertThat(s.compressionLimit(mode).orElse(0)).isLessThan(0.23);
      }
    }
    Stability tension = Stability.of(OGDEN_T);
    assertThat(tension.tensionLimit(Deformation.UNIAXIAL).orElse(20)).isGreaterThan(7.5);
    assertThat(tension.tensionLimit(Deformation.PLANAR).orElse(20)).isGreaterThan(5.5);
    assertThat(tension.compressionLimit(Deformation.PLANAR).orElse(0)).isLessThan(0.182);
  }

  /** MR with a negative second constant: the equibiaxial stress itself falls to zero here. */
  @Test
  void equibiaxialStressOfTheTensionFitVanishes() {
    double stretch = Math.sqrt(0.2588 / 0.0449);
    assertThat(stretch).isCloseTo(2.4008, within(5e-5));
    assertThat(Deformation.EQUIBIAXIAL.nominalStress(MR_A, stretch).pa())
        .isCloseTo(0, within(1e-8));
    assertThat(Deformation.EQUIBIAXIAL.nominalStress(MR_A, 0.99 * stretch).pa()).isPositive();
    assertThat(Deformation.EQUIBIAXIAL.nominalStress(MR_A, 1.01 * stretch).pa()).isNegative();
  }

  static Stream<StrainEnergy> laws() {
    return Stream.of(
        NeoHookean.of(Pressure.mpa(0.4)),
        MooneyRivlin.of(Pressure.mpa(0.16), Pressure.mpa(0.04)),
        MR_A,
        OGDEN,
        OGDEN_T,
        Gent.of(Pressure.mpa(0.27), 20),
        new FirstInvariant(0.2e6, -0.02e6, 0.0006e6),
        new FirstInvariant(0.2e6, -0.02e6, 0.002e6),
        Ogden.of(Pressure.mpa(1), 0.3),
        Ogden.of(Pressure.mpa(-1), -0.5),
        Ogden.of(Pressure.mpa(0.3), 6).and(Pressure.mpa(-0.2), -5),
        Grade.polyurethane(ShoreD.of(40)).law());
  }

  /** At rest every measure is 1, whatever the law. */
  @ParameterizedTest
  @MethodSource("laws")
  void everyMeasureIsOneAtRest(StrainEnergy law) {
    BiaxialStretch rest = new BiaxialStretch(1, 1);
    Stability s = Stability.of(law);
    assertThat(s.stiffness(rest)).isCloseTo(1, within(1e-9));
    assertThat(s.uniqueness(rest)).isCloseTo(1, within(1e-9));
    assertThat(s.ellipticity(rest)).isCloseTo(1, within(1e-9));
  }

  /**
   * Strong ellipticity by brute force: the least of the acoustic form over a grid of normals, with
   * the slip that is worst for each. The grid finds a loss only if its dip is wider than the grid,
   * so states whose measure is within 0.02 of zero are left out.
   */
  @ParameterizedTest
  @MethodSource("laws")
  void strongEllipticityIsThatOfAScanOfAllDirections(StrainEnergy law) {
    SplittableRandom random = new SplittableRandom(1983);
    Stability s = Stability.of(law);
    int lost = 0;
    int judged = 0;
    for (int k = 0; k < 120; k++) {
      double l1 = Math.exp(random.nextDouble(-1.2, 1.2));
      double l2 = Math.exp(random.nextDouble(-1.2, 1.2));
      BiaxialStretch state = new BiaxialStretch(l1, l2);
      if (!Double.isFinite(law.energy(l1, l2, 1 / (l1 * l2)))) {
        continue;
      }
      double margin = s.ellipticity(state);
      if (Math.abs(margin) < 0.02) {
        continue;
      }
      double scanned = Acoustic.least(law, l1, l2, 40) / law.shearModulus();
      assertThat(scanned > 0)
          .as("%s at %s: margin %s, scan %s", law, state, margin, scanned)
          .isEqualTo(margin > 0);
      judged++;
      lost += margin > 0 ? 0 : 1;
    }
    assertThat(judged).isGreaterThan(60);
    if (law instanceof Ogden o && o.terms().size() == 1) {
      assertThat(lost).as("states in which %s is not elliptic", law).isPositive();
    }
  }

  /**
   * The same with any derivatives whatever, among them states that hold in the principal planes and
   * are lost in a direction between them.
   */
  @Test
  void strongEllipticityHoldsForAnyDerivatives() {
    SplittableRandom random = new SplittableRandom(1990);
    int lost = 0;
    int held = 0;
    int between = 0;
    for (int k = 0; k < 600; k++) {
      LocalLaw law = LocalLaw.random(random);
      BiaxialStretch state = new BiaxialStretch(law.at[0], law.at[1]);
      double margin = Stability.of(law).ellipticity(state);
      if (Math.abs(margin) < 0.02) {
        continue;
      }
      double scan = Acoustic.least(law, state.l1(), state.l2(), 60);
      assertThat(scan > 0).as("margin %s, scan %s", margin, scan).isEqualTo(margin > 0);
      lost += margin > 0 ? 0 : 1;
      held += margin > 0 ? 1 : 0;
      if (margin < 0 && Acoustic.leastInPlanes(law, state.l1(), state.l2(), 200) > 0) {
        between++;
      }
    }
    assertThat(lost).isGreaterThan(100);
    assertThat(held).isGreaterThan(50);
    assertThat(between).isGreaterThan(5);
  }

  /** For W(I1) the condition is W1 > 0 and W1 + 2 W11 (lmax - lmin)^2 > 0, exactly. */
  @Test
  void strongEllipticityOfFirstInvariantLawsIsTheKnownOne() {
    SplittableRandom random = new SplittableRandom(1977);
    FirstInvariant law = new FirstInvariant(0.2e6, -0.02e6, 0.0008e6);
    int lost = 0;
    for (int k = 0; k < 5000; k++) {
      double[] l = new double[3];
      l[0] = Math.exp(random.nextDouble(-1.2, 1.2));
      l[1] = k % 10 == 0 ? l[0] : Math.exp(random.nextDouble(-1.2, 1.2));
      l[2] = 1 / (l[0] * l[1]);
      double i1 = l[0] * l[0] + l[1] * l[1] + l[2] * l[2];
      double spread = Math.max(l[0], Math.max(l[1], l[2])) - Math.min(l[0], Math.min(l[1], l[2]));
      double known = Math.min(law.first(i1), law.first(i1) + 2 * law.second(i1) * spread * spread);
      boolean elliptic = Stability.of(law).ellipticity(new BiaxialStretch(l[0], l[1])) > 0;
      if (Math.abs(known) > 1e-6 * 0.2e6) {
        assertThat(elliptic).isEqualTo(known > 0);
      }
      lost += known > 0 ? 0 : 1;
    }
    assertThat(lost).isBetween(500, 4500);
  }

  /** Equal stretches are a limit of unequal ones: the measures do not jump there. */
  @ParameterizedTest
  @MethodSource("laws")
  void measuresAreSmoothWhereStretchesMeet(StrainEnergy law) {
    for (double l : new double[] {0.8, 1.0, 1.3}) {
      Stability s = Stability.of(law);
      double equal = s.ellipticity(new BiaxialStretch(l, l));
      for (double d : new double[] {1e-8, 1e-6, 1.9e-5, 2.1e-5, 1e-4}) {
        assertThat(s.ellipticity(new BiaxialStretch(l * (1 + d), l)))
            .isCloseTo(equal, within(50 * d + 1e-8));
      }
    }
  }

  /** The least eigenvalue against second differences of the energy on the plane of volume. */
  @ParameterizedTest
  @MethodSource("laws")
  void stiffnessIsThatOfSecondDifferences(StrainEnergy law) {
    double[][] states = {{1, 1}, {1.2, 1.1}, {0.8, 0.9}, {1.3, 0.75}};
    for (double[] l : states) {
      double least = Double.POSITIVE_INFINITY;
      double h = 1e-3;
      for (int k = 0; k < 720; k++) {
        double angle = Math.PI * k / 720;
        double u = Math.cos(angle) / Math.sqrt(2);
        double v = Math.sin(angle) / Math.sqrt(6);
        double a = h * (u + v);
        double b = h * (v - u);
        double second =
            (law.energy(l[0] * Math.exp(a), l[1] * Math.exp(b), Math.exp(-a - b) / (l[0] * l[1]))
                    + law.energy(
                        l[0] * Math.exp(-a), l[1] * Math.exp(-b), Math.exp(a + b) / (l[0] * l[1]))
                    - 2 * law.energy(l[0], l[1], 1 / (l[0] * l[1])))
                / (h * h);
        least = Math.min(least, second);
      }
      // truncation h^2 times the fourth derivative over the second, about (2 alpha)^2 of the law
      assertThat(Stability.of(law).stiffness(new BiaxialStretch(l[0], l[1])))
          .isCloseTo(least / (2 * law.shearModulus()), within(2e-3));
    }
  }

  @Test
  void aSheetOfMooneyRivlinGivesWayUnderEqualPulls() {
    double c10 = 0.16;
    double c01 = 0.04;
    StrainEnergy law = MooneyRivlin.of(Pressure.mpa(c10), Pressure.mpa(c01));
    for (double l : new double[] {1, 1.5, 2, 2.5, 3, 4}) {
      // w = C10 (a^2 + b^2 + 1/(a b)^2) + C01 (1/a^2 + 1/b^2 + a^2 b^2), w_aa - w_ab at a = b = l
      double byHand = 2 * c10 * (1 + Math.pow(l, -6)) + c01 * (6 * Math.pow(l, -4) - 2 * l * l);
      assertThat(Stability.of(law).uniqueness(new BiaxialStretch(l, l)) * 2 * law.shearModulus())
          .isCloseTo(1e6 * byHand, within(1e-3));
    }
  }

  @Test
  void theMapShowsWhatHolds() {
    StabilityMap map = Stability.of(MR_A).map(0.5, 3, 6);
    assertThat(map.rows().get(1).get(1)).isEqualTo(StabilityMap.State.STABLE);
    assertThat(map.count(StabilityMap.State.STABLE)).isBetween(3L, 30L);
    for (int i = 0; i < 6; i++) {
      for (int j = 0; j < 6; j++) {
        assertThat(map.rows().get(i).get(j)).isEqualTo(map.rows().get(j).get(i));
        BiaxialStretch at = new BiaxialStretch(map.stretches().get(i), map.stretches().get(j));
        boolean stable = Stability.of(MR_A).stiffness(at) > 0;
        assertThat(map.rows().get(i).get(j) == StabilityMap.State.STABLE && !stable).isFalse();
      }
    }
    assertThat(map.table().lines()).hasSize(7);
    assertThat(map.table()).startsWith("l1 \\ l2");
    assertThat(map.toString()).contains("of 36 states stable, stretches 0.5 to 3");
    StabilityMap gent = Stability.of(Gent.of(Pressure.mpa(1), 2)).map(0.5, 4, 8);
    assertThat(gent.rows().get(7).get(7)).isEqualTo(StabilityMap.State.LOCKED);
    assertThat(gent.rows().get(1).get(1)).isEqualTo(StabilityMap.State.STABLE);
    assertThatThrownBy(() -> Stability.of(MR_A).map(2, 1, 3))
        .isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(() -> Stability.of(MR_A).map(1, 2, 1))
        .isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(
            () -> Stability.of(Gent.of(Pressure.mpa(1), 2)).stiffness(new BiaxialStretch(4, 4)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("finite stress");
  }

  /** A short loss between two steps of the scan is not stepped over. */
  @Test
  void aShortLossIsFound() {
    StrainEnergy law = new Dip();
    double found = Stability.of(law).tensionLimit(Deformation.UNIAXIAL).orElseThrow();
    double first = 0;
    for (double e = 0; e < 3; e += 1e-5) {
      double l = Math.exp(e);
      double side = 1 / Math.sqrt(l);
      if (new StateStiffness(law).at(l, side, side).drucker() <= 0) {
        first = l;
        break;
      }
    }
    assertThat(found).isCloseTo(first, within(1e-4));
    double end = first;
    while (new StateStiffness(law).at(end, 1 / Math.sqrt(end), 1 / Math.sqrt(end)).drucker() <= 0) {
      end *= 1.0001;
    }
    // shorter than any step of the scan
    assertThat(Math.log(end / first)).isLessThan(0.05);
  }

  @Test
  void rangeEndsBeforeLockingAndBeforeInstability() {
    Gent law = Gent.of(Pressure.mpa(0.3), 20);
    StretchRange range = Stability.range(law);
    assertThat(range.reason()).contains("locking");
    // locking in the worst state: 2 l^2 + l^-4 - 3 = Jm
    double lock = 3.39061;
    assertThat(2 * lock * lock + Math.pow(lock, -4) - 3).isCloseTo(20, within(1e-3));
    assertThat(range.high()).isCloseTo(1 + 0.97 * (lock - 1), within(1e-4));
    assertThat(Stability.range(MR_A).high()).isLessThan(1.741844064).isGreaterThan(1.74184406);
    assertThat(Stability.range(NeoHookean.of(Pressure.mpa(1))).high()).isCloseTo(20, within(1e-6));
  }
}
