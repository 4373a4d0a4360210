package org.flexwright.testing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Checks computed values against reference cases and writes a row for each.
 *
 * <p>A test class registers one as a static extension:
 *
 * <pre>{@code
 * @RegisterExtension
 * static final VerificationTable TABLE = VerificationTable.of(SomeTest.class, "some.csv");
 *
 * static Stream<ReferenceCase> cases() {
 *   return TABLE.cases();
 * }
 *
 * @ParameterizedTest
 * @MethodSource("cases")
 * void meetsPublishedValue(ReferenceCase c) {
 *   TABLE.check(c, Some.relation(c.input("shore_a")));
 * }
 * }</pre>
 *
 * <p>At the end of the class the rows go to {@code verification} in the build folder of the module;
 * the last step of the build gathers them, and fails if a case was never checked.
 */
public final class VerificationTable implements AfterAllCallback {
  static final List<String> COLUMNS =
      List.of(
          "case",
          "formula",
          "quantity",
          "source",
          "provenance",
          "published",
          "computed",
          "error",
          "tolerance");

  private final String name;
  private final Path folder;
  private final Map<String, ReferenceCase> cases = new LinkedHashMap<>();
  private final Map<String, Double> computed = new LinkedHashMap<>();

  VerificationTable(String name, Path folder, List<ReferenceCase> all) {
    this.name = name;
    this.folder = folder;
    for (ReferenceCase one : all) {
      if (cases.put(one.id(), one) != null) {
        throw new IllegalArgumentException("case " + one.id() + " stands in two files");
      }
    }
  }

  /** Reads the cases of files that lie beside the test class. */
  public static VerificationTable of(Class<?> test, String... files) {
    List<ReferenceCase> all = new ArrayList<>();
    for (String file : files) {
      all.addAll(ReferenceCase.read(test, file));
    }
    return new VerificationTable(test.getSimpleName(), BuildFolders.target("verification"), all);
  }

  /** Gives all cases. */
  public Stream<ReferenceCase> cases() {
    return cases.values().stream();
  }

  /** Gives the cases of one formula, of which there must be some. */
  public Stream<ReferenceCase> cases(String formula) {
    List<ReferenceCase> some = cases().filter(c -> c.formula().equals(formula)).toList();
    if (some.isEmpty()) {
      throw new IllegalArgumentException("no case of formula " + formula);
    }
    return some.stream();
  }

  /** Gives the case of this id. */
  public ReferenceCase get(String id) {
    ReferenceCase one = cases.get(id);
    if (one == null) {
      throw new IllegalArgumentException("no case " + id + ", only " + cases.keySet());
    }
    return one;
  }

  /**
   * Checks that a computed value is within the tolerance of its case, and records it. Of several
   * values of one case the worst is kept.
   */
  public synchronized void check(ReferenceCase c, double value) {
    if (!c.equals(cases.get(c.id()))) {
      throw new IllegalArgumentException("case " + c.id() + " is not of this table");
    }
    Tolerance tolerance = c.tolerance();
    double error = tolerance.error(c.published(), value);
    Double before = computed.get(c.id());
    if (before == null || !(error <= tolerance.error(c.published(), before))) {
      computed.put(c.id(), value);
    }
    if (!tolerance.holds(c.published(), value)) {
      throw new AssertionError(
          "%s, %s: computed %s, published %s, error %s %s, tolerance %s (%s)"
              .formatted(
                  c.id(),
                  c.quantity(),
                  value,
                  c.printed(),
                  Numbers.brief(error),
                  tolerance.relative() ? "relative" : "absolute",
                  tolerance,
                  c.source()));
    }
  }

  @Override
  public void afterAll(ExtensionContext context) throws IOException {
    write();
  }

  synchronized void write() throws IOException {
    List<String> lines = new ArrayList<>();
    lines.add(Csv.line(COLUMNS));
    for (ReferenceCase c : cases.values()) {
      Double value = computed.get(c.id());
      lines.add(
          Csv.line(
              List.of(
                  c.id(),
                  c.formula(),
                  c.quantity(),
                  c.source(),
                  c.provenance().name(),
                  c.printed(),
                  value == null ? "" : Numbers.readable(value),
                  value == null ? "" : Numbers.brief(c.tolerance().error(c.published(), value)),
                  c.tolerance().toString())));
    }
    Files.createDirectories(folder);
    Files.write(folder.resolve(name + ".csv"), lines);
  }
}
