package org.flexwright.shells;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import java.util.List;
import java.util.stream.Stream;
import org.flexwright.evidence.Factor;
import org.flexwright.grade.Grade;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.response.Channel;
import org.flexwright.response.Lever;
import org.flexwright.response.LoadCase;
import org.flexwright.response.LoadPath;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.shells.bellows.Bellows;
import org.flexwright.shells.inflate.Bore;
import org.flexwright.shells.inflate.Sleeve;
import org.flexwright.shells.tube.Ring;
import org.flexwright.shells.wall.CircularPlate;
import org.flexwright.shells.wall.Strip;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every part of this module keeps. */
final class PartsTest {

  /** A part with a load it understands; its first lever is the wall. */
  record Sample<P extends Part<P>>(P part, LoadCase load, double lengthPower) {
    Response in(Grade grade) {
      return part.respond(grade, load);
    }

    Lever<P> wall() {
      return part.levers().get(0);
    }

    Sample<P> wall(double factor) {
      return new Sample<>(wall().set(part, wall().of(part).times(factor)), load, lengthPower);
    }

    @Override
    public String toString() {
      return part.toString();
    }
  }

  static Stream<Sample<?>> samples() {
    return Stream.of(
        new Sample<>(
            Bellows.convolutions(5).meanRadius(mm(15)).depth(mm(8)).pitch(mm(14)).wall(mm(0.9)),
            LoadCase.toTravel(mm(6)),
            2),
        new Sample<>(
            Bellows.omega(4).meanRadius(mm(20)).torus(mm(4)).wall(mm(0.6)),
            LoadCase.toTravel(mm(3)),
            2),
        new Sample<>(
            Ring.outside(mm(20)).length(mm(40)).wall(mm(1.2)), LoadCase.toTravel(mm(0.8)), 2),
        new Sample<>(
            Strip.of(Strip.Ends.GUIDED, mm(20), mm(30), mm(1)), LoadCase.toTravel(mm(2)), 2),
        new Sample<>(
            CircularPlate.of(CircularPlate.Rim.CLAMPED, mm(20), mm(4), mm(1.2)),
            LoadCase.toTravel(mm(0.5)),
            2),
        new Sample<>(
            CircularPlate.of(CircularPlate.Rim.SUPPORTED, mm(20), mm(4), mm(1.2)),
            LoadCase.toTravel(mm(0.5)),
            2),
        new Sample<>(
            Sleeve.outside(mm(21.4)).span(mm(30)).wall(mm(0.6)).into(Bore.of(mm(22))),
            LoadCase.toHold(Force.newtons(5)),
            0));
  }

  static List<Grade> grades() {
    return List.of(Grades.polyurethane(), Grades.rubber());
  }

  @ParameterizedTest
  @MethodSource("samples")
  void pathRunsFromRestToTheLoad(Sample<?> s) {
    for (Grade grade : grades()) {
      Response r = s.in(grade);
      LoadPath path = r.path();
      assertThat(r.termination().complete()).isTrue();
      for (Channel c : path.channels()) {
        assertThat(path.value(c, 0)).as(c + " at rest").isZero();
        double[] values = path.values(c);
        for (int i = 1; i < values.length; i++) {
          assertThat(values[i]).as(c + " of state " + i).isGreaterThanOrEqualTo(values[i - 1]);
        }
      }
      if (s.load() instanceof LoadCase.ToTravel to) {
        assertThat(path.last(Channel.TRAVEL)).isEqualTo(to.travel().m());
        assertThat(path.last(Channel.FORCE)).isEqualTo(r.load().nominal());
      } else if (s.load() instanceof LoadCase.ToHold hold) {
        assertThat(path.last(Channel.FORCE)).isEqualTo(hold.force().newtons());
        assertThat(path.last(Channel.PRESSURE)).isEqualTo(r.load().nominal());
      }
      assertThat(path.last(Channel.STRAIN)).isCloseTo(r.strain().nominal(), within(1e-12));
      assertThat(r.sources()).isNotEmpty();
      assertThat(s.part().printedVolume().m3()).isPositive();
      assertThat(s.part().thinnest().size().m()).isCloseTo(firstLever(s).m(), within(1e-15));
      assertThat(r.toString()).matches("\\p{ASCII}+");
    }
  }

  private static <P extends Part<P>> Length firstLever(Sample<P> s) {
    return s.wall().of(s.part());
  }

