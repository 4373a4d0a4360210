package org.flexwright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.flexwright.law.Deformation;
import org.flexwright.law.LawFamily;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.LawFamilies;

/** Constants put into exact curves come out again. */
class FitPropertiesTest {

  // one sum of squares has one minimum in each of these, on curves of all three deformations
  private static final List<LawFamily> FAMILIES =
      List.of(
          LawFamilies.NEO_HOOKEAN,
          LawFamilies.MOONEY_RIVLIN,
          LawFamilies.MOONEY_RIVLIN_3,
          LawFamilies.YEOH,
          LawFamilies.GENT,
          LawFamilies.GENT_GENT,
          LawFamilies.GENT_THOMAS,
          LawFamilies.ARRUDA_BOYCE,
          LawFamilies.ogden(1),
          LawFamilies.ogden(2));

  private static List<TestCurve> exact(StrainEnergy law, double end) {
    List<TestCurve> curves = new ArrayList<>();
    for (Deformation mode : Deformation.values()) {
      List<TestCurve.Point> points = new ArrayList<>();
      for (int i = 1; i <= 12; i++) {
        double stretch = 1.0 + (end - 1.0) * i / 12;
        points.add(TestCurve.at(stretch, mode.nominalStress(law, stretch)));
      }
      curves.add(TestCurve.of(mode.name(), mode, points));
    }
    return curves;
  }

  @Property(seed = "1944", tries = 150)
  void constantsComeOutAgain(
      @ForAll @IntRange(max = 9) int which,
      @ForAll @DoubleRange(min = 3, max = 8) double decades,
      @ForAll @DoubleRange(min = 0.05, max = 0.95) @Scale(4) double a,
      @ForAll @DoubleRange(min = 0.05, max = 0.95) @Scale(4) double b,
      @ForAll @DoubleRange(min = 0.05, max = 0.95) @Scale(4) double c,
      @ForAll @DoubleRange(min = 0.05, max = 0.95) @Scale(4) double d,
      @ForAll boolean relative) {
    LawFamily family = FAMILIES.get(which);
    double[] parts = {a, b, c, d};
    double[] values = new double[family.constants().size()];
    for (int i = 0; i < values.length; i++) {
      LawFamily.Constant k = family.constants().get(i);
      double usual = k.usualLow() + parts[i] * (k.usualHigh() - k.usualLow());
      values[i] =
          k.kind() == LawFamily.Constant.Kind.STRESS ? usual * Math.pow(10, decades) : usual;
    }
    StrainEnergy law = family.law(values);
    double end = Math.min(2.5, 1.0 + 0.9 * (law.range().high() - 1.0));
    FittedLaw fitted =
        LawFit.of(family)
            .weighting(relative ? Weighting.RELATIVE : Weighting.ABSOLUTE)
            .fit(exact(law, end));
    for (CurveError error : fitted.errors()) {
      assertThat(error.relative()).as("%s as %s", law, fitted).isLessThan(1e-9);
    }
    double known = Math.min(1e6, fitted.identifiability().condition());
    for (int i = 0; i < values.length; i++) {
      assertThat(fitted.constants().get(i).value())
          .as("%s as %s", law, fitted)
          .isCloseTo(values[i], within(1e-9 * known * Math.abs(values[i]) + 1e-9));
    }
  }
}
