package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.IntToDoubleFunction;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Pressure;
import org.flexwright.run.RunControl;
import org.flexwright.run.Termination;

/** Short ways to set up and run a shell, for tests. */
final class Runs {

  /** Shear modulus 1. */
  static final StrainEnergy SHEAR = NeoHookean.of(Pressure.pa(1.0));

  /** Young's modulus 1. */
  static final StrainEnergy YOUNG = NeoHookean.of(Pressure.pa(1.0 / 3.0));

  static final int LAYERS = 5;

  private Runs() {}

  static ShellSolver solver(ShellMesh mesh, StrainEnergy law, Loading load, int... held) {
    ShellSolver solver = new ShellSolver(new ShellModel(mesh, law, LAYERS), load, held);
    assertThat(solver.evaluate()).isTrue();
    return solver;
  }

  static Termination go(ShellSolver solver, Control control, double to, int steps) {
    return new PathFollower(solver, () -> {}).follow(control, to, steps, "test", RunControl.none());
  }

  static void reach(ShellSolver solver, Control control, double to, int steps) {
    Termination end = go(solver, control, to, steps);
    assertThat(end.complete()).as(end.toString()).isTrue();
  }

  /** The displacements per load factor at rest: the linear theory. */
  static double[] linear(ShellMesh mesh, Loading load, int... held) {
    ShellSolver s = solver(mesh, YOUNG, load, held);
    double[] u = new double[s.x.length];
    for (int i = 0; i < u.length; i++) {
      u[i] = load.perFactor() * s.model().swept[i];
    }
    load.addPattern(u);
    for (int h : held) {
      u[h] = 0.0;
    }
    s.model().tangent.solve(u);
    return u;
  }

  /** A value for meshes of n and 2 n elements, extrapolated with the square of the element. */
  static double extrapolated(int n, IntToDoubleFunction value) {
    return (4.0 * value.applyAsDouble(2 * n) - value.applyAsDouble(n)) / 3.0;
  }

  /** The power of the element's length with which a value converges. */
  static double rate(int n, IntToDoubleFunction value) {
    double coarse = value.applyAsDouble(n);
    double middle = value.applyAsDouble(2 * n);
    double fine = value.applyAsDouble(4 * n);
    return Math.log((coarse - middle) / (middle - fine)) / Math.log(2.0);
  }

  /** Dead forces on single unknowns, over the whole circumference. */
  static Loading forces(ShellMesh mesh, double... atAndHowMuch) {
    double[] force = new double[3 * mesh.nodes()];
    for (int i = 0; i < atAndHowMuch.length; i += 2) {
      force[(int) atAndHowMuch[i]] = atAndHowMuch[i + 1];
    }
    return new Loading(0.0, 0.0, new double[force.length], force);
  }
}
