package org.flexwright.shells;

import static org.assertj.core.api.Assertions.assertThat;
import static org.flexwright.quantity.Length.mm;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.flexwright.evidence.Factor;
import org.flexwright.grade.Grade;
import org.flexwright.quantity.Force;
import org.flexwright.response.Channel;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.shells.bellows.Bellows;
import org.flexwright.shells.inflate.Bore;
import org.flexwright.shells.inflate.Sleeve;
import org.flexwright.shells.tube.Ring;
import org.flexwright.shells.wall.CircularPlate;
import org.flexwright.shells.wall.Strip;
import org.flexwright.testing.Csv;

/** Random parts, far beyond the ranges of the formulas: finite answers, in order, with caveats. */
final class RandomPartsPropertiesTest {

  private static final Map<String, double[]> RANGES = ranges();
  private static final List<Grade> GRADES = List.of(Grades.polyurethane(), Grades.rubber());

  private static Map<String, double[]> ranges() {
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(
                    RandomPartsPropertiesTest.class.getResourceAsStream("random-parts.csv")),
                StandardCharsets.UTF_8))) {
      Map<String, double[]> ranges = new HashMap<>();
      for (Csv.Row row :
          Csv.read("random-parts.csv", reader.lines().toList(), List.of("what", "low", "high"))
              .rows()) {
        ranges.put(
            row.cell("what"),
            new double[] {
              Double.parseDouble(row.cell("low")), Double.parseDouble(row.cell("high"))
            });
      }
      return ranges;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A number of a range, evenly in its logarithm. */
  private static double draw(Random random, String what) {
    double[] range = Objects.requireNonNull(RANGES.get(what), what);
    return range[0] * Math.pow(range[1] / range[0], random.nextDouble());
  }

  private static Grade grade(Random random) {
    return GRADES.get(random.nextInt(GRADES.size())).poisson(draw(random, "poisson"));
  }

  @Property(tries = 5000, seed = "11")
  void bellows(@ForAll long seed) {
    Random random = new Random(seed);
    double radius = draw(random, "mean radius");
    double depth = radius * draw(random, "depth over mean radius");
    double pitch = depth * draw(random, "pitch over depth");
    double wall = 0.5 * pitch * draw(random, "wall over half pitch");
    Part<?> part =
        Bellows.convolutions((int) draw(random, "convolutions"))
            .meanRadius(mm(radius))
            .depth(mm(depth))
            .pitch(mm(pitch))
            .wall(mm(wall));
    pulled(part, random);
  }

  @Property(tries = 5000, seed = "12")
  void omega(@ForAll long seed) {
    Random random = new Random(seed);
    double radius = draw(random, "mean radius");
    double torus = 0.5 * radius * draw(random, "depth over mean radius");
    double wall = 2.0 * torus * draw(random, "wall over half pitch");
    Part<?> part =
        Bellows.omega((int) draw(random, "convolutions"))
            .meanRadius(mm(radius))
            .torus(mm(torus))
            .wall(mm(wall));
    pulled(part, random);
  }

  @Property(tries = 5000, seed = "13")
  void ringStripAndPlate(@ForAll long seed) {
    Random random = new Random(seed);
    double outside = draw(random, "outside");
    double wall = outside * draw(random, "wall over outside");
    double length = outside * draw(random, "length over outside");
    pulled(Ring.outside(mm(outside)).length(mm(length)).wall(mm(wall)), random);
    Strip.Ends ends = Strip.Ends.values()[random.nextInt(3)];
    double thin = length * draw(random, "wall over radius");
    pulled(Strip.of(ends, mm(length), mm(outside), mm(thin)), random);
    CircularPlate.Rim rim = CircularPlate.Rim.values()[random.nextInt(2)];
    double patch = outside * draw(random, "patch over radius");
    double plate = outside * draw(random, "wall over radius");
    pulled(CircularPlate.of(rim, mm(outside), mm(patch), mm(plate)), random);
  }

  @Property(tries = 5000, seed = "14")
  void sleeve(@ForAll long seed) {
    Random random = new Random(seed);
    double outside = draw(random, "outside");
    double friction = draw(random, "friction");
    Sleeve part =
        Sleeve.outside(mm(outside))
            .span(mm(outside * draw(random, "length over outside")))
            .wall(mm(outside * draw(random, "wall over outside")))
            .into(
                Bore.of(mm(outside * (1 + draw(random, "gap over outside"))))
                    .friction(friction, 0.5 * friction));
    Grade grade = grade(random);
    double force = draw(random, "force");
    Response r = part.respond(grade, LoadCase.toHold(Force.newtons(force)));
    sound(r);
    assertThat(r.path().last(Channel.FORCE)).isEqualTo(force);
    assertThat(r.load().exponents().of(Factor.MODULUS)).isGreaterThan(0.0);
    Response more = part.respond(grade, LoadCase.toHold(Force.newtons(1.1 * force)));
    assertThat(more.load().nominal()).isGreaterThanOrEqualTo(r.load().nominal());
  }

  private static void pulled(Part<?> part, Random random) {
    Grade grade = grade(random);
    double travel = draw(random, "travel");
    Response r = part.respond(grade, LoadCase.toTravel(mm(travel)));
    sound(r);
    assertThat(r.path().last(Channel.TRAVEL)).isEqualTo(mm(travel).m());
    assertThat(r.load().exponents().of(Factor.MODULUS)).isEqualTo(1.0);
    Response more = part.respond(grade, LoadCase.toTravel(mm(1.1 * travel)));
    assertThat(more.load().nominal()).isGreaterThan(r.load().nominal());
  }

  private static void sound(Response r) {
    assertThat(r.load().nominal()).isFinite().isPositive();
    assertThat(r.strain().nominal()).isFinite().isPositive();
    for (Factor f : Factor.values()) {
      assertThat(r.load().exponents().of(f)).isFinite();
      assertThat(r.strain().exponents().of(f)).isFinite();
    }
    for (Channel c : r.path().channels()) {
      for (double value : r.path().values(c)) {
        assertThat(value).isFinite().isNotNegative();
      }
    }
    if (r.strain().nominal() > 1.0) {
      assertThat(r.caveats()).isNotEmpty();
    }
    assertThat(r.toString()).doesNotContain("NaN");
  }
}
