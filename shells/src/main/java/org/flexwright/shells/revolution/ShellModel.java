package org.flexwright.shells.revolution;

import java.util.Arrays;
import java.util.List;
import org.flexwright.law.StrainEnergy;
import org.flexwright.numeric.BlockTridiagonal;

/**
 * A shell of revolution as a system of equations: energy, forces, tangent, enclosed volume.
 *
 * <p>The volume between the meridian and the axis is that of its frusta, pi/3 (r1^2 + r1 r2 +
 * r2^2)(z2 - z1) each, positive where the meridian runs up. A pressure p inside does the work p dV;
 * since each part of the wall keeps its volume this is the follower load on either face.
 *
 * <p>Work space of one solver; not thread-safe.
 */
final class ShellModel {

  private static final double STIFF = 10.0; // times modulus over wall: soft enough to converge
  private static final double THIRD = Math.PI / 3.0;

  final ShellMesh mesh;
  final BlockTridiagonal tangent;
  final double[] force; // slope of the stored energy
  final double[] swept; // slope of the volume
  final Contact contact;
  final double[] wetted; // slope of the liquid's potential
  Liquid liquid = Liquid.NONE;
  double head; // share of the liquid's weight
  double filled; // the liquid's potential at its whole weight
  final SelfContact self;
  private final ShellElement element;
  private final Envelope coupled; // the tangent while the shell presses on itself
  double touching;
  double volume;

  ShellModel(ShellMesh mesh, StrainEnergy law, int layers) {
    this(mesh, law, layers, List.of());
  }

  ShellModel(ShellMesh mesh, StrainEnergy law, int layers, List<Obstacle> obstacles) {
    this.mesh = mesh;
    double stiff = STIFF * law.youngModulus() / mesh.thinnest();
    contact = new Contact(mesh, obstacles, stiff);
    element = new ShellElement(new WallSection(law, new Layers(mesh, layers)), contact);
    tangent = new BlockTridiagonal(mesh.nodes());
    coupled = new Envelope(mesh.nodes());
    self = new SelfContact(mesh, new WallSection(law, new Layers(mesh, 1)), stiff);
    force = new double[3 * mesh.nodes()];
    swept = new double[3 * mesh.nodes()];
    wetted = new double[3 * mesh.nodes()];
  }

  /**
   * Evaluates a state under a pressure.
   *
   * @return whether every element can exist
   */
  boolean at(double[] x, double pressure) {
    touching = 0.0;
    volume = 0.0;
    Arrays.fill(force, 0.0);
    Arrays.fill(swept, 0.0);
    Arrays.fill(wetted, 0.0);
    filled = 0.0;
    tangent.clear();
    boolean pressed = self.locate(x, coupled);
    for (int i = 0; i < mesh.elements(); i++) {
      if (mesh.rigid[i]) {
        Arrays.fill(element.tangent, 0.0);
        sweep(i, x, 0.0); // its shape stays: no stiffness, but its volume counts
        continue;
      }
      if (!element.at(mesh, i, x)) {
        return false;
      }
      touching += element.touching;
      for (int a = 0; a < 6; a++) {
        force[3 * i + a] += element.force[a];
      }
      sweep(i, x, pressure);
      if (pressed) {
        coupled.add(i, element.tangent);
      }
    }
    touching += self.add(x, force, coupled);
    return true;
  }

  /** The energy stored in a state; infinite if some element cannot exist. */
  double energy(double[] x) {
    double sum = 0.0;
    for (int i = 0; i < mesh.elements(); i++) {
      sum += mesh.rigid[i] ? 0.0 : element.energy(mesh, i, x);
    }
    return sum;
  }

  /** Whether anything may press in the present state. */
  boolean touches() {
    return self.presses() || !contact.none();
  }

  /** Whether something presses: touching bends a path sharply. */
  boolean presses() {
    return self.presses() || contact.presses();
  }

  /** Holds unknowns and factors the tangent; gives whether that could be done. */
  boolean factor(int[] held, Links links) {
    boolean pressed = self.presses();
    for (int h : held) {
      if (pressed) {
        coupled.hold(h);
      } else {
        tangent.hold(h / 3, h % 3, 1.0);
      }
    }
    if (pressed) {
      links.couple(coupled);
      return coupled.factor();
    }
    links.couple(tangent);
    return tangent.factor();
  }

  /** Solves with the tangent factored last. */
  void solve(double[] right) {
    if (self.presses()) {
      coupled.solve(right);
    } else {
      tangent.solve(right);
    }
  }

  /** Multiplies the tangent of the present state, not yet factored, with a vector. */
  void times(double[] by, double[] out) {
    if (self.presses()) {
      coupled.times(by, out);
    } else {
      tangent.times(by, out);
    }
  }

  /** The negative eigenvalues of the tangent factored last. */
  int negative() {
    return self.presses() ? coupled.negative() : tangent.negative();
  }

  /** Takes the present pressures for multipliers; gives the deepest penetration before. */
  double update(double[] x) {
    double deepest = contact.update();
    return Math.max(deepest, self.update(x));
  }

  private void sweep(int i, double[] x, double pressure) {
    int n = 3 * i;
    double r1 = x[n];
    double r2 = x[n + 3];
    double dz = x[n + 4] - x[n + 1];
    double area = THIRD * (r1 * r1 + r1 * r2 + r2 * r2);
    double a1 = THIRD * (2.0 * r1 + r2);
    double a2 = THIRD * (2.0 * r2 + r1);
    volume += area * dz;
    swept[n] += a1 * dz;
    swept[n + 1] -= area;
    swept[n + 3] += a2 * dz;
    swept[n + 4] += area;
    double[] t = element.tangent;
    if (pressure != 0.0) {
      t[0] -= pressure * 2.0 * THIRD * dz;
      t[3] -= pressure * THIRD * dz;
      t[6 * 3 + 3] -= pressure * 2.0 * THIRD * dz;
      t[1] += pressure * a1;
      t[4] -= pressure * a1;
      t[6 + 3] += pressure * a2;
      t[6 * 3 + 4] -= pressure * a2;
    }
    filled += liquid.add(i, x, head, wetted, t);
    tangent.add(i, t);
  }
}
