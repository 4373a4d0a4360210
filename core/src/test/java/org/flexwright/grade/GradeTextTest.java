package org.flexwright.grade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.flexwright.InvalidInputException;
import org.flexwright.condition.OgdenRoxburgh;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Factor;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.fit.LawInData;
import org.flexwright.hardness.ShoreA;
import org.flexwright.internal.Library;
import org.flexwright.law.Deformation;
import org.flexwright.law.HenckyCurve;
import org.flexwright.law.LawFamily;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.StretchRange;
import org.flexwright.law.classical.LawFamilies;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.law.classical.Ogden;
import org.flexwright.quantity.Density;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class GradeTextTest {

  private static final GradeText TEXT = GradeText.of();
  private static final double[][] STATES = {
    {1, 1, 1}, {1.0001, 1, 0.9999}, {1.3, 0.9, 0.85}, {1.1, 1.1, 0.82}, {0.8, 1.118, 1.118}
  };

  /** Everything a grade says, to the last bit. */
  private static void same(Grade a, Grade b) {
    assertThat(b.name()).isEqualTo(a.name());
    assertThat(b.generic()).isEqualTo(a.generic());
    assertThat(b.density()).isEqualTo(a.density());
    assertThat(b.poisson()).isEqualTo(a.poisson());
    assertThat(b.strainAtBreak(false)).isEqualTo(a.strainAtBreak(false));
    assertThat(b.process()).isEqualTo(a.process());
    assertThat(b.sources()).isEqualTo(a.sources());
    assertThat(b.caveats()).isEqualTo(a.caveats());
    assertThat(b.tested()).isEqualTo(a.tested());
    for (Factor f : Factor.values()) {
      assertThat(b.materialFactors().sigma(f)).isEqualTo(a.materialFactors().sigma(f));
      for (Factor g : Factor.values()) {
        assertThat(b.materialFactors().correlation(f, g))
            .isEqualTo(a.materialFactors().correlation(f, g));
      }
    }
    assertThat(b.law().getClass()).isEqualTo(a.law().getClass());
    assertThat(b.law().toString()).isEqualTo(a.law().toString());
    assertThat(b.law().range()).isEqualTo(a.law().range());
    for (double[] l : STATES) {
      double[] one = new double[6];
      double[] other = new double[6];
      a.law().hessian(l[0], l[1], l[2], one);
      b.law().hessian(l[0], l[1], l[2], other);
      assertThat(other).isEqualTo(one);
      a.law().gradient(l[0], l[1], l[2], one);
      b.law().gradient(l[0], l[1], l[2], other);
      assertThat(other).isEqualTo(one);
      assertThat(b.law().energy(l[0], l[1], l[2])).isEqualTo(a.law().energy(l[0], l[1], l[2]));
    }
  }

  private static StrainEnergy law(Random random, int depth) {
    int kind = random.nextInt(depth > 4 ? 3 : 6);
    return switch (kind) {
      case 0 -> curve(random);
      case 1 -> {
        Ogden ogden = Ogden.of(Pressure.mpa(0.1 + random.nextDouble()), 1 + random.nextDouble());
        for (int i = random.nextInt(6); i > 0; i--) {
          double sign = random.nextBoolean() ? 1 : -1;
          ogden =
              ogden.and(
                  Pressure.mpa(sign * random.nextDouble()), sign * (0.5 + random.nextDouble()));
        }
        yield ogden;
      }
      case 2 -> {
        LawFamily f = LawFamilies.ALL.get(random.nextInt(LawFamilies.ALL.size()));
        yield f.law(
            f.constants().stream()
                .mapToDouble(
                    c -> {
                      double v =
                          c.usualLow() + random.nextDouble() * (c.usualHigh() - c.usualLow());
                      return c.kind() == LawFamily.Constant.Kind.STRESS
                          ? Math.max(v, 1e-3) * 7e5
                          : v;
                    })
                .toArray());
      }
      case 3 -> law(random, depth + 1).scaled(0.2 + 3 * random.nextDouble());
      case 4 ->
          new LawInData(
              law(random, depth + 1),
              new StretchRange(
                  random.nextDouble(), 1 + random.nextDouble(), nasty(random), source(random)));
      default ->
          OgdenRoxburgh.of(
                  1.1 + random.nextDouble(),
                  Pressure.mpa(random.nextDouble() + 0.01),
                  random.nextDouble(),
                  1 + random.nextDouble(),
                  source(random))
              .conditioned(law(random, depth + 1), Pressure.mpa(0.01 + random.nextDouble()));
    };
  }

  private static HenckyCurve curve(Random random) {
    int n = 2 + random.nextInt(30);
    double[] strain = new double[n];
    Pressure[] stress = new Pressure[n];
    double e = 0.001 + 0.05 * random.nextDouble();
    double s = 1e4 + 1e6 * random.nextDouble();
    for (int i = 0; i < n; i++) {
      strain[i] = e;
      stress[i] = Pressure.pa(s);
      e *= 1.01 + 0.3 * random.nextDouble();
      s *= 1.01 + 0.5 * random.nextDouble();
    }
    return HenckyCurve.through(strain, stress);
  }

  private static String nasty(Random random) {
    StringBuilder text = new StringBuilder();
    for (int i = random.nextInt(20); i > 0; i--) {
      text.append(
          switch (random.nextInt(6)) {
            case 0 -> (char) random.nextInt(0x10000);
            case 1 -> "\\\"\n\r\t #=".charAt(random.nextInt(8));
            case 2 -> "\u00e4\u0131\u20ac\u2028\ufeff\u0085".charAt(random.nextInt(6));
            default -> (char) ('a' + random.nextInt(26));
          });
    }
    return text.toString();
  }

  private static Source source(Random random) {
    Source.Standing[] all = Source.Standing.values();
    return new Source(nasty(random), all[random.nextInt(all.length)]);
  }

  private static double extended(Random random) {
    double[] some = {
      Double.NaN, Double.POSITIVE_INFINITY, -0.0, Double.MIN_VALUE, Double.MAX_VALUE
    };
    return random.nextBoolean() ? random.nextGaussian() : some[random.nextInt(some.length)];
  }

  private static Grade grade(long seed) {
    Random random = new Random(seed);
    GradeBuilder b = new GradeBuilder(nasty(random), law(random, 0));
    b.generic = random.nextBoolean();
    b.density = Density.kgPerM3(1 + 2000 * random.nextDouble());
    b.poisson = 0.5 - 0.4 * random.nextDouble();
    b.strainAtBreak = 0.01 + 9 * random.nextDouble();
    for (Factor f : Factor.values()) {
      b.factors = b.factors.with(f, 2 * random.nextDouble());
    }
    if (random.nextBoolean()) {
      b.factors =
          b.factors.correlated(Factor.MODULUS, Factor.LIFE, 1.8 * (random.nextDouble() - 0.5));
    }
    b.process =
        random.nextBoolean()
            ? PrintProcess.beads(Length.mm(0.1 + random.nextDouble()))
            : PrintProcess.continuous(
                Length.mm(0.1 + random.nextDouble()), Length.mm(0.1 + random.nextDouble()));
    for (int i = random.nextInt(3); i > 0; i--) {
      b.process =
          new KnownProcess(
              b.process,
              Length.mm(random.nextDouble()),
              Length.mm(random.nextDouble()),
              1 + random.nextDouble());
      b.sources.add(source(random));
      b.caveats.add(Caveat.note(nasty(random), nasty(random), source(random)));
      double low = random.nextBoolean() ? Double.NEGATIVE_INFINITY : random.nextGaussian();
      ValidityRange range =
          new ValidityRange(
              nasty(random), nasty(random), low, low + 1, nasty(random), source(random));
      b.caveats.add(
          new Caveat(
              nasty(random),
              nasty(random),
              source(random),
              Optional.of(new Caveat.Excursion(extended(random), range))));
    }
    if (random.nextBoolean()) {
      b.tested = EnumSet.of(Deformation.values()[random.nextInt(3)], Deformation.UNIAXIAL);
    }
    return new Grade(b);
  }

  @Property(seed = "71", tries = 300)
  void anyGradeComesBackToTheLastBit(@ForAll long seed) {
    Grade grade = grade(seed);
    String text = TEXT.write(grade);
    Grade again = TEXT.read(text);
    same(grade, again);
    assertThat(TEXT.write(again)).isEqualTo(text);
    assertThat(TEXT.read(text.replace("\n", "\r\n")).name()).isEqualTo(grade.name());
  }

  @Test
  void everyFamilyIsSaved() {
    for (LawFamily family : LawFamilies.ALL) {
      double[] values =
          family.constants().stream()
              .mapToDouble(
                  c ->
                      c.kind() == LawFamily.Constant.Kind.STRESS
                          ? 3.3e5 * Math.max(c.usualHigh(), 1e-3) / 3
                          : (c.usualLow() + c.usualHigh()) / 3)
              .toArray();
      Grade grade = Grade.ofLaw(family.name(), family.law(values));
      same(grade, TEXT.read(TEXT.write(grade)));
      assertThat(TEXT.write(grade))
          .contains("law = " + (family.name().startsWith("Ogden") ? "Ogden" : family.name()));
    }
  }

  @Test
  void theUsualGradesAreSavedToAFile(@TempDir Path folder) throws IOException {
    List<Grade> grades =
        List.of(
            Grade.polyurethane(ShoreA.of(95).plusMinus(3)).measuredModulus(0.8, 1.1),
            Grade.rubber(ShoreA.of(60)).printedBy(PrintProcess.beads(Length.mm(0.45))),
            Grade.silicone(ShoreA.of(30)).measuredModulus(1.2, 1.05),
            Grade.ofDatasheet(Datasheet.of("d").stress(1, Pressure.mpa(10))),
            Grade.ofCurve("m", MeasuredCurveTest.curves("meunier_2008").get(0))
                .measuredSizes(Length.mm(0.02), Length.mm(0.01)));
    for (Grade grade : grades) {
      Path file = folder.resolve("grade.txt");
      Files.writeString(file, TEXT.write(grade));
      same(grade, TEXT.read(Files.readString(file)));
    }
  }

  /** A text as a person sees it, and one written by hand in another order. */
  @Test
  void aPersonCanReadAndWriteIt() {
    String text = TEXT.write(Grade.ofLaw("soft \"rubber\"", NeoHookean.of(Pressure.pa(400_000))));
    assertThat(text)
        .startsWith("# soft \\\"rubber\\\": neo-Hookean law, G 0.4 MPa\nformat = 1\nlibrary = ")
        .contains("\nname = \"soft \\\"rubber\\\"\"\n")
        .contains("\ndensity = 1200.0 kg/m3\n")
        .contains("\nlaw = neo-Hookean\nlaw.mu = 400000.0 Pa\n");
    String changed = text.replace("law.mu = 400000.0 Pa\n", "") + "\n# by hand\n law.mu=5E5 Pa";
    assertThat(TEXT.read(changed).law()).isEqualTo(NeoHookean.of(Pressure.pa(500_000)));
  }

  private record Line(double k) implements StrainEnergy {
    @Override
    public double energy(double a, double b, double c) {
      return k * (a * a + b * b + c * c - 3);
    }

    @Override
    public void gradient(double a, double b, double c, double[] out) {
      out[0] = 2 * k * a;
      out[1] = 2 * k * b;
      out[2] = 2 * k * c;
    }

    @Override
    public void hessian(double a, double b, double c, double[] out) {
      for (int i = 0; i < 6; i++) {
        out[i] = i < 3 ? 2 * k : 0;
      }
    }

    @Override
    public double shearModulus() {
      return 2 * k;
    }

    @Override
    public StretchRange range() {
      return new StretchRange(0.5, 2, "mine", Source.assumption("x"));
    }
  }

  private record Lines(String name) implements LawFamily {
    @Override
    public List<Constant> constants() {
      return List.of(Constant.stress("k", 0, 0.1, 1));
    }

    @Override
    public StrainEnergy law(double[] values) {
      return new Line(values[0]);
    }

    @Override
    public Optional<double[]> values(StrainEnergy law) {
      return law instanceof Line line ? Optional.of(new double[] {line.k}) : Optional.empty();
    }
  }

  @Test
  void aFamilyOfOnesOwnIsSavedAndNothingUnknown() {
    Grade mine = Grade.ofLaw("mine", new Line(1.0 / 3.0)).measuredModulus(1.5, 1.1);
    GradeText knows = GradeText.of(new Lines("my-law"));
    String text = knows.write(mine);
    same(mine, knows.read(text));
    assertThatThrownBy(() -> TEXT.write(mine))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("law to be saved")
        .hasMessageContaining("GradeText.of(family)");
    assertThatThrownBy(() -> TEXT.read(text))
        .hasMessageMatching("line \\d+, law.of is my-law, allowed is .*GradeText.of\\(family\\)");
    assertThatThrownBy(() -> GradeText.of(new Lines("Gent"))).hasMessageContaining("no other");
    assertThatThrownBy(() -> GradeText.of(new Lines("a b"))).hasMessageContaining("hyphens");
    PrintProcess process =
        new PrintProcess() {
          private final PrintProcess of = PrintProcess.beads(Length.mm(0.4));

          @Override
          public List<Length> sizes(Feature.Kind kind, Length from, Length to) {
            return of.sizes(kind, from, to);
          }

          @Override
          public boolean anySize(Feature.Kind kind) {
            return false;
          }

          @Override
          public Length smallest(Feature.Kind kind) {
            return of.smallest(kind);
          }

          @Override
          public Length bias() {
            return of.bias();
          }

          @Override
          public Length scatter() {
            return of.scatter();
          }

          @Override
          public double acrossLayers() {
            return 1;
          }

          @Override
          public double stiffnessBand() {
            return 1;
          }
        };
    Grade special = Grade.rubber(ShoreA.of(60)).printedBy(process);
    assertThatThrownBy(() -> TEXT.write(special)).hasMessageContaining("process to be saved");
  }

  @Test
  void errorsNameLineAndKey() {
    String text = TEXT.write(Grade.ofLaw("x", NeoHookean.of(Pressure.pa(400_000))));
    refused(text.replace("format = 1", "format = 2"), "line 2, format is 2, allowed is 1");
    refused(text + "colour = red\n", ", colour is red, allowed is a key of a grade");
    refused(text.replace("poisson = 0.49\n", ""), ", poisson is missing");
    refused(text.replace("= 0.49\n", "= 0.51\n"), "line 8, poisson: Poisson ratio is 0.51");
    refused(text.replace("= 0.49\n", "= O.49\n"), "line 8, poisson is O.49");
    refused(text.replace("= 0.49\n", "= infinity\n"), "line 8, poisson is infinity");
    refused(text.replace("= 0.49\n", "= 1E999\n"), "line 8, poisson is 1E999");
    refused(text.replace("400000.0 Pa", "400000.0 psi"), "law.mu is 400000.0 psi");
    refused(text.replace("400000.0 Pa", "-1 Pa"), "law: shear modulus is -1 Pa");
    refused(text.replace("name = \"x\"", "name = x"), "line 5, name is x");
    refused(text.replace("name = \"x\"", "name = \"\\u12\""), "four hex digits");
    refused(text + "poisson = 0.4\n", ", poisson is given again, allowed is once, as in line 8");
    refused(text.replace("sources = 0", "sources = 999999999"), ", sources is 999999999");
    refused(text.replace("sources = 0", "sources = 5"), ", source.1 is missing");
    refused(text + "nothing\n", " is nothing, allowed is key = value");
    refused("", "line 1, format is missing");
    refused("x".repeat(5_000_000), "length of the grade text");
    String deep = text.replace("law = neo-Hookean\n", "");
    StringBuilder nest = new StringBuilder(deep);
    String key = "law";
    for (int i = 0; i < 5000; i++) {
      nest.append(key).append(" = scaled\n").append(key).append(".factor = 2\n");
      key = i < 40 ? key + ".of" : "z" + i;
    }
    refused(nest.toString(), "at most 16 laws inside laws");
  }

  private static void refused(String text, String message) {
    assertThatThrownBy(() -> TEXT.read(text))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining(message);
  }

  /** Texts spoilt at random places are read or refused, and nothing else happens. */
  @Property(seed = "72", tries = 1500)
  void spoiltTextsAreReadOrRefused(
      @ForAll long seed, @ForAll @IntRange(min = 1, max = 8) int hurts) {
    Random random = new Random(seed);
    StringBuilder text = new StringBuilder(TEXT.write(grade(random.nextInt(50))));
    for (int i = 0; i < hurts && text.length() > 2; i++) {
      int at = random.nextInt(text.length());
      int to = Math.min(text.length(), at + 1 + random.nextInt(40));
      switch (random.nextInt(5)) {
        case 0 -> text.delete(at, to);
        case 1 -> text.insert(at, text.substring(at, to));
        case 2 -> text.setCharAt(at, (char) random.nextInt(0x10000));
        case 3 -> text.setCharAt(at, "0123456789.-+E=\"\\\n".charAt(random.nextInt(18)));
        default -> text.insert(at, nasty(random));
      }
    }
    try {
      String once = TEXT.write(TEXT.read(text.toString()));
      assertThat(TEXT.write(TEXT.read(once))).isEqualTo(once);
    } catch (InvalidInputException refused) {
      assertThat(refused.sentence()).isNotEmpty();
    }
  }

  @Property(seed = "73", tries = 2000)
  void garbageIsRefused(@ForAll String text) {
    assertThatThrownBy(() -> TEXT.read(text)).isInstanceOf(InvalidInputException.class);
  }

  @Test
  void aGenericGradeOfOtherFiguresSaysSo() {
    String text = TEXT.write(Grade.rubber(ShoreA.of(60)));
    Grade old = TEXT.read(text.replace("data = " + Library.DATA, "data = 0"));
    assertThat(old.caveats())
        .extracting(Caveat::message)
        .anyMatch(m -> m.startsWith("written with version 0 of the built-in figures"));
  }

  @Test
  void theStampIsTheVersionOfTheBuild() throws IOException {
    Matcher version =
        Pattern.compile("<version>([^<]+)</version>").matcher(Files.readString(Path.of("pom.xml")));
    assertThat(version.find()).isTrue();
    assertThat(Library.VERSION).isEqualTo(version.group(1));
  }
}
