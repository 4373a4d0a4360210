package org.flexwright.lattice.cell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/** Checks on x = d/L, and the ratios of one round strut of length 1 and modulus 1. */
final class Slenderness {

  static final Source SOLID_ELEMENTS =
      Source.derived(
          "solid finite elements of one periodic cell, Poisson's ratio 0.3 and 0.49, 3 %");

  private Slenderness() {}

  static double check(StrutCell cell, double x) {
    Require.positive("slenderness of the struts", x, "");
    Require.that(
        x < cell.mergingSlenderness(),
        "slenderness of the struts",
        x,
        () -> "below " + Text.number(cell.mergingSlenderness()),
        "thicker struts have merged along their length; take a larger cell or a thinner strut");
    return x;
  }

  static double poisson(double value) {
    return Require.between("Poisson's ratio of the solid", value, 0.0, 0.5, "");
  }

  /** 1/A + 1/(kappa G A): stretch and shear flexibility. */
  static double shearFlexibility(double x, double poisson) {
    double kappa = 6.0 * (1.0 + poisson) / (7.0 + 6.0 * poisson); // Cowper 1966, circle
    return 2.0 * (1.0 + poisson) / (kappa * area(x));
  }

  static double area(double x) {
    return Math.PI * x * x / 4.0;
  }

  static double inertia(double x) {
    return Math.PI * x * x * x * x / 64.0;
  }

  /** 12 EI/(kappa GA L^2) of a strut. */
  static double shearNumber(double x, double poisson) {
    return 12.0 * inertia(x) * shearFlexibility(x, poisson);
  }

  static List<Caveat> caveats(
      String cell, Optional<JointStiffening> joints, double peakLimit, double x, double poisson) {
    List<Caveat> caveats = new ArrayList<>();
    String model = cell + " joint stiffening";
    joints.ifPresentOrElse(
        j -> {
          new ValidityRange(model, "slenderness d/L", 0.0, j.last(), "", SOLID_ELEMENTS)
              .check(x)
              .ifPresent(caveats::add);
          new ValidityRange(model, "Poisson's ratio", 0.3, j.mostPoisson(), "", SOLID_ELEMENTS)
              .check(poisson)
              .ifPresent(caveats::add);
        },
        () ->
            caveats.add(
                Caveat.note(
                    model,
                    "fat joints of this cell are unknown; they add stiffness, see the band",
                    UNKNOWN)));
    new ValidityRange(cell + " peak strut strain", "slenderness d/L", 0.0, peakLimit, "", PEAK)
        .check(x)
        .ifPresent(caveats::add);
    return caveats;
  }

  private static final Source UNKNOWN =
      Source.assumption("no cell here is stiffened by its joints more than by exp(3.2 d/L)");

  private static final Source PEAK =
      Source.derived("periodic Timoshenko frame, peak fibre strain at the node");
}
