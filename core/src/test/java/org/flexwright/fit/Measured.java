package org.flexwright.fit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.flexwright.law.Deformation;
import org.flexwright.quantity.Pressure;
import org.flexwright.testing.Csv;

/** The measured curves that fits are checked on, and families that only tests need. */
final class Measured {

  private static final List<String> COLUMNS = List.of("mode", "stretch", "nominal_stress_mpa");

  private Measured() {}

  /** Some of the curves of a table beside the reference values. */
  static List<TestCurve> curves(String file, Deformation... modes) {
    try (InputStream in = Measured.class.getResourceAsStream("/reference/" + file)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      List<Csv.Row> rows = Csv.read(file, text.lines().toList(), COLUMNS).rows();
      List<TestCurve> curves = new ArrayList<>();
      for (Deformation mode : modes) {
        List<TestCurve.Point> points =
            rows.stream()
                .filter(row -> row.cell("mode").equals(mode.name()))
                .map(
                    row ->
                        TestCurve.at(
                            Double.parseDouble(row.cell("stretch")),
                            Pressure.mpa(Double.parseDouble(row.cell("nominal_stress_mpa")))))
                .toList();
        curves.add(TestCurve.of(mode.name().toLowerCase(Locale.ROOT), mode, points));
      }
      return curves;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<TestCurve> treloar(Deformation... modes) {
    return curves("treloar_1944.csv", modes.length == 0 ? Deformation.values() : modes);
  }

  static List<TestCurve> meunier(Deformation... modes) {
    return curves("meunier_2008.csv", modes.length == 0 ? Deformation.values() : modes);
  }
}
