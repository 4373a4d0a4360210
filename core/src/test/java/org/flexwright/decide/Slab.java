package org.flexwright.decide;

import java.util.List;
import org.flexwright.evidence.Exponents;
import org.flexwright.evidence.Factor;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Volume;
import org.flexwright.response.Channel;
import org.flexwright.response.Lever;
import org.flexwright.response.LoadCase;
import org.flexwright.response.LoadPath;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.response.ScaledValue;
import org.flexwright.run.RunControl;
import org.flexwright.run.Termination;

/**
 * A cantilever of 10 mm width whose every answer is known in closed form: F = E b t^3 d / (4 L^3),
 * strain 3 t d / (2 L^2). The modulus is the one at rest, so that inverses are exact.
 */
record Slab(Length wall, Length length, double modelBand) implements Part<Slab> {

  static final Lever<Slab> WALL = Lever.of("wall", Slab::wall, (s, v) -> s.wall(v));
  static final Lever<Slab> LENGTH =
      Lever.of("length", Slab::length, (s, v) -> new Slab(s.wall, v, s.modelBand));
  static final double WIDTH = 0.01;

  Slab {
    Require.positive("wall", wall.m(), "m");
    Require.that(wall.compareTo(length) < 0, "wall", wall, "thinner than the length " + length, "");
  }

  static Slab of(double lengthInMm) {
    return new Slab(Length.mm(0.5), Length.mm(lengthInMm), 1.0);
  }

  Slab wall(Length of) {
    return new Slab(of, length, modelBand);
  }

  Slab modelBand(double band) {
    return new Slab(wall, length, band);
  }

  static double force(double modulus, double wall, double length, double travel) {
    return modulus * WIDTH * wall * wall * wall * travel / (4 * length * length * length);
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    Require.that(load instanceof LoadCase.ToTravel, LOAD_CASE, load, "a travel", "ask a force");
    double d = ((LoadCase.ToTravel) load).travel().m();
    double f = force(grade.modulusAtRest().pa(), wall.m(), length.m(), d);
    double e = 1.5 * wall.m() * d / (length.m() * length.m());
    Exponents cubic =
        Exponents.none()
            .with(Factor.MODULUS, 1)
            .with(Factor.SIZE_BIAS, 3)
            .with(Factor.SIZE_SCATTER, 3);
    Exponents linear = Exponents.none().with(Factor.SIZE_BIAS, 1).with(Factor.SIZE_SCATTER, 1);
    LoadPath path =
        LoadPath.of(2, Channel.TRAVEL, Channel.FORCE, Channel.STRAIN)
            .add(0, 0, 0)
            .add(d, f, e)
            .end(Termination.completed());
    return new Response(
        path,
        ScaledValue.of(Channel.FORCE, f, cubic).model(1 / modelBand, modelBand),
        ScaledValue.of(Channel.STRAIN, e, linear),
        false,
        List.of(),
        List.of());
  }

  @Override
  public List<Lever<Slab>> levers() {
    return List.of(WALL, LENGTH);
  }

  @Override
  public Volume printedVolume() {
    return wall.times(length).times(Length.m(WIDTH));
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.WALL, wall);
  }
}
