package org.flexwright.lattice.scaling;

import java.util.List;
import org.flexwright.evidence.Checks;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.grade.WorkingStrain;
import org.flexwright.internal.Require;
import org.flexwright.lattice.cell.UnitCell;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Volume;
import org.flexwright.response.Channel;
import org.flexwright.response.ClosedForm;
import org.flexwright.response.Lever;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.run.RunControl;

/**
 * A block of a lattice crushed like an elastomer foam of the same relative density, to far beyond
 * the strains at which struts touch: the envelope of {@link FoamCurve}. For small travel and for a
 * figure to trust ask {@link org.flexwright.lattice.pad.LatticePad}, which knows the cell.
 *
 * <p>Formula: F = A s(e, rho), rho the relative density of the cell with its joints, e travel over
 * height. Strain of the struts: that of the cell under the same travel, which follows the cell's
 * own path. Symbols: A footprint, s stress of the foam curve.
 *
 * <p>Range: rho 0.02 to 0.3; the path ends at densification. Band a third to 5, widened by half as
 * much again as the cell's own modulus misses that of a foam of its density: a stretch-dominated
 * cell is many times stiffer at first, and a Kelvin cell carries 3.7 times the plateau at half its
 * height (judgement around computed figures). Caveat where the cell's modulus is off by more than
 * three. Always with the caveat of the plateau. Source: Gibson and Ashby 1997 (from memory).
 *
 * <p>JShell: {@code FoamBlock.of(Cells.KELVIN, mm(60), mm(60), mm(20), mm(10), mm(0.8))}
 *
 * @param unit the kind of cell
 * @param width one side of the footprint
 * @param depth the other side
 * @param height from face to face
 * @param cell the edge of one cell
 * @param strut the diameter of the struts
 */
public record FoamBlock(
    UnitCell unit, Length width, Length depth, Length height, Length cell, Length strut)
    implements Part<FoamBlock> {

  /** The strut diameter. */
  public static final Lever<FoamBlock> STRUT =
      Lever.of("strut diameter", FoamBlock::strut, FoamBlock::strut);

  /** The height. */
  public static final Lever<FoamBlock> HEIGHT =
      Lever.of("height", FoamBlock::height, FoamBlock::height);

  private static final String NAME = "crushed foam";
  private static final double THREE = 3.0;
  private static final ClosedForm.Band STRAIN = new ClosedForm.Band(1.0 / THREE, THREE);

  /**
   * Refuses a block that makes no sense.
   *
   * @param unit the kind of cell
   * @param width one side of the footprint
   * @param depth the other side
   * @param height from face to face
   * @param cell the edge of one cell
   * @param strut the diameter of the struts
   * @throws org.flexwright.InvalidInputException if a length is not above 0, the struts merge or
   *     the density is outside 0.005 to 0.5
   */
  public FoamBlock {
    Require.positive("width", width.m(), "m");
    Require.positive("depth", depth.m(), "m");
    Require.positive("height", height.m(), "m");
    Require.positive("cell edge", cell.m(), "m");
    Require.positive("strut diameter", strut.m(), "m");
    FoamCurve.of(unit.relativeDensity(strut.ratioTo(cell) / unit.strutOverCell()));
  }

  /**
   * A block.
   *
   * @param unit the kind of cell
   * @param width one side of the footprint
   * @param depth the other side
   * @param height from face to face
   * @param cell the edge of one cell
   * @param strut the diameter of the struts
   * @return the block
   */
  public static FoamBlock of(
      UnitCell unit, Length width, Length depth, Length height, Length cell, Length strut) {
    return new FoamBlock(unit, width, depth, height, cell, strut);
  }

  /**
   * This block with other struts.
   *
   * @param of the diameter
   * @return the new block
   */
  public FoamBlock strut(Length of) {
    return new FoamBlock(unit, width, depth, height, cell, of);
  }

  /**
   * This block with another height.
   *
   * @param of the height
   * @return the new block
   */
  public FoamBlock height(Length of) {
    return new FoamBlock(unit, width, depth, of, cell, strut);
  }

  private double slenderness(double d) {
    return d / (cell.m() * unit.strutOverCell());
  }

  /**
   * Volume of material over volume of the block.
   *
   * @return the relative density of the endless lattice
   */
  public double relativeDensity() {
    return unit.relativeDensity(slenderness(strut.m()));
  }

  private double stress(double d, double strain) {
    FoamCurve curve = FoamCurve.of(unit.relativeDensity(slenderness(d)));
    return strain < curve.densification() ? curve.relative(strain) : Double.NaN;
  }

  private double peak(double d, double strain) {
    double x = slenderness(d);
    return unit.peakStrain(x) * unit.path(x).growth(Math.min(strain, 1.0));
  }

  /** Kept beyond the collapse: what folds is not what carries. */
  private double working(double d, double strain) {
    double bent = peak(d, Math.min(strain, FoamCurve.COLLAPSE));
    return WorkingStrain.roundBending(bent).linearMoment().value();
  }

  /** Modulus of the cell with its joints over that of a foam of its density. */
  private double overFoam(Grade grade) {
    double rho = relativeDensity();
    return unit.solid(slenderness(strut.m()), grade.poisson()).young100() / (rho * rho);
  }

  private ClosedForm.Band band(Grade grade) {
    double ratio = overFoam(grade);
    return new ClosedForm.Band(Math.min(1.0 / THREE, ratio / 1.5), Math.max(5.0, 1.5 * ratio));
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double area = width.m() * depth.m();
    double h = height.m();
    ClosedForm form =
        ClosedForm.of(NAME, strut)
            .load(Channel.FORCE, (d, u) -> area * stress(d, u / h))
            .workingStrain((d, u) -> working(d, u / h))
            .strain((d, u) -> peak(d, u / h))
            .linearTo(1.0)
            .until(d -> 0.95 * (1.0 - 1.4 * relativeDensity()) * h, "the foam is dense")
            .bands(band(grade), STRAIN)
            .crossesLayers(true)
            .sources(FoamCurve.SOURCE);
    Checks checks = Checks.of(NAME, FoamCurve.SOURCE).note(FoamCurve.caveat());
    checks.check("relative density", 0.02, 0.3, relativeDensity());
    checks.check("modulus of the cell / of the foam", 1.0 / THREE, THREE, overFoam(grade));
    checks.check("compressive strain", 0.0, 1.0 - 1.4 * relativeDensity(), form.end(load) / h);
    return form.respond(grade, load, run, checks);
  }

  @Override
  public List<Lever<FoamBlock>> levers() {
    return List.of(STRUT, HEIGHT);
  }

  @Override
  public Volume printedVolume() {
    return width.times(depth).times(height).times(relativeDensity());
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.STRUT, strut);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "block of "
        + unit.name()
        + " foam "
        + width
        + " x "
        + depth
        + " x "
        + height
        + ", cells of "
        + cell
        + ", struts "
        + strut;
  }
}
