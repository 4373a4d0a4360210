package org.flexwright.shells.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.flexwright.quantity.Length.mm;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.flexwright.finder.Analysis;
import org.flexwright.finder.Described;
import org.flexwright.finder.Dimension;
import org.flexwright.finder.Finding;
import org.flexwright.finder.Shape;
import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Length;
import org.flexwright.shells.Grades;
import org.junit.jupiter.api.Test;

final class ShellCatalogueTest {

  /** A thing of ordinary size with every dimension told. */
  private static Described ordinary(Shape shape) {
    Described d = Described.as(shape).count(4).turnedTo(Angle.degrees(5));
    Length[] sizes = {
      mm(0.8), mm(20), mm(8), mm(60), mm(30), mm(6), mm(8), mm(12), mm(10), mm(44), mm(1), mm(8),
      mm(0.4)
    };
    for (Dimension dimension : Dimension.values()) {
      d = d.with(dimension, sizes[dimension.ordinal()]);
    }
    return d;
  }

  @Test
  void everyAnalysisCanBeAskedAndSaysItsRangesAndSources() {
    Set<String> asked = new HashSet<>();
    for (Shape shape : Shape.values()) {
      for (Finding f : ShellCatalogue.all().find(ordinary(shape), Grades.rubber())) {
        assertThat(f.applies()).as(f.toString()).isTrue();
        assertThat(f.ranges()).as(f.toString()).isNotEmpty();
        assertThat(f.sources()).as(f.toString()).isNotEmpty();
        asked.add(f.analysis().name());
      }
    }
    assertThat(asked).hasSameSizeAs(ShellCatalogue.all().analyses());
  }

  @Test
  void findingsAreInOrderOfTheirDistance() {
    Described squeezed = ordinary(Shape.TUBE).with(Dimension.TRAVEL, mm(15));
    List<Finding> found = ShellCatalogue.all().find(squeezed, Grades.rubber());
    for (int i = 1; i < found.size(); i++) {
      assertThat(found.get(i).excess()).isGreaterThanOrEqualTo(found.get(i - 1).excess());
    }
    // at three quarters of the radius the small-travel ring is far out and the elastica is not
    assertThat(excess(found, "tube pinched along two lines, small travel")).isGreaterThan(1.5);
    assertThat(excess(found, "tube pressed or pulled far, plates")).isZero();
    assertThat(ShellCatalogue.all().table(squeezed, Grades.rubber()))
        .contains("travel / mean radius 0 to 0.1, here 0.75, OUTSIDE");
  }

  private static double excess(List<Finding> found, String name) {
    return found.stream()
        .filter(f -> f.analysis().name().equals(name))
        .mapToDouble(Finding::excess)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyAnalysisNeedsWhatItSays() {
    for (Analysis a : ShellCatalogue.all().analyses()) {
      for (Dimension d : a.needs()) {
        Described bare = Described.as(a.shape()).turnedTo(Angle.degrees(5));
        for (Dimension other : a.needs()) {
          bare = other == d ? bare : bare.with(other, mm(1));
        }
        assertThat(org.flexwright.finder.Catalogue.of(List.of(a)).find(bare, Grades.rubber()))
            .singleElement()
            .hasToString(a.name() + ": needs " + d);
      }
    }
  }
}
