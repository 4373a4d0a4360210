package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.flexwright.InvalidInputException;
import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Length;
import org.junit.jupiter.api.Test;

/** Random meridians: a sound mesh and a closed surface, or a refusal. */
final class RandomMeridiansPropertiesTest {

  private static final int SHAPES = 500;

  private static Length between(Random random, double low, double high) {
    return mm(low + (high - low) * random.nextDouble());
  }

  private static MeridianDraft piece(MeridianDraft draft, Random random, boolean first) {
    Length r = between(random, 2, 40);
    Length z = between(random, -10, 60);
    double way = random.nextBoolean() ? 1 : -1;
    return switch (random.nextInt(first ? 5 : 7)) {
      case 0, 1 -> draft.lineTo(r, z);
      case 2 ->
          draft.convolutions(
              0.5 * (1 + random.nextInt(6)),
              between(random, 2, 8).times(way),
              between(random, 2, 8));
      case 3 ->
          draft.sine(
              0.5 * (1 + random.nextInt(6)),
              between(random, 1, 8).times(way),
              between(random, 2, 10));
      case 4 -> draft.splineThrough(r, z, between(random, 2, 40), between(random, 0, 60));
      case 5 -> draft.arcTo(r, z);
      default -> draft.bend(between(random, 1, 10), Angle.degrees(way * 170 * random.nextDouble()));
    };
  }

  private static Meridian meridian(long seed) {
    Random random = new Random(seed);
    boolean axis = random.nextInt(3) == 0;
    MeridianDraft draft = Meridian.from(axis ? mm(0) : between(random, 5, 30), mm(0));
    if (axis) {
      draft = draft.lineTo(between(random, 2, 30), mm(0));
    }
    int count = 1 + random.nextInt(3);
    for (int i = 0; i < count; i++) {
      draft = piece(draft, random, !axis && i == 0).named("p" + random.nextInt(3));
    }
    if (random.nextInt(4) == 0) {
      draft = draft.toAxis();
    }
    double wall = 0.1 * Math.pow(20, random.nextDouble());
    if (random.nextBoolean()) {
      draft = draft.taper("p1", between(random, wall, 2 * wall), between(random, 0.5 * wall, wall));
    }
    return draft.drawn(DrawnFace.values()[random.nextInt(3)]).wall(mm(wall));
  }

  private static Optional<Meridian> built(long seed) {
    try {
      return Optional.of(meridian(seed));
    } catch (InvalidInputException e) {
      assertThat(e.sentence()).doesNotContain("NaN");
      return Optional.empty();
    }
  }

  private static void sound(Meridian of) {
    ShellMesh mesh = of.mesh(1.0);
    double volume = 0;
    for (int i = 0; i < mesh.elements(); i++) {
      WallSection.Section s = mesh.sections[i];
      double half = 0.5 * s.thickness();
      assertThat(mesh.length[i]).isPositive().isFinite();
      assertThat(s.thickness()).isPositive().isFinite();
      assertThat(mesh.radius[i]).isGreaterThanOrEqualTo(0);
      // both faces keep a length along and around
      assertThat(Math.abs(s.curvature()) * half).isLessThan(1);
      assertThat(Math.abs(s.sine()) * half).isLessThan(s.radius());
      if (i > 0) {
        double ratio = mesh.length[i] / mesh.length[i - 1];
        assertThat(Math.max(ratio, 1 / ratio)).isLessThan(Mesher.GROWTH);
      }
      volume += 2 * Math.PI * mesh.length[i] * (s.volume(half) - s.volume(-half));
    }
    double exact = of.printedVolume().m3();
    assertThat(volume).isCloseTo(exact, within(0.05 * exact));
    Triangles t = of.triangles(mm(0.01));
    double shallow = 0.01e-3 * t.area().m2();
    assertThat(t.volume().m3()).isCloseTo(exact, within(shallow));
  }

  @Property(tries = 400, seed = "23")
  void soundOrRefused(@ForAll long seed) {
    built(seed).ifPresent(RandomMeridiansPropertiesTest::sound);
  }

  @Test
  void manyAreBuiltAndManyRefused() {
    int count = 0;
    for (long seed = 0; seed < SHAPES; seed++) {
      count += built(seed).isPresent() ? 1 : 0;
    }
    assertThat(count).isBetween(SHAPES / 4, SHAPES * 9 / 10);
  }
}
