package org.flexwright.lattice.pad;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Estimate;
import org.flexwright.evidence.Exponents;
import org.flexwright.evidence.Factor;
import org.flexwright.evidence.Source;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.internal.Require;
import org.flexwright.lattice.cell.UnitCell;
import org.flexwright.lattice.pad.FinitePads.Grip;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.quantity.Volume;
import org.flexwright.response.Channel;
import org.flexwright.response.Lever;
import org.flexwright.response.LoadCase;
import org.flexwright.response.LoadPath;
import org.flexwright.response.LogSlope;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.response.ScaledValue;
import org.flexwright.run.Progress;
import org.flexwright.run.RunControl;
import org.flexwright.run.Termination;

/**
 * A flat pad of whole lattice cells between two flat plates, pushed along its height.
 *
 * <p>Formulas: F = Es E100 r A s(e), with e travel over height, A footprint, s(e) the path of the
 * cell (guided strut, or straight until struts buckle), E100 the endless lattice with fat joints
 * (over Es), r the table of finite pads and Es the secant modulus of the grade at the
 * energy-weighted strut strain 0.509 e_peak sqrt(r) (0.6791 of the radius through a round section
 * times 3/4 along a guided strut; the energy, hence the square of the strain, grows with r). Peak
 * strut strain: the largest of the whole pad, which at the corners of a bonded pad is two to four
 * times that of the endless lattice, followed along the bending of the guided strut; it counts the
 * stretch with its sign left out, so it is on the safe side for tension.
 *
 * <p>Range and caveats: see {@link #respond}. Kelvin pads soften steadily and show no plateau.
 * Struts are inclined in the pad, so in whichever way it is printed some are pulled across layers.
 *
 * <p>The load averages hundreds of struts, so it follows the mean strut diameter only and not its
 * scatter; the peak strain is that of one strut and follows both.
 *
 * <p>Immutable and thread-safe.
 *
 * <p>JShell: {@code LatticePad.of(Cells.KELVIN).footprint(mm(60), mm(60)).height(mm(20)).cell(
 * mm(10)).strut(mm(0.8))}
 *
 * @param unit the kind of cell
 * @param width one side of the footprint
 * @param depth the other side
 * @param height from plate to plate
 * @param cell the edge of one cell
 * @param strut the diameter of the struts
 * @param lower the face below
 * @param upper the face above
 */
