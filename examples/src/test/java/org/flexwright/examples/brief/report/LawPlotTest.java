package org.flexwright.examples.brief.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.flexwright.fit.FitComparison;
import org.flexwright.fit.LawFit;
import org.flexwright.fit.TestCurve;
import org.flexwright.law.Deformation;
import org.flexwright.law.classical.LawFamilies;
import org.flexwright.quantity.Pressure;
import org.flexwright.run.RunControl;
import org.junit.jupiter.api.Test;

/** The picture of measured curves and laws, read back from its coordinates. */
final class LawPlotTest {

  private static final double PLACE = 0.11; // two coordinates are each rounded to 0.1

  /** Tension and compression of mu (l - l^-2), mu 2 MPa, to three digits. */
  private static final TestCurve STRIP =
      curve(Deformation.UNIAXIAL, 0.8, -1.525, 0.9, -0.669, 1.1, 0.547, 1.5, 2.111, 2.0, 3.5);

  private static final TestCurve SHEET =
      curve(Deformation.PLANAR, 1.2, 1.243, 1.5, 2.407, 1.8, 3.257);

  private static TestCurve curve(Deformation mode, double... numbers) {
    List<TestCurve.Point> points = new ArrayList<>();
    for (int i = 0; i < numbers.length; i += 2) {
      points.add(TestCurve.at(numbers[i], Pressure.mpa(numbers[i + 1])));
    }
    return TestCurve.of("exact " + mode, mode, points);
  }

  private static String svg(List<TestCurve> curves) {
    FitComparison laws =
        FitComparison.of(
            LawFit.of(LawFamilies.NEO_HOOKEAN),
            List.of(LawFamilies.NEO_HOOKEAN),
            curves,
            RunControl.none());
    Markup page = new Markup();
    LawPlot.draw(curves, laws, "laws", page);
    return page.toString();
  }

  private static List<double[]> all(String pattern, String svg) {
    List<double[]> found = new ArrayList<>();
    Matcher m = Pattern.compile(pattern).matcher(svg);
    while (m.find()) {
      found.add(new double[] {Double.parseDouble(m.group(1)), Double.parseDouble(m.group(2))});
    }
    return found;
  }

  /** The place of a value by two labelled ticks, as a reader would find it. */
  private static double place(double value, double[] a, double[] b) {
    return a[1] + (value - a[0]) * (b[1] - a[1]) / (b[0] - a[0]);
  }

  @Test
  void pointsStandWhereTheTicksSay() {
    String svg = svg(List.of(STRIP));
    List<double[]> circles = all("<circle cx=\"([\\d.]+)\" cy=\"([\\d.]+)\"", svg);
    List<double[]> across =
        all("<text x=\"([\\d.]+)\" y=\"318.0\" text-anchor=\"middle\"[^>]*>([\\d.]+)<", svg);
    List<double[]> up =
        all("<text x=\"70.0\" y=\"([\\d.]+)\" text-anchor=\"end\"[^>]*>(-?[\\d.]+)<", svg);
    assertThat(circles).hasSize(STRIP.points().size() + 1);
    assertThat(across).hasSizeGreaterThan(3);
    assertThat(up).hasSizeGreaterThan(3);
    double[] x0 = {across.get(0)[1], across.get(0)[0]};
    double[] x1 = {across.get(across.size() - 1)[1], across.get(across.size() - 1)[0]};
    double[] y0 = {up.get(0)[1], up.get(0)[0] - 4.0}; // the foot of a label stands 4 lower
    double[] y1 = {up.get(up.size() - 1)[1], up.get(up.size() - 1)[0] - 4.0};
    for (int i = 0; i < STRIP.points().size(); i++) {
      TestCurve.Point p = STRIP.points().get(i);
      assertThat(circles.get(i)[0]).isEqualTo(place(p.stretch(), x0, x1), within(PLACE));
      assertThat(circles.get(i)[1]).isEqualTo(place(p.nominal().mpa(), y0, y1), within(PLACE));
    }
  }

  @Test
  void anExactLawRunsThroughFirstAndLastPoint() {
    String svg = svg(List.of(STRIP, SHEET));
    List<double[]> circles = all("<circle cx=\"([\\d.]+)\" cy=\"([\\d.]+)\"", svg);
    List<double[]> ends = all("d=\"M[^\"]*L([\\d.]+) ([\\d.]+)\" fill=\"none\"", svg);
    List<double[]> starts = all("d=\"M([\\d.]+) ([\\d.]+)L", svg);
    int[] last = {STRIP.points().size() - 1, STRIP.points().size() + SHEET.points().size() - 1};
    assertThat(ends).hasSize(2);
    assertThat(starts.get(0)[0]).isEqualTo(circles.get(0)[0], within(0.2));
    assertThat(starts.get(0)[1]).isEqualTo(circles.get(0)[1], within(0.3));
    for (int i = 0; i < 2; i++) {
      assertThat(ends.get(i)[0]).isEqualTo(circles.get(last[i])[0], within(0.2));
      assertThat(ends.get(i)[1]).isEqualTo(circles.get(last[i])[1], within(0.3));
    }
  }

  @Test
  void panelsKeepApartAndInsideThePage() {
    String svg = svg(List.of(STRIP, SHEET, curve(Deformation.EQUIBIAXIAL, 1.1, 0.958, 1.3, 2.061)));
    List<double[]> panels = all("<rect x=\"([\\d.]+)\" y=\"36.0\" width=\"([\\d.]+)\"", svg);
    assertThat(panels).hasSize(3);
    double end = 40.0;
    for (double[] panel : panels) {
      assertThat(panel[0]).isGreaterThan(end + 30.0); // room for the labels of the ticks
      end = panel[0] + panel[1];
    }
    assertThat(end).isLessThan(756.0);
    assertThat(svg).contains(">uniaxial<", ">equibiaxial<", ">planar<", ">neo-Hookean<");
  }
}
