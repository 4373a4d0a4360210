package org.flexwright.shells.solved;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Exponents;
import org.flexwright.evidence.Factor;
import org.flexwright.evidence.Source;
import org.flexwright.grade.Grade;
import org.flexwright.internal.Text;
import org.flexwright.response.Channel;
import org.flexwright.response.ClosedForm;
import org.flexwright.response.LoadCase;
import org.flexwright.response.LoadPath;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.response.ScaledValue;
import org.flexwright.run.Termination;

/** Makes the response of a solved part from that of its closed form and the ratios. */
final class Corrected<P extends Part<P>> {

  private static final int STATES = 16; // of a closed form's whole path

  private final Engine<P> engine;
  private final P part;
  private final Grade grade;
  private final LoadCase load;
  private final Response closed;

  Corrected(Engine<P> engine, P part, Grade grade, LoadCase load, Response closed) {
    this.engine = engine;
    this.part = part;
    this.grade = grade;
    this.load = load;
    this.closed = closed;
  }

  /** The response with the engine's figures. */
  Response by(Ratios r, Termination end) {
    LoadPath path = path(r, end);
    Checks checks = engine.checks(part, load);
    Channel channel = closed.load().channel();
    double nominal = path.last(channel);
    double strain = path.peak(Channel.STRAIN);
    checks.check(grade.law().range().of("law of the grade"), 1.0 + strain);
    r.caveats().forEach(checks::note);
    if (!engine.remark(r.hoop()).isEmpty()) {
      checks.note(engine.remark(r.hoop()));
    }
    disagreement(closed.load(), nominal, path, checks);
    disagreement(closed.strain(), strain, path, checks);
    if (!end.complete()) {
      checks.note(
          "the engine's path ended before the load asked for, the figures are those of its last"
              + " state: "
              + end.why());
    }
    return response(path, load(r, nominal), strain(r, strain), r, checks);
  }

  /** The closed form's figures, openly, where the engine has none. */
  Response closedForm(Termination end) {
    LoadPath path = path(new double[0], new double[0], closed.path().size(), end);
    Response as =
        new Response(
            path,
            closed.load(),
            closed.strain(),
            closed.strainCrossesLayers(),
            closed.sources(),
            closed.caveats(),
            closed.ranges());
    return as.with(
        Caveat.note(
            engine.name(),
            "the engine gave no figure, these are the closed form's: " + end.why(),
            Solved.ENGINE));
  }

  private Response response(
      LoadPath path, ScaledValue load, ScaledValue strain, Ratios r, Checks checks) {
    List<Source> sources = new ArrayList<>(List.of(Solved.ENGINE));
    sources.addAll(closed.sources());
    List<Caveat> caveats = new ArrayList<>(checks.caveats());
    grade.caveats().stream().filter(c -> !caveats.contains(c)).forEach(caveats::add);
    return new Response(
        path,
        load,
        strain,
        engine.crossesLayers(part, r.hoop()),
        sources,
        caveats,
        checks.ranges());
  }

  /** The closed form's path with its loads and strains corrected, as far as the engine came. */
  private LoadPath path(Ratios r, Termination end) {
    double[] stations = engine.stations();
    int states = closed.path().size();
    if (r.reached() < stations.length) {
      states = Math.min(states, 1 + (int) Math.round(STATES * stations[r.reached() - 1]));
    }
    Termination how = closed.termination().complete() ? end : closed.termination();
    return path(r.loads(), r.strains(), states, how);
  }

  private LoadPath path(double[] loads, double[] strains, int states, Termination end) {
    LoadPath of = closed.path();
    List<Channel> channels = of.channels();
    Channel[] others = channels.subList(1, channels.size()).toArray(Channel[]::new);
    LoadPath.Builder path = LoadPath.of(states, channels.get(0), others);
    double[] row = new double[channels.size()];
    double most = 0.0; // of the strains, which rise to the engine's last one
    double last = strain(states - 1, strains);
    for (int i = 0; i < states; i++) {
      double share = (double) i / STATES;
      for (int c = 0; c < row.length; c++) {
        Channel channel = channels.get(c);
        row[c] = of.value(channel, i);
        if (channel == closed.load().channel() && loads.length > 0) {
          row[c] *= Ratios.at(share, engine.stations(), loads);
        } else if (channel == Channel.STRAIN) {
          most = Math.max(most, Math.min(last, strain(i, strains)));
          row[c] = most;
        }
      }
      path.add(row);
    }
    return path.end(end);
  }

  private double strain(int state, double[] ratios) {
    double is = closed.path().value(Channel.STRAIN, state);
    return ratios.length == 0
        ? is
        : is * Ratios.at((double) state / STATES, engine.stations(), ratios);
  }

  private ScaledValue load(Ratios r, double nominal) {
    ScaledValue c = closed.load();
    double following = Math.min(nominal, (c.nominal() - c.offset()) * Math.exp(r.following()));
    double was = c.exponents().of(Factor.SIZE_BIAS) * (c.nominal() - c.offset()) / c.nominal();
    double size = (was + r.loadSlope()) * nominal / following;
    double uneven = c.exponents().of(Factor.SIZE_SCATTER) / c.exponents().of(Factor.SIZE_BIAS);
    Exponents exponents =
        c.exponents().with(Factor.SIZE_BIAS, size).with(Factor.SIZE_SCATTER, size * uneven);
    return banded(
        new ScaledValue(c.channel(), nominal, nominal - following, exponents, 1.0, 1.0),
        engine.loadBand(),
        r.loadError());
  }

  private ScaledValue strain(Ratios r, double strain) {
    ScaledValue c = closed.strain();
    ScaledValue l = closed.load();
    double size = c.exponents().of(Factor.SIZE_BIAS) + r.strainSlope();
    double uneven = l.exponents().of(Factor.SIZE_SCATTER) / l.exponents().of(Factor.SIZE_BIAS);
    double force = l.exponents().of(Factor.SIZE_BIAS) + r.loadSlope();
    double scatter = size - (1.0 - uneven * uneven) * force;
    Exponents exponents =
        c.exponents()
            .with(Factor.MODULUS, r.strainPower())
            .with(Factor.SIZE_BIAS, size)
            .with(Factor.SIZE_SCATTER, scatter);
    return banded(
        ScaledValue.of(Channel.STRAIN, strain, exponents), engine.strainBand(), r.strainError());
  }

  private static ScaledValue banded(ScaledValue value, ClosedForm.Band band, double error) {
    return value.model(band.low() * Math.exp(-error), band.high() * Math.exp(error));
  }

  private void disagreement(ScaledValue c, double engines, LoadPath path, Checks checks) {
    double closedOnes =
        c.channel() == Channel.STRAIN
            ? peak(c, path.size())
            : closed.path().value(c.channel(), path.size() - 1);
    double ratio = engines / closedOnes;
    if (ratio < c.modelLow() || ratio > c.modelHigh()) {
      checks.note(
          "the engine's "
              + c.channel()
              + ", "
              + c.channel().show(engines)
              + ", is "
              + Text.number(ratio, 3)
              + " of the closed form's, "
              + c.channel().show(closedOnes)
              + ", outside its band of "
              + Text.number(c.modelLow(), 3)
              + " to "
              + Text.number(c.modelHigh(), 3)
              + "; the engine's is used");
    }
  }

  private double peak(ScaledValue c, int states) {
    double most = 0.0;
    for (int i = 0; i < states; i++) {
      most = Math.max(most, closed.path().value(c.channel(), i));
    }
    return most;
  }
}