public record LatticePad(
    UnitCell unit,
    Length width,
    Length depth,
    Length height,
    Length cell,
    Length strut,
    Face lower,
    Face upper)
    implements Part<LatticePad> {

  /** The strut diameter as a free dimension. */
  public static final Lever<LatticePad> STRUT =
      Lever.of("strut diameter", LatticePad::strut, LatticePad::strut);

  /** The cell edge as a free dimension; values must divide footprint and height. */
  public static final Lever<LatticePad> CELL =
      Lever.of("cell edge", LatticePad::cell, LatticePad::cell);

  /** The height as a free dimension; values must be whole cells. */
  public static final Lever<LatticePad> HEIGHT =
      Lever.of("pad height", LatticePad::height, LatticePad::height);

  private static final int STEPS = 24;
  private static final double NOT_MERGED = 0.99;

  /**
   * Refuses sizes that make no pad.
   *
   * @param unit the kind of cell
   * @param width one side of the footprint
   * @param depth the other side
   * @param height from plate to plate
   * @param cell the edge of one cell
   * @param strut the diameter of the struts
   * @param lower the face below
   * @param upper the face above
   * @throws InvalidInputException if whole cells do not fill the pad within 1 % or struts merge
   */
  public LatticePad {
    WholeCells.in(width, depth, height, cell);
    Require.positive("strut diameter", strut.m(), "m");
    Length most = cell.times(NOT_MERGED * unit.mergingSlenderness() * unit.strutOverCell());
    Require.that(
        strut.compareTo(most) <= 0,
        "strut diameter",
        strut,
        () -> "at most " + most + " in a " + unit.name() + " cell of " + cell,
        "thicker struts merge into a solid; take a larger cell or a thinner strut");
  }

  /**
   * Starts a pad; footprint, height, cell and strut follow in this order.
   *
   * @param unit the kind of cell, see {@link org.flexwright.lattice.cell.Cells}
   * @return the next step; the pad is bonded below and dry above unless told otherwise
   */
  public static Stages.Footprint of(UnitCell unit) {
    return new Stages.Footprint(unit);
  }

  /**
   * This pad with another footprint.
   *
   * @param newWidth one side
   * @param newDepth the other side
   * @return the new pad
   */
  public LatticePad footprint(Length newWidth, Length newDepth) {
    return new LatticePad(unit, newWidth, newDepth, height, cell, strut, lower, upper);
  }

  /**
   * This pad with another height.
   *
   * @param to the new height, whole cells
   * @return the new pad
   */
  public LatticePad height(Length to) {
    return new LatticePad(unit, width, depth, to, cell, strut, lower, upper);
  }

  /**
   * This pad filled with another size of cells.
   *
   * @param edge the new edge, which must divide footprint and height
   * @return the new pad
   */
  public LatticePad cell(Length edge) {
    return new LatticePad(unit, width, depth, height, edge, strut, lower, upper);
  }

  /**
   * This pad with other struts.
   *
   * @param diameter the new diameter
   * @return the new pad
   */
  public LatticePad strut(Length diameter) {
    return new LatticePad(unit, width, depth, height, cell, diameter, lower, upper);
  }

  /**
   * This pad with another face below.
   *
   * @param face what the face does on its plate
   * @return the new pad
   */
  public LatticePad lower(Face face) {
    return new LatticePad(unit, width, depth, height, cell, strut, face, upper);
  }

  /**
   * This pad with another face above.
   *
   * @param face what the face does on its plate
   * @return the new pad
   */
  public LatticePad upper(Face face) {
    return new LatticePad(unit, width, depth, height, cell, strut, lower, face);
  }

  WholeCells cells() {
    return WholeCells.in(width, depth, height, cell);
  }

  Grip grip() {
    return grip(Face.LUBRICATED == lower, Face.LUBRICATED == upper);
  }

  Grip slippedGrip() {
    return grip(Face.BONDED != lower, Face.BONDED != upper);
  }

  private static Grip grip(boolean lowerSlips, boolean upperSlips) {
    if (lowerSlips && upperSlips) {
      return Grip.FREE;
    }
    return lowerSlips || upperSlips ? Grip.ONE_FREE : Grip.HELD;
  }

  /**
   * Strut diameter over strut length.
   *
   * @return x = d/L
   */
  public double slenderness() {
    return strut.ratioTo(cell) / unit.strutOverCell();
  }

  /**
   * Volume of material over volume of the pad, joints counted once.
   *
   * @return the relative density of the endless lattice
   */
  public double relativeDensity() {
    return unit.relativeDensity(slenderness());
  }

  /**
   * Young's modulus of the pad as a block, at rest: force over footprint and strain.
   *
   * <p>The band is the bracket from free sides to sides held everywhere. The modulus of the endless
   * lattice alone is no answer for a pad. For a cell without a table of pads the nominal value lies
   * midway (in proportion) between the endless lattice with free and with held sides.
   *
   * @param grade the material
   * @return the modulus with its bracket
   */
  public Estimate<Pressure> modulus(Grade grade) {
    PadMechanics m = new PadMechanics(this, strut.m(), grade.poisson());
    Pressure endless = grade.modulusAtRest().times(m.young());
    return new Estimate<>(
        endless.times(m.lowest()),
        endless.times(m.rise()),
        endless.times(m.highest()),
        Estimate.Band.BRACKET,
        sources(grade),
        PadCaveats.of(this, m, grade, 0.0).caveats());
  }

  /**
   * The response to a travel, in {@value #STEPS} steps.
   *
   * <p>Caveats: slenderness above 0.3 (strain) and 0.4 (joints), Poisson's ratio outside 0.3 to
   * 0.5, more than 12 cells across or 8 high, footprints that are not square, dry faces, strains at
   * which struts buckle, touch or densify. Where struts buckle the nominal answer is the path of a
   * perfect pad, well above the stable one, and the low end of the band reaches down to it.
   *
   * @throws InvalidInputException if the load case is not a travel below the height
   */
  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double end = travel(load);
    double strain = end / height.m();
    PadMechanics m = new PadMechanics(this, strut.m(), grade.poisson());
    LoadPath.Builder path =
        LoadPath.of(STEPS + 1, Channel.TRAVEL, Channel.FORCE, Channel.STRAIN).add(0.0, 0.0, 0.0);
    Termination ended = Termination.completed();
    for (int i = 1; i <= STEPS; i++) {
      run.progress(new Progress("pad under travel", (i - 1.0) / STEPS));
      if (run.stopRequested()) {
        ended = Termination.stopped((i - 1) + " of " + STEPS + " steps");
        break;
      }
      double at = i == STEPS ? end : end * i / STEPS;
      double e = at / height.m();
      path.add(at, m.force(grade, e), m.peak(e));
    }
    double[] slopes = slopes(grade, strain);
    Exponents onLoad = Exponents.none().with(Factor.MODULUS, 1.0).with(Factor.SIZE_BIAS, slopes[0]);
    Exponents onStrain =
        Exponents.none().with(Factor.SIZE_BIAS, slopes[1]).with(Factor.SIZE_SCATTER, slopes[1]);
    PadBand band = new PadBand(this, m, strain);
    PadCaveats told = PadCaveats.of(this, m, grade, strain);
    return new Response(
        path.end(ended),
        band.onLoad(ScaledValue.of(Channel.FORCE, m.force(grade, strain), onLoad)),
        band.onStrain(ScaledValue.of(Channel.STRAIN, m.peak(strain), onStrain)),
        true,
        sources(grade),
        told.caveats(),
        told.ranges());
  }

  private double travel(LoadCase load) {
    if (load instanceof LoadCase.ToTravel to) {
      Require.that(
          to.travel().compareTo(height) < 0,
          "travel",
          to.travel(),
          () -> "above 0 and below the pad height of " + height,
          "a pad cannot be pushed through itself");
      return to.travel().m();
    }
    throw new InvalidInputException(
        Part.LOAD_CASE, load.toString(), "a travel of the loaded face", "use LoadCase.toTravel");
  }

  /** How force and strut strain follow the strut's diameter. */
  private double[] slopes(Grade grade, double strain) {
    return LogSlope.ofAll(
        d -> {
          PadMechanics m = new PadMechanics(this, d, grade.poisson());
          return new double[] {m.force(grade, strain), m.peak(strain)};
        },
        strut.m());
  }

  private List<Source> sources(Grade grade) {
    List<Source> all = new ArrayList<>(grade.sources());
    all.addAll(unit.sources());
    all.add(FinitePads.SOURCE);
    return all;
  }

  @Override
  public List<Lever<LatticePad>> levers() {
    return List.of(STRUT, CELL, HEIGHT);
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
    WholeCells c = cells();
    return unit.name()
        + " pad "
        + width
        + " x "
        + depth
        + " x "
        + height
        + ", "
        + c.wide()
        + " x "
        + c.deep()
        + " x "
        + c.high()
        + " cells of "
        + cell
        + ", struts "
        + strut
        + ", "
        + lower
        + " below, "
        + upper
        + " above";
  }
}
