package org.flexwright.shells.revolution;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.Gent;
import org.flexwright.law.classical.MooneyRivlin;
import org.flexwright.quantity.Pressure;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The engine against handbooks and against other routes to the same number. */
final class RevolutionTest {

  @RegisterExtension
  static final VerificationTable TABLE =
      VerificationTable.of(RevolutionTest.class, "revolution.csv");

  private static final Map<String, StrainEnergy> LAWS =
      Map.of(
          "neo", Runs.SHEAR,
          "mooney", MooneyRivlin.of(Pressure.pa(0.5 / 1.1), Pressure.pa(0.05 / 1.1)),
          "gent", Gent.of(Pressure.pa(1.0), 97.2));

  static Stream<ReferenceCase> cases() {
    return TABLE.cases();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void meetsReference(ReferenceCase c) {
    TABLE.check(c, c.inputs().containsKey("law") ? inflated(c) : elastic(c));
  }

  private static double elastic(ReferenceCase c) {
    return switch (c.formula()) {
      case "plate far bent", "pressed membrane", "thick balloon", "clamped cap snap" -> far(c);
      case "pushed dome far in", "disc spring" -> far(c);
      default -> linear(c);
    };
  }

  private static boolean is(ReferenceCase c, String input, String word) {
    return c.text(input).equals(word);
  }

  private static double linear(ReferenceCase c) {
    return switch (c.formula()) {
      case "solid plate" -> plate(c);
      case "annular plate" ->
          Runs.extrapolated(
              100,
              n ->
                  LinearBodies.annulus(
                      is(c, "rim", "clamped"),
                      is(c, "inner", "guided"),
                      is(c, "load", "pressure"),
                      c.input("bore"),
                      1e-3,
                      n));
      case "cylinder edge" ->
          Runs.extrapolated(
              200, n -> LinearBodies.cylinderEdge(c.input("ratio"), n)[(int) c.input("what")]);
      case "ring load on a cylinder" ->
          Runs.extrapolated(200, n -> LinearBodies.cylinderRing(c.input("ratio"), n));
      case "dome edge" ->
          Runs.extrapolated(
              400,
              n ->
                  LinearBodies.domeEdge(c.input("edge"), c.input("ratio"), n)[
                      (int) c.input("what")]);
      case "domed cylinder joint" ->
          Runs.extrapolated(
              400, n -> LinearBodies.flask(c.input("ratio"), n)[(int) c.input("what")]);
      case "pushed dome at rest" ->
          Runs.extrapolated(
              400, n -> LinearBodies.pushedDome(c.input("ratio"), c.input("share"), n));
      case "bellows convolution" ->
          Runs.extrapolated(
              60, n -> LinearBodies.bellows(c.input("mean"), c.input("round"), c.input("wall"), n));
      case "omega convolution" ->
          Runs.extrapolated(
              100, n -> LinearBodies.omega(20.0, 0.3 / c.input("c3"), is(c, "held", "yes"), n));
      default -> throw new IllegalArgumentException("no body for " + c.formula());
    };
  }

  private static double plate(ReferenceCase c) {
    boolean clamped = is(c, "rim", "clamped");
    double wall = c.input("wall");
    return is(c, "load", "ring")
        ? Runs.extrapolated(100, n -> LinearBodies.ringOnPlate(clamped, wall, n))
        : Runs.extrapolated(100, n -> LinearBodies.pressedPlate(clamped, wall, n));
  }

  private static double far(ReferenceCase c) {
    return switch (c.formula()) {
      case "plate far bent" ->
          Runs.extrapolated(
              60,
              n -> LargeBodies.plate(is(c, "rim", "clamped"), c.input("load"), c.input("wall"), n));
      case "pressed membrane" ->
          Runs.extrapolated(60, n -> LargeBodies.hencky(c.input("height"), c.input("wall"), n));
      case "thick balloon" ->
          Runs.extrapolated(40, n -> LargeBodies.sphere(c.input("ratio"), c.input("bore"), n));
      case "clamped cap snap" ->
          Runs.extrapolated(40, n -> LargeBodies.cap(c.input("lambda"), 4000.0, n));
      case "pushed dome far in" ->
          LargeBodies.pushedDome(
              c.input("ratio"), 1.5, c.input("ratio") > 1000.0 ? 400 : 160, c.input("travel"))[0];
      case "disc spring" ->
          Runs.extrapolated(
              20,
              n ->
                  LargeBodies.discSpring(c.input("inner"), c.input("height"), n, c.input("travel"))[
                      0]);
      default -> throw new IllegalArgumentException("no body for " + c.formula());
    };
  }

  private static double inflated(ReferenceCase c) {
    String name = c.text("law");
    StrainEnergy law = Objects.requireNonNull(LAWS.get(name));
    double wall = 0.002;
    return switch (c.formula()) {
      case "inflated disc" -> disc(c, law, wall);
      case "thin balloon" -> {
        double to = name.equals("neo") ? 2.0 : name.equals("gent") ? 5.0 : 4.0;
        yield Runs.extrapolated(
            30, n -> LargeBodies.balloonLimits(law, wall, to, 20, n)[(int) c.input("which")]);
      }
      case "closed tube limit" ->
          LargeBodies.tubeLimits(law, wall, name.equals("neo") ? 5.0 : 130.0, 60)[
              (int) c.input("which")];
      case "bulge along a tube" -> {
        double[] p = LargeBodies.bulge(law, 0.02, 10.0, 0.05, 80.0, 40, 100);
        yield p[p.length - 1];
      }
      default -> throw new IllegalArgumentException("no body for " + c.formula());
    };
  }

  private static double disc(ReferenceCase c, StrainEnergy law, double wall) {
    if (c.input("load") == 0.0) {
      List<PathFollower.LimitPoint> limits = LargeBodies.membraneLimits(law, -6.0, wall, 12, 60);
      return -limits.get(0).factor() / wall;
    }
    double[] figures = LargeBodies.membraneAt(law, -c.input("load"), wall, 100);
    return Math.abs(figures[(int) c.input("what")]);
  }
}
