package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.flexwright.quantity.Length.mm;

import org.assertj.core.data.Offset;
import org.flexwright.grade.Grade;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.Gent;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Pressure;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.response.ScaledValue;
import org.flexwright.run.RunControl;
import org.flexwright.shells.Grades;
import org.flexwright.shells.bellows.Bellows;
import org.flexwright.shells.dome.ClampedCap;
import org.flexwright.shells.dome.ConicalDisc;
import org.flexwright.shells.dome.DomeEdge;
import org.flexwright.shells.inflate.FlatMembrane;
import org.flexwright.shells.inflate.InflatedTube;
import org.flexwright.shells.wall.AnnularPlate;
import org.flexwright.shells.wall.CircularPlate;
import org.flexwright.shells.wall.PressedPlate;
import org.flexwright.shells.wall.TautMembrane;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The library's own closed forms of bodies of revolution: the engine lies within their bands. */
final class ClosedFormsTest {

  private static final double MEGA = 1e6;

  private static ScaledValue load(Part<?> part, double travel) {
    Response r = part.respond(Grades.linear(0.5), LoadCase.toTravel(mm(travel)), RunControl.none());
    return r.load();
  }

  private static void within(ScaledValue form, double engine) {
    assertThat(engine / form.nominal()).isBetween(form.modelLow(), form.modelHigh());
  }

  @ParameterizedTest
  @CsvSource({"0.2", "0.5", "0.8"})
  void annularPlate(double bore) {
    double wall = 0.2;
    AnnularPlate plate =
        AnnularPlate.of(
            CircularPlate.Rim.CLAMPED, AnnularPlate.Inner.GUIDED, mm(20), mm(20 * bore), mm(wall));
    double k =
        Runs.extrapolated(100, n -> LinearBodies.annulus(true, true, false, bore, wall / 20.0, n));
    double d = MEGA * LinearBodies.bending(wall * 1e-3);
    within(load(plate, 1e-3), 1e-6 * d / (k * 4e-4));
  }

  @ParameterizedTest
  @CsvSource({"0.01,CLAMPED", "1.5,CLAMPED", "4,CLAMPED", "0.01,SUPPORTED", "3,SUPPORTED"})
  void pressedPlate(double depth, PressedPlate.Rim rim) {
    double wall = 0.01;
    int n = 120;
    int q = 3 * (n + 1);
    int[] held =
        rim == PressedPlate.Rim.CLAMPED
            ? new int[] {0, 2, q - 3, q - 2, q - 1}
            : new int[] {0, 2, q - 3, q - 2};
    ShellSolver s = Runs.solver(Meshes.disc(1.0, wall, n), Runs.YOUNG, Loading.pressure(q), held);
    Runs.reach(s, new Control.Unknown(1), -depth * wall, 4);
    within(load(PressedPlate.of(rim, mm(20), mm(0.2)), depth * 0.2), s.factor * MEGA);
  }

  @Test
  void tautMembrane() {
    double p = -LargeBodies.membrane(Runs.YOUNG, 0.05, 1e-3, 120)[0] * 1e-3 / 3.0;
    TautMembrane form = TautMembrane.of(CircularPlate.Rim.SUPPORTED, mm(20), mm(0.02));
    within(load(form, 1.0), p * MEGA);
  }

  @ParameterizedTest
  @CsvSource({"60,20", "90,20", "40,100", "90,100"})
  void domeEdge(double edge, double ratio) {
    double over = Runs.extrapolated(300, n -> LinearBodies.domeEdge(edge, ratio, n)[0]);
    DomeEdge form = DomeEdge.of(mm(ratio), Angle.degrees(edge), mm(1));
    ScaledValue load = load(form, 1e-3);
    // Geckeler's load, from the definition, over what the engine says
    double steep = Math.sqrt(1.5 * ratio);
    double sine = Math.sin(Math.toRadians(edge));
    double force = 1e-6 * MEGA * 1e-3 / (2.0 * ratio * 1e-3 * steep * sine * sine * over);
    within(load, 2.0 * Math.PI * ratio * 1e-3 * sine * force);
  }

