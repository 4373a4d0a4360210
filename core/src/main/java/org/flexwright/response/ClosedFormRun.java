package org.flexwright.response;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Exponents;
import org.flexwright.evidence.Factor;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.grade.Grade;
import org.flexwright.run.Progress;
import org.flexwright.run.RunControl;
import org.flexwright.run.Termination;

/** One closed form walked in one grade. */
final class ClosedFormRun {

  private static final int STATES = 16;
  private static final double LARGEST = 1e6; // a working strain beyond any law

  private final ClosedForm form;
  private final Grade grade;
  private final boolean toLimit;
  private final double lawEnd;
  private double reached;
  private double loaded;
  private double peak;

  ClosedFormRun(ClosedForm form, Grade grade, boolean toLimit) {
    this.form = form;
    this.grade = grade;
    this.toLimit = toLimit;
    // the secant modulus at the end of the law stands for all strains above it
    lawEnd = Math.min(LARGEST, Math.log(grade.law().range().high()));
  }

  Response respond(double end, RunControl run, Checks checks) {
    double size = form.size.m();
    LoadPath path = path(size, end, run);
    if (form.linearTo < Double.POSITIVE_INFINITY) {
      checks.check(
          new ValidityRange(form.name, "peak strain", 0.0, form.linearTo, "", ClosedForm.LINEAR),
          peak);
    }
    double stretch = form.ofLaw ? 1.0 + peak : Math.exp(peak);
    checks.check(grade.law().range().of("law of the grade"), stretch);
    double power = LogSlope.at(t -> load(t, travel(t)), size);
    return new Response(
        path,
        load(power),
        strain(size, power),
        form.crossesLayers,
        joined(form.sources, grade.sources()),
        joined(checks.caveats(), grade.caveats()),
        checks.ranges());
  }

  /** What the model says, then what the grade says: a grade under conditions brings theirs. */
  private static <T> List<T> joined(List<T> ofModel, List<T> ofGrade) {
    List<T> all = new ArrayList<>(ofModel);
    all.addAll(ofGrade);
    return all;
  }

  private LoadPath path(double size, double end, RunControl run) {
    double most = form.most == null ? end : Math.min(end, form.most.applyAsDouble(size));
    LoadPath.Builder states = builder();
    add(states, 0.0, 0.0, 0.0, form.volume == null ? 0.0 : form.volume.at(size, 0.0));
    Termination ending =
        most < end
            ? new Termination(Termination.Kind.NO_FURTHER_STATE, form.why)
            : Termination.completed();
    double slope = form.slope == null ? 0.0 : form.slope.applyAsDouble(size);
    double stiffness = form.stiffness == null ? 0.0 : form.stiffness.applyAsDouble(size);
    for (int i = 1; i <= STATES; i++) {
      double u = i == STATES ? most : most * i / STATES;
      double strain = form.slope == null ? form.strain.at(size, u) : slope * u;
      double load =
          form.stiffness == null
              ? load(size, u, strain)
              : modulus(size, u, strain) * (stiffness * u);
      if (!(load > 0.0 && Double.isFinite(load))) {
        ending = noLoad(i, u, load);
        break;
      }
      add(states, u, load, strain, form.volume == null ? 0.0 : form.volume.at(size, u));
      loaded = load;
      peak = strain;
      reached = u;
      run.progress(new Progress(form.name, (double) i / STATES));
      if (i < STATES && run.stopRequested()) {
        ending = Termination.stopped("state " + i + " of " + STATES);
        break;
      }
    }
    return states.end(ending);
  }

  private Termination noLoad(int state, double u, double load) {
    String at = form.control.show(u);
    if (state == 1) {
      throw new InvalidInputException(
          form.control.toString(),
          form.control.show(u * STATES),
          "a " + form.control + " at which " + form.name + " carries a load",
          "it has none at a sixteenth of this already");
    }
    return new Termination(
        Termination.Kind.NO_FURTHER_STATE,
        load <= 0.0
            ? "before " + at + " the load falls to zero: the part snaps through"
            : "at " + at + " the formula has no state");
  }

  private LoadPath.Builder builder() {
    List<Channel> others = new ArrayList<>(List.of(form.channel, Channel.STRAIN));
    if (form.volume != null) {
      others.add(Channel.VOLUME);
    }
    return LoadPath.of(STATES + 1, form.control, others.toArray(Channel[]::new));
  }

  /** One state in the order of the channels: control, load, volume, strain. */
  private void add(LoadPath.Builder states, double u, double load, double strain, double volume) {
    if (form.volume == null) {
      states.add(u, load, strain);
    } else {
      states.add(u, load, volume, strain);
    }
  }

  private double load(double t, double u) {
    return load(t, u, form.ofLaw ? 0.0 : form.strain.at(t, u));
  }

  private double load(double t, double u, double strain) {
    if (form.ofLaw) {
      return form.load.at(t, u);
    }
    return modulus(t, u, strain) * form.load.at(t, u);
  }

  private double modulus(double t, double u, double strain) {
    double working =
        form.workingStrain == null ? form.working * strain : form.workingStrain.at(t, u);
    working = Math.min(working, lawEnd);
    return grade.secantModulus(Math.max(0.0, working)).pa();
  }

  /** The travel that belongs to a size: at a limit it moves with the size. */
  private double travel(double t) {
    return toLimit && form.limit != null ? form.limit.applyAsDouble(t) : reached;
  }

  private ScaledValue load(double power) {
    Exponents exponents =
        Exponents.none()
            .with(Factor.MODULUS, 1.0)
            .with(Factor.SIZE_BIAS, power)
            .with(Factor.SIZE_SCATTER, power / Math.sqrt(form.alike));
    return ScaledValue.of(form.channel, loaded, exponents)
        .model(form.loadBand.low(), form.loadBand.high());
  }

  private ScaledValue strain(double size, double loadPower) {
    double power = LogSlope.at(t -> form.strain.at(t, travel(t)), size);
    double uneven = form.alike == 1 ? 0.0 : (1.0 - 1.0 / form.alike) * loadPower;
    Exponents exponents =
        Exponents.none().with(Factor.SIZE_BIAS, power).with(Factor.SIZE_SCATTER, power - uneven);
    return ScaledValue.of(Channel.STRAIN, peak, exponents)
        .model(form.strainBand.low(), form.strainBand.high());
  }
}
