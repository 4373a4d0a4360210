package org.flexwright.shells.catalogue;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.finder.Analysis;
import org.flexwright.finder.Catalogue;

/**
 * The catalogue of this module: every part that can be described by lengths alone.
 *
 * <p>Immutable and thread-safe.
 *
 * <p>JShell: {@code System.out.println(ShellCatalogue.all().table(Described.as(Shape.TUBE).with(
 * Dimension.WALL, mm(1)).with(Dimension.RADIUS, mm(10)).with(Dimension.TRAVEL, mm(1)), grade))}
 */
public final class ShellCatalogue {

  private ShellCatalogue() {}

  /**
   * All analyses.
   *
   * @return the catalogue
   */
  public static Catalogue all() {
    List<Analysis> all = new ArrayList<>();
    all.addAll(WallAnalyses.all());
    all.addAll(TubeAnalyses.all());
    all.addAll(DomeAnalyses.all());
    all.addAll(BellowsAnalyses.all());
    all.addAll(BlockAnalyses.all());
    return Catalogue.of(all);
  }
}
