package org.flexwright.lattice.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.flexwright.quantity.Length.mm;

import java.util.List;
import org.flexwright.finder.Described;
import org.flexwright.finder.Dimension;
import org.flexwright.finder.Finding;
import org.flexwright.finder.Shape;
import org.flexwright.grade.Grade;
import org.flexwright.hardness.ShoreA;
import org.flexwright.lattice.cell.Cells;
import org.junit.jupiter.api.Test;

final class LatticeCatalogueTest {

  private static final Described PAD =
      Described.as(Shape.LATTICE)
          .with(Dimension.WIDTH, mm(60))
          .with(Dimension.LENGTH, mm(60))
          .with(Dimension.HEIGHT, mm(20))
          .with(Dimension.CELL, mm(10))
          .with(Dimension.STRUT, mm(0.6))
          .with(Dimension.TRAVEL, mm(0.1));

  @Test
  void everyCellAnswersForADescribedPad() {
    Grade grade = Grade.polyurethane(ShoreA.of(95));
    List<Finding> found = LatticeCatalogue.all().find(PAD, grade);
    assertThat(found).hasSize(3 * Cells.all().size());
    assertThat(found).allMatch(Finding::applies);
    assertThat(found).allMatch(f -> !f.ranges().isEmpty());
    assertThat(found).allMatch(f -> !f.sources().isEmpty());
    // the cells whose pads were computed and whose struts are far from buckling come first
    assertThat(found.get(0).excess()).isZero();
    assertThat(LatticeCatalogue.all().table(PAD, grade)).contains("Kelvin pad, bonded faces");
    assertThat(LatticeCatalogue.all().find(Described.as(Shape.LATTICE), grade))
        .allMatch(f -> f.reason().orElse("").startsWith("needs length, width"));
  }

  @Test
  void tallStrutsOutOfRangeAreToldByHowMuch() {
    Grade grade = Grade.polyurethane(ShoreA.of(95));
    List<Finding> found = LatticeCatalogue.all().find(PAD.with(Dimension.TRAVEL, mm(15)), grade);
    assertThat(found)
        .filteredOn(f -> f.analysis().name().contains(" pad, "))
        .isNotEmpty()
        .allMatch(f -> f.excess() > 0.1);
    // the foam envelope is made for such travel
    assertThat(found.get(0).analysis().name()).contains("crushed like a foam");
  }
}
