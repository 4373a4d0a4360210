package org.flexwright.shells.revolution;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.flexwright.law.StrainEnergy;
import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;

/**
 * Makes the stations of a state from its unknowns, when they are asked for.
 *
 * @param ends the part that gives way
 * @param law of the material
 * @param layers through the wall
 * @param obstacles what it may press against
 * @param shoulders where the wall steps, if it was drawn
 */
record Profile(
    BuiltIn ends,
    StrainEnergy law,
    int layers,
    List<Obstacle> obstacles,
    Optional<Shoulders> shoulders) {

  /** This of a drawn wall. */
  Profile drawn(Shoulders by) {
    return new Profile(ends, law, layers, obstacles, Optional.of(by));
  }

  /**
   * The stations.
   *
   * @param whole the unknowns of all nodes
   * @param pressure inside over outside
   * @param pressed the multipliers of contact
   */
  List<Station> stations(double[] whole, double pressure, double[] pressed) {
    ShellMesh mesh = ends.moving;
    double[] x = ends.part(whole);
    Contact contact = new Contact(mesh, obstacles, 1.0);
    contact.restore(pressed);
    WallSection wall = new WallSection(law, new Layers(mesh, layers));
    ShellElement element = new ShellElement(wall, contact);
    List<Station> stations = new ArrayList<>();
    double arc = 0.0;
    int node = 0;
    for (int i = 0; i < mesh.elements(); i++) {
      for (; node < ends.node(i); node++) {
        int n = 3 * node;
        arc += Math.hypot(whole[n + 3] - whole[n], whole[n + 4] - whole[n + 1]);
      }
      if (mesh.rigid[i]) {
        continue;
      }
      element.strains(mesh, i, x);
      double length = Math.hypot(x[3 * i + 3] - x[3 * i], x[3 * i + 4] - x[3 * i + 1]);
      stations.add(station(i, x, arc + 0.5 * length, length, element, wall, contact, pressure));
    }
    return List.copyOf(stations);
  }

  private Station station(
      int i,
      double[] x,
      double arc,
      double length,
      ShellElement s,
      WallSection wall,
      Contact contact,
      double pressure) {
    ShellMesh mesh = ends.moving;
    WallSection.Section rest = mesh.sections[i];
    double stretch = length / mesh.length[i];
    double half = 0.5 * rest.thickness();
    double in = contact(contact, i, 1, s);
    double out = contact(contact, i, -1, s);
    double[] inner = layer(rest, half, s);
    double[] outer = layer(rest, -half, s);
    wall.at(i, s.e, s.k, s.r, s.q, s.g);
    double[] w = wall.first;
    double cos = s.e / stretch;
    double sin = s.g / stretch;
    return new Station(
        ends.element(i),
        mesh.piece[i] + 1,
        Length.m(arc),
        Length.m(s.r),
        Length.m(0.5 * (x[3 * i + 1] + x[3 * i + 4])),
        Angle.rad(Math.atan2(x[3 * i + 4] - x[3 * i + 1], x[3 * i + 3] - x[3 * i])),
        Length.m(inner[0] - outer[0]),
        face(inner, -pressure - in, in),
        face(layer(rest, 0.0, s), -0.5 * (pressure + in + out), 0.0),
        face(outer, -out, out),
        (w[0] * cos + w[4] * sin) / s.r,
        w[2] / stretch,
        ShellElement.SHEAR * (w[4] * cos - w[0] * sin) / s.r,
        w[1] / s.r,
        w[3] / stretch);
  }

  private static double[] layer(WallSection.Section rest, double d, ShellElement s) {
    double[] layer = new double[3];
    WallSection.layerAt(rest, d, s.e, s.k, s.r, s.q, layer);
    return layer;
  }

  /** A layer under a normal stress; the shear across the wall is left out, it ends at the faces. */
  private Station.Face face(double[] layer, double normal, double contact) {
    double u = layer[1];
    double v = layer[2];
    double w = 1.0 / (u * v);
    double[] g = new double[3];
    law.gradient(u, v, w, g);
    return new Station.Face(
        u,
        v,
        Pressure.pa(u * g[0] - w * g[2] + normal),
        Pressure.pa(v * g[1] - w * g[2] + normal),
        Pressure.pa(contact));
  }

  /** Pressure of all obstacles on a face, per deformed area. */
  private double contact(Contact contact, int i, int side, ShellElement s) {
    double sum = 0.0;
    WallSection.Section rest = ends.moving.sections[i];
    double d = 0.5 * side * rest.thickness();
    double[] layer = layer(rest, d, s);
    double metric = (1.0 - d * rest.curvature()) * (rest.radius() - d * rest.sine());
    for (int o = 0; o < obstacles.size(); o++) {
      sum += contact.pressure(o, i, side) * rest.radius() / (metric * layer[1] * layer[2]);
    }
    return sum;
  }
}