  @ParameterizedTest
  @CsvSource({"20,1,0.5", "20,1.5,1", "20,1.5,1.3", "20,3,0.5", "32,1.5,1", "10,1.5,0.5"})
  void conicalDisc(double bore, double height, double share) {
    double force = LargeBodies.discSpring(0.5 * bore, height, 60, share)[0];
    within(load(ConicalDisc.of(mm(40), mm(bore), mm(1), mm(height)), share * height), force);
  }

  @ParameterizedTest
  @CsvSource({"3.6", "4", "5"})
  void clampedCap(double lambda) {
    double ratio = 400.0;
    double rim = lambda * 100.0 / Math.sqrt(3.0 * ratio);
    Response r =
        ClampedCap.of(mm(rim), mm(100), mm(100.0 / ratio))
            .respond(Grades.linear(0.5), LoadCase.toLimit(), RunControl.none());
    double classical = MEGA * 2.0 / (1.5 * ratio * ratio);
    double limit = Runs.extrapolated(40, n -> LargeBodies.cap(lambda, ratio, n));
    within(r.load(), limit * classical);
  }

  @ParameterizedTest
  @CsvSource({"4,0.15,0.03", "8,0.25,0.06", "4,0.35,0.1", "6,0.25,0.12"})
  void bellows(double mean, double round, double wall) {
    double k = Runs.extrapolated(40, n -> LinearBodies.bellows(mean, round, wall, n));
    Bellows form =
        Bellows.convolutions(1)
            .meanRadius(mm(5 * mean))
            .depth(mm(10))
            .pitch(mm(40 * round))
            .wall(mm(10 * wall));
    double stiffness = k * MEGA * mean * 1e-2 * Math.pow(wall, 3);
    within(load(form, 1e-3), stiffness * 1e-6);
  }

  @ParameterizedTest
  @CsvSource({"20,0.1", "20,0.03", "10,0.1"})
  void omegaBellows(double mean, double wall) {
    double b3 = Runs.extrapolated(80, n -> LinearBodies.omega(mean, wall, false, n));
    Part<?> form = Bellows.omega(1).meanRadius(mm(5 * mean)).torus(mm(10)).wall(mm(10 * wall));
    double stiffness = b3 * MEGA * mean * 1e-2 * Math.pow(wall, 3) / 9.0;
    within(load(form, 1e-3), stiffness * 1e-6);
  }

  @Test
  void flatMembrane() {
    Grade rubber = Grade.ofLaw("rubber", NeoHookean.of(Pressure.mpa(1.0))).poisson(0.5);
    for (double height : new double[] {0.3, 0.8}) {
      double p = -LargeBodies.membrane(Runs.SHEAR, height, 0.002, 120)[0] * 0.002 * MEGA;
      Response r =
          FlatMembrane.of(mm(50), mm(0.1))
              .respond(rubber, LoadCase.toTravel(mm(50 * height)), RunControl.none());
      // both solve the same equations: the engine's mesh and its bending are what is left
      assertThat(p / r.load().nominal()).isCloseTo(1.0, Offset.offset(1e-3));
    }
  }

  @Test
  void bulgingTube() {
    StrainEnergy gent = Gent.of(Pressure.mpa(1.0), 97.2);
    Grade rubber = Grade.ofLaw("rubber", gent).poisson(0.5);
    double[] limits = LargeBodies.tubeLimits(Runs.SHEAR, 0.02, 5.0, 20);
    Grade neo = Grade.ofLaw("rubber", NeoHookean.of(Pressure.mpa(1.0))).poisson(0.5);
    InflatedTube tube = InflatedTube.of(mm(101), mm(2000), mm(1));
    // mean radius 50, wall 1 mm: the thick tube's own limit
    double starts = tube.bulging(neo).initiation().orElseThrow().pressure().pa();
    assertThat(limits[0] * 0.02 * MEGA / starts).isCloseTo(1.0, Offset.offset(1e-4));
    double runs = tube.bulging(rubber).propagation().orElseThrow().pa();
    double[] p = LargeBodies.bulge(gent, 0.02, 10.0, 0.05, 80.0, 40, 60);
    double last = p[p.length - 1] * 0.02 * MEGA;
    assertThat(last / runs).isCloseTo(1.0, Offset.offset(2e-3));
  }
}
