package org.flexwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.flexwright.testing.BuildFolders;
import org.junit.jupiter.api.Test;

/** Runs the JShell line that stands in the Javadoc of a type, as a reader would copy it. */
final class JavadocLinesTest {
  private static final Pattern LINE =
      Pattern.compile("JShell:\\s+\\{@code ((?:[^{}]|\\{[^{}]*\\})*)\\}", Pattern.DOTALL);

  /** At least this many types have one. */
  private static final int FEWEST = 70;

  /** What the lines take for granted. */
  private static final List<String> GIVEN =
      List.of(
          "var grade = Grade.polyurethane(ShoreA.of(95)).printedBy(PrintProcess.beads(mm(0.3)));",
          "var law = NeoHookean.of(mpa(0.4));",
          "var source = Source.derived(\"an example\");",
          "var load = LoadCase.toTravel(mm(1));",
          "var neck = Bellows.convolutions(5).meanRadius(mm(15)).depth(mm(8)).pitch(mm(14))"
              + ".wall(mm(0.9));",
          "var part = neck;",
          "var strip = Strip.of(Strip.Ends.CANTILEVER, mm(30), mm(10), mm(1));",
          "var pad = LatticePad.of(Cells.KELVIN).footprint(mm(60), mm(60)).height(mm(20))"
              + ".cell(mm(10)).strut(mm(0.8));",
          "var curves = List.of(TestCurve.of(\"strip\", Deformation.UNIAXIAL,"
              + " List.of(TestCurve.at(1.2, mpa(0.2)), TestCurve.at(1.6, mpa(0.4)),"
              + " TestCurve.at(2.2, mpa(0.6)))));",
          "var meridian = Meridian.from(mm(10), mm(0)).lineTo(mm(10), mm(30)).wall(mm(1));",
          "var shell = RevolvedShell.of(meridian);",
          "var path = shell.run(law, Drive.pressure(kpa(20)));",
          "var fitted = LawFit.of(LawFamilies.MOONEY_RIVLIN).fit(curves);");

  private record Found(String file, String code) {}

  private static List<Found> lines() throws IOException {
    List<Found> found = new ArrayList<>();
    for (String module : List.of("core", "shells", "lattice")) {
      Path root = BuildFolders.root().resolve(module).resolve("src/main/java");
      try (Stream<Path> files = Files.walk(root)) {
        for (Path file : files.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
          Matcher m = LINE.matcher(Files.readString(file));
          while (m.find()) {
            String code = m.group(1).replaceAll("\\s*\\n\\s*\\*\\s?", " ").strip();
            found.add(new Found(file.getFileName().toString(), code));
          }
        }
      }
    }
    return found;
  }

  @Test
  void everyLineRuns() throws IOException {
    List<Found> found = lines();
    assertThat(found).hasSizeGreaterThanOrEqualTo(FEWEST);
    try (Session session = new Session()) {
      session.feed("flexwright.jsh", 0, Files.readAllLines(Path.of("jshell", "flexwright.jsh")));
      session.feed("what the lines take for granted", 0, GIVEN);
      List<String> faults = new ArrayList<>();
      for (Found line : found) {
        try {
          session.feed(line.file(), 0, List.of(line.code() + ";"));
        } catch (AssertionError e) {
          faults.add(String.valueOf(e.getMessage()));
        }
      }
      assertThat(faults).isEmpty();
    }
  }
}
