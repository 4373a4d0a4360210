package org.flexwright.lattice.cell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

final class RodElementTest {

  private static final double STEP = 1e-5; // truncation and rounding of the energy: below 1e-8
  private static final RodElement ELEMENT = new RodElement(RodElement.Section.round(0.3, 0.3), 0.4);
  private static final Vector3D D = new Vector3D(0.2, -0.1, 0.35);
  private static final Rotation A = RodElement.exp(new Vector3D(0.4, -0.7, 0.2));
  private static final Rotation B = RodElement.exp(new Vector3D(-0.3, 0.5, 1.1));

  @Test
  void forcesAreTheSlopesOfTheEnergy() {
    double[] forces = ELEMENT.forces(D, A, B);
    for (int i = 0; i < 9; i++) {
      double slope = (energy(i, STEP) - energy(i, -STEP)) / (2.0 * STEP);
      assertThat(forces[i]).isCloseTo(slope, within(1e-6 * (1.0 + Math.abs(slope))));
    }
  }

  private static double energy(int i, double by) {
    double[] axis = new double[3];
    axis[i % 3] = by;
    Vector3D v = new Vector3D(axis);
    return switch (i / 3) {
      case 0 -> ELEMENT.energy(D.add(v), A, B);
      case 1 -> ELEMENT.energy(D, RodElement.after(v, A), B);
      default -> ELEMENT.energy(D, A, RodElement.after(v, B));
    };
  }

  @Test
  void tangentIsTheSlopeOfTheForcesAlongAnyPath() {
    double[][] k = ELEMENT.tangent(D, A, B);
    double t = 1e-5;
    Vector3D move = new Vector3D(0.3, 0.2, -0.5).scalarMultiply(t);
    Vector3D turnA = new Vector3D(-0.1, 0.4, 0.3).scalarMultiply(t);
    Vector3D turnB = new Vector3D(0.6, -0.2, 0.1).scalarMultiply(t);
    double[] up =
        ELEMENT.forces(D.add(move), RodElement.after(turnA, A), RodElement.after(turnB, B));
    double[] down =
        ELEMENT.forces(
            D.subtract(move),
            RodElement.after(turnA.negate(), A),
            RodElement.after(turnB.negate(), B));
    double[][] path = {move.toArray(), turnA.toArray(), turnB.toArray()};
    for (int i = 0; i < 9; i++) {
      double sum = 0.0;
      for (int j = 0; j < 9; j++) {
        sum += k[i][j] * path[j / 3][j % 3] / t;
      }
      double slope = (up[i] - down[i]) / (2.0 * t);
      assertThat(sum).isCloseTo(slope, within(1e-6 * (1.0 + Math.abs(slope))));
    }
  }

  /** What a theory of large turns must hold: carried along, it stores the same. */
  @Test
  void aRigidTurnChangesNoEnergy() {
    Rotation turn = RodElement.exp(new Vector3D(1.3, 0.4, -2.0));
    double before = ELEMENT.energy(D, A, B);
    double after =
        ELEMENT.energy(
            turn.applyTo(D),
            turn.compose(A, RotationConvention.VECTOR_OPERATOR),
            turn.compose(B, RotationConvention.VECTOR_OPERATOR));
    assertThat(after).isCloseTo(before, within(1e-12 * before));
  }

  /** A piece bent to an arc of a circle with sections square to it stores EI/(2 R^2) of length. */
  @Test
  void anArcStoresItsBendingOnly() {
    double angle = 0.8;
    double radius = 0.4 / angle;
    RodElement stiff =
        new RodElement(new RodElement.Section(1e-9, 1e-9, 1.0, 0.7), 0.4); // bending alone
    Rotation end = RodElement.exp(new Vector3D(0.0, angle, 0.0));
    Vector3D chord = new Vector3D(radius * (1.0 - Math.cos(angle)), 0.0, radius * Math.sin(angle));
    assertThat(stiff.energy(chord, Rotation.IDENTITY, end))
        .isCloseTo(0.5 * 0.4 / (radius * radius), within(1e-9));
    // the chord lies in the section halfway: no shear
    assertThat(stiff.forces(chord, Rotation.IDENTITY, end)[4])
        .isCloseTo(-angle / 0.4, within(1e-8));
  }
}