  @ParameterizedTest
  @MethodSource("samples")
  void exponentsAreThoseOfThePublicDoor(Sample<?> s) {
    double step = 1e-3;
    for (Grade grade : grades()) {
      Response r = s.in(grade);
      double offset = r.load().offset();
      Response stiff = s.in(grade.measuredModulus(Math.exp(step), 1.0));
      Response soft = s.in(grade.measuredModulus(Math.exp(-step), 1.0));
      double modulus = power(stiff.load().nominal() - offset, soft.load().nominal() - offset, step);
      assertThat(r.load().exponents().of(Factor.MODULUS)).isCloseTo(modulus, within(1e-4));
      double ofStrain = power(stiff.strain().nominal(), soft.strain().nominal(), step);
      assertThat(r.strain().exponents().of(Factor.MODULUS)).isCloseTo(ofStrain, within(1e-4));
      Response thick = s.wall(Math.exp(step)).in(grade);
      Response thin = s.wall(Math.exp(-step)).in(grade);
      double size = power(thick.load().nominal() - offset, thin.load().nominal() - offset, step);
      assertThat(r.load().exponents().of(Factor.SIZE_BIAS)).isCloseTo(size, within(1e-3));
      double strain = power(thick.strain().nominal(), thin.strain().nominal(), step);
      assertThat(r.strain().exponents().of(Factor.SIZE_BIAS)).isCloseTo(strain, within(1e-3));
    }
  }

  private static double power(double up, double down, double step) {
    return Math.log(up / down) / (2 * step);
  }

  @ParameterizedTest
  @MethodSource("samples")
  void loadRisesWithTheWall(Sample<?> s) {
    for (Grade grade : grades()) {
      double last = 0.0;
      for (double factor = 0.3; factor < 2.5; factor *= 1.05) {
        double load = s.wall(factor).in(grade).load().nominal();
        assertThat(load).isGreaterThan(last);
        last = load;
      }
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void leversSetWhatTheyRead(Sample<?> s) {
    levers(s);
  }

  private static <P extends Part<P>> void levers(Sample<P> s) {
    for (Lever<P> lever : s.part().levers()) {
      Length more = lever.of(s.part()).times(1.01);
      P changed = lever.set(s.part(), more);
      assertThat(lever.of(changed)).isEqualTo(more);
      assertThat(changed).isNotEqualTo(s.part());
      assertThat(lever.set(changed, lever.of(s.part()))).isEqualTo(s.part());
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void doubleSizeGivesFourfoldForceAtTheSameStrain(Sample<?> s) {
    Response one = s.in(Grades.polyurethane());
    Response two = doubled(s.part()).respond(Grades.polyurethane(), doubled(s.load()));
    double scale = Math.pow(2, s.lengthPower());
    assertThat(two.load().nominal())
        .isCloseTo(scale * one.load().nominal(), within(1e-8 * two.load().nominal()));
    assertThat(two.strain().nominal()).isCloseTo(one.strain().nominal(), within(1e-9));
  }

  private static LoadCase doubled(LoadCase load) {
    return load instanceof LoadCase.ToTravel to
        ? LoadCase.toTravel(to.travel().times(2))
        : LoadCase.toHold(((LoadCase.ToHold) load).force().times(4));
  }

  private static Part<?> doubled(Part<?> part) {
    if (part instanceof Bellows b) {
      return b.meanRadius(b.meanRadius().times(2))
          .depth(b.depth().times(2))
          .pitch(b.pitch().times(2))
          .wall(b.wall().times(2));
    }
    if (part instanceof org.flexwright.shells.bellows.OmegaBellows b) {
      return b.meanRadius(b.meanRadius().times(2))
          .torus(b.torus().times(2))
          .wall(b.wall().times(2));
    }
    if (part instanceof Ring r) {
      return Ring.outside(r.outside().times(2)).length(r.length().times(2)).wall(r.wall().times(2));
    }
    if (part instanceof Strip p) {
      return Strip.of(p.ends(), p.length().times(2), p.width().times(2), p.wall().times(2))
          .build(p.build());
    }
    if (part instanceof CircularPlate p) {
      return CircularPlate.of(p.rim(), p.radius().times(2), p.patch().times(2), p.wall().times(2));
    }
    Sleeve s = (Sleeve) part;
    return Sleeve.outside(s.outside().times(2))
        .span(s.span().times(2))
        .wall(s.wall().times(2))
        .into(Bore.of(s.bore().diameter().times(2)));
  }
}
