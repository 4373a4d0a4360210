package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import org.flexwright.InvalidInputException;
import org.flexwright.response.Lever;
import org.junit.jupiter.api.Test;

/** The wall as a lever: the drawn face stays. */
final class MeridianLeversTest {

  private static Meridian sleeve() {
    return Meridian.from(mm(10), mm(0))
        .lineTo(mm(10), mm(6))
        .lineTo(mm(10), mm(24))
        .named("sleeve")
        .lineTo(mm(10), mm(30))
        .wall("sleeve", mm(0.8))
        .blend(mm(0.5))
        .wall(mm(2));
  }

  /** Radius of the outer and the inner face of the mesh at a height, from its middle and wall. */
  private static void faces(Meridian of, double z, double outer, double inner) {
    ShellMesh mesh = of.mesh(1.0);
    for (int i = 0; i < mesh.elements(); i++) {
      if (mesh.height[i] * 1e3 <= z && mesh.height[i + 1] * 1e3 >= z) {
        double middle = 0.5e3 * (mesh.radius[i] + mesh.radius[i + 1]);
        double half = 0.5e3 * mesh.sections[i].thickness();
        assertThat(middle + half).isCloseTo(outer, within(1e-9));
        assertThat(middle - half).isCloseTo(inner, within(1e-9));
      }
    }
  }

  @Test
  void theUsualWallLeavesZonesAndTheDrawnFace() {
    assertThat(Meridian.WALL.of(sleeve())).isEqualTo(mm(2));
    Meridian thick = Meridian.WALL.set(sleeve(), mm(3));
    faces(thick, 3, 10, 7);
    faces(thick, 15, 10, 9.2);
    Meridian inside =
        Meridian.from(mm(5), mm(0)).lineTo(mm(5), mm(9)).drawn(DrawnFace.INNER).wall(mm(1));
    faces(Meridian.WALL.set(inside, mm(2)), 4, 7, 5);
  }

  @Test
  void theWallOfANameLeavesTheRest() {
    Lever<Meridian> lever = Meridian.wallOf("sleeve");
    assertThat(lever.name()).isEqualTo("wall of sleeve");
    assertThat(lever.of(sleeve()).mm()).isCloseTo(0.8, within(1e-12));
    Meridian thin = lever.set(sleeve(), mm(0.5));
    assertThat(lever.of(thin).mm()).isCloseTo(0.5, within(1e-12));
    assertThat(Meridian.WALL.of(thin)).isEqualTo(mm(2));
    faces(thin, 3, 10, 8);
    faces(thin, 15, 10, 9.5);
    Meridian tapered = sleeve().taper("sleeve", mm(0.6), mm(1));
    assertThat(lever.of(tapered).mm()).isCloseTo(0.8, within(1e-12));
    faces(lever.set(tapered, mm(0.8)), 7, 10, 9.2);
  }

  @Test
  void refusesAnotherName() {
    assertThatThrownBy(() -> Meridian.wallOf("neck").of(sleeve()))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContainingAll("neck", "[sleeve]");
    assertThatThrownBy(() -> Meridian.wallOf("sleeve").set(sleeve(), mm(11)))
        .isInstanceOf(InvalidInputException.class);
  }
}
