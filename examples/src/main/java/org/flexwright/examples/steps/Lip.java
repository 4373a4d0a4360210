package org.flexwright.examples.steps;

import java.util.List;
import org.flexwright.evidence.Exponents;
import org.flexwright.evidence.Factor;
import org.flexwright.evidence.Source;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
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
 * A part of the user's own: a flat lip of length L and width b, built in at its root and pushed at
 * its tip. F = E b t^3 d / (4 L^3), strain at the root 3 t d / (2 L^2).
 */
record Lip(Length length, Length width, Length wall) implements Part<Lip> {

  static final Lever<Lip> WALL =
      Lever.of("wall", Lip::wall, (lip, t) -> new Lip(lip.length(), lip.width(), t));
  static final Lever<Lip> LENGTH =
      Lever.of("length", Lip::length, (lip, l) -> new Lip(l, lip.width(), lip.wall()));

  private static final double WORKING = 9.0 / 16.0; // energy-weighted share of the root strain

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    if (!(load instanceof LoadCase.ToTravel to)) {
      throw new IllegalArgumentException("a lip is asked for a travel, not " + load);
    }
    double slender = wall.ratioTo(length);
    double strain = 1.5 * slender * to.travel().ratioTo(length);
    double modulus = grade.secantModulus(WORKING * strain).pa();
    double force = modulus * width.m() * to.travel().m() * Math.pow(slender, 3) / 4.0;
    Exponents forceFollows =
        Exponents.none()
            .with(Factor.MODULUS, 1.0)
            .with(Factor.SIZE_BIAS, 3.0)
            .with(Factor.SIZE_SCATTER, 3.0);
    Exponents strainFollows = Exponents.none().with(Factor.SIZE_BIAS, 1.0);
    return new Response(
        LoadPath.of(2, Channel.TRAVEL, Channel.FORCE, Channel.STRAIN)
            .add(0.0, 0.0, 0.0)
            .add(to.travel().m(), force, strain)
            .end(Termination.completed()),
        ScaledValue.of(Channel.FORCE, force, forceFollows).model(0.95, 1.05),
        ScaledValue.of(Channel.STRAIN, strain, strainFollows).model(0.95, 1.05),
        false,
        List.of(Source.derived("slender cantilever, small deflection")),
        List.of());
  }

  @Override
  public List<Lever<Lip>> levers() {
    return List.of(WALL, LENGTH);
  }

  @Override
  public Volume printedVolume() {
    return wall.times(width.times(length));
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.WALL, wall);
  }
}
