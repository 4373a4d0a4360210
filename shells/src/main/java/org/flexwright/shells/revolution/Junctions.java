package org.flexwright.shells.revolution;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Length;

/** Makes the junctions of a state from its stations, when they are asked for. */
final class Junctions {

  private static final String MODEL = "strain at a fillet";
  private static final double LARGE = 0.1; // nominal: the linear factor overstates by 3 %
  private static final double MOST = 0.45; // nominal, as far as looked at at finite strain
  private static final Source ELEMENTS = Source.derived("plane finite elements at small strain");

  private final Profile profile;
  private final List<Station> stations;
  private final double[] rest; // angle of each station at rest

  Junctions(Profile profile, List<Station> stations) {
    this.profile = profile;
    this.stations = stations;
    ShellMesh mesh = profile.ends().moving;
    rest = new double[stations.size()];
    int next = 0;
    for (int i = 0; i < mesh.elements(); i++) {
      if (!mesh.rigid[i]) {
        rest[next++] = mesh.angle[i];
      }
    }
  }

  List<Junction> all(double fillet) {
    ShellMesh mesh = profile.ends().moving;
    int n = mesh.elements() - 1;
    List<Junction> all = new ArrayList<>();
    if (profile.ends().first == End.BUILT_IN && mesh.radius[0] > 0.0 && whole(0)) {
      all.add(junction(0, mesh.sections[0].thickness(), Double.POSITIVE_INFINITY, false, fillet));
    }
    if (profile.shoulders().isPresent()) {
      for (Shoulders.Shoulder s : profile.shoulders().get().all()) {
        all.add(junction(nearest(s), s.thin(), s.thick(), s.plain(), fillet));
      }
    }
    int last = stations.size() - 1;
    if (profile.ends().last == End.BUILT_IN && mesh.radius[n + 1] > 0.0 && whole(1)) {
      all.add(
          junction(last, mesh.sections[n].thickness(), Double.POSITIVE_INFINITY, false, fillet));
    }
    return List.copyOf(all);
  }

  /** Whether an end is no end of a rigid stretch, which has its own shoulder. */
  private boolean whole(int end) {
    return profile.shoulders().map(s -> !s.rigidAt(end)).orElse(true);
  }

  /** The first station of the thin wall; set-backs have taken the elements without one. */
  private int nearest(Shoulders.Shoulder s) {
    int found = s.forward() ? stations.size() - 1 : 0;
    for (int i = 0; i < stations.size(); i++) {
      int element = stations.get(i).element();
      if (s.forward() && element >= s.element()) {
        return i;
      }
      found = !s.forward() && element <= s.element() ? i : found;
    }
    return found;
  }

  private Junction junction(int i, double thin, double thick, boolean plain, double fillet) {
    DrawnFace drawn = profile.ends().moving.drawn;
    boolean both = Double.isInfinite(thick) || drawn == DrawnFace.MIDDLE;
    Junction.Step step =
        both
            ? Junction.Step.BOTH
            : drawn == DrawnFace.OUTER ? Junction.Step.INNER : Junction.Step.OUTER;
    Station at = stations.get(i);
    double in = at.inner().meridianStretch() * Math.sqrt(at.inner().hoopStretch());
    double out = at.outer().meridianStretch() * Math.sqrt(at.outer().hoopStretch());
    double stretching = 0.5 * (in + out) - 1.0;
    double bending = 0.5 * (in - out); // stretches the inner face
    boolean inner = step == Junction.Step.INNER || (both && bending > 0.0);
    Station.Face face = inner ? at.inner() : at.outer();
    double bent = inner ? bending : -bending;
    double q = fillet / thin;
    Optional<Junction.Notch> notch = Optional.empty();
    if (q >= Fillet.LEAST) {
      double height = thick / thin - 1.0;
      double t = Fillet.tension(both, q, height);
      double b = Fillet.bending(both, q, height);
      double grown = 1.0 + raised(stretching, t) + raised(bent, b);
      notch = Optional.of(new Junction.Notch(t, b, grown / Math.sqrt(face.hoopStretch()) - 1.0));
    }
    return new Junction(
        at,
        Angle.rad(rest[i]),
        Length.m(thin),
        Double.isInfinite(thick) ? Optional.empty() : Optional.of(Length.m(thick)),
        step,
        inner,
        stretching,
        bent,
        notch,
        caveats(q, thin / thick, plain, face));
  }

  /** What tears is raised; what relieves is not, since both are not greatest at one place. */
  private static double raised(double part, double factor) {
    return part > 0.0 ? factor * part : part;
  }

  private static List<Caveat> caveats(double q, double ratio, boolean plain, Station.Face face) {
    Checks checks = Checks.of(MODEL, ELEMENTS);
    if (q < Fillet.LEAST) {
      ValidityRange range =
          new ValidityRange(MODEL, "fillet / thin wall", Fillet.LEAST, Fillet.MOST, "", ELEMENTS);
      String message =
          "the strain at a sharp corner is without bound in theory: round the corner with at least "
              + "a tenth of the thin wall";
      checks.note(
          new Caveat(MODEL, message, ELEMENTS, Optional.of(new Caveat.Excursion(q, range))));
    } else {
      checks.check("fillet / thin wall", Fillet.LEAST, Fillet.MOST, q);
      double nominal = face.meridianStretch() - 1.0;
      checks.check("nominal strain at a fillet", -1.0, MOST, nominal);
      if (nominal > LARGE) {
        checks.note("at large strain the fillet opens and the linear factor overstates");
      }
    }
    checks.check("thin / thick wall", 0.0, Fillet.SHALLOW, ratio);
    if (plain) {
      checks.note("the rigid stretch shows no step: taken as a solid on both faces");
    }
    if (face.contact().pa() > 0.0) {
      checks.note("an obstacle presses on this face; the factor is that of a free one");
    }
    return checks.caveats();
  }
}
