package org.flexwright.shells.block;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Source;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.hardness.Irhd;
import org.flexwright.internal.Require;
import org.flexwright.law.Deformation;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.quantity.Volume;
import org.flexwright.response.Channel;
import org.flexwright.response.ClosedForm;
import org.flexwright.response.Lever;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.run.RunControl;

/**
 * A rubber block squeezed between two rigid faces, bonded to them or free to slip: a round disc or
 * a long strip.
 *
 * <p>Formula: F = A f P(l), with P the nominal stress of the grade's law in compression (uniaxial
 * for a disc, without change of length for a strip), which for a neo-Hookean rubber is E/3 (1/l^2 -
 * l) or E/3 (1/l^3 - l); f = 1 for slippery faces, 1 + 2 k S^2 for a bonded disc, 1 + k S^2 for a
 * bonded strip. With a bulk modulus B, 1/f becomes 1/f + E/B (disc) or 1/f + 4 E/(3 B) (strip).
 * Peak tensile strain of bonded faces: the principal strain of the shear 6 S e at the edge, joined
 * with the bulge, g = e sqrt(36 S^2 + b^2), sqrt(1 + g^2/4) + g/2 - 1, b = 0.6 disc, 1.9 strip;
 * slippery: the stretch to the side. Symbols: A loaded area (m2), S loaded over free area, e
 * squeeze over height, l = 1 - e, k weight (1 ideal), E modulus at rest (Pa). The stress is lowered
 * by secant modulus at the working strain over secant modulus at the mean strain where the grade
 * softens; working strain -ln l sqrt(1 + (1.85 S)^2) disc, sqrt(4/3 + (1.62 S)^2) strip, fitted to
 * a computation within 10 %.
 *
 * <p>Range: S 0.25 to 4 bonded (below, the block bends away), squeeze to 20 % of the height, strip
 * length from 4 widths; S above 3 asks for a bulk modulus. Caveats outside; the path ends at 80 %.
 * Band: linear finite elements give 0.97 to 1.064 of the load, large-strain ones stay within the
 * same at 1 to 25 % squeeze (S 0.25 and 0.5; 5 % at S 1): 0.94 to 1.1. The strain 0.1 heights off
 * the edge is 0.84 to 1.3 of the model, at the sharp edge it has no bound: band 0.8 to 2.2. A bulk
 * modulus makes the load follow the modulus with less than its full power; the band takes the full.
 *
 * <p>Source: Gent and Lindley 1959, Proc. Inst. Mech. Eng. 173; weights by hardness after Lindley
 * 1978 (both from memory, the form checked). Bonded, the peak strain crosses layers however it is
 * built; slippery, when built lying.
 *
 * <p>JShell: {@code BondedBlock.disc(mm(20), mm(5)).respond(grade, LoadCase.toTravel(mm(0.5)))}
 *
 * @param section disc or strip
 * @param across diameter, or width of the strip
 * @param along length of the strip; of a disc its diameter
 * @param height distance of the faces
 * @param faces how they hold the rubber
 * @param weight k, above 0 and at most 1
 * @param bulk bulk modulus, empty for a rubber that keeps its volume
 * @param build how it stands in the printer, the axis being that of the squeeze
 */
public record BondedBlock(
    Section section,
    Length across,
    Length along,
    Length height,
    Faces faces,
    double weight,
    Optional<Pressure> bulk,
    BuildDirection build)
    implements Part<BondedBlock> {

  /** The outline of a block. */
  public enum Section {
    /** Round. */
    DISC,
    /** A strip much longer than wide; its ends do not move out. */
    STRIP
  }

  /** How the faces hold the rubber. */
  public enum Faces {
    /** Bonded, or gripped by friction: no slip. */
    BONDED,
    /** Slippery: no friction at all. */
    LUBRICATED
  }

  /** The height. */
  public static final Lever<BondedBlock> HEIGHT =
      Lever.of("height", BondedBlock::height, BondedBlock::height);

  /** The diameter or width. */
  public static final Lever<BondedBlock> ACROSS =
      Lever.of("across", BondedBlock::across, BondedBlock::across);

  private static final String NAME = "rubber block";
  private static final Source FORM =
      Source.memory("Gent and Lindley 1959, Proc. Inst. Mech. Eng. 173");
  private static final Source COMPUTED =
      Source.derived("axisymmetric and plane finite elements, linear and neo-Hookean");
  private static final double FLAT = 0.8;
  private static final double[] IRHD = {30, 35, 40, 45, 50, 55, 60, 65, 70, 75};
  private static final double[] WEIGHT = {
    0.93, 0.89, 0.85, 0.80, 0.73, 0.64, 0.57, 0.54, 0.53, 0.52
  };

  /**
   * Refuses a block that makes no sense.
   *
   * @param section disc or strip
   * @param across diameter, or width of the strip
   * @param along length of the strip; of a disc its diameter
   * @param height distance of the faces
   * @param faces how they hold the rubber
   * @param weight k, above 0 and at most 1
   * @param bulk bulk modulus, empty for a rubber that keeps its volume
   * @param build how it stands in the printer, the axis being that of the squeeze
   * @throws org.flexwright.InvalidInputException if a length is not above 0, a strip is shorter
   *     than wide, the weight is outside 0 to 1 or the bulk modulus is not above 0
   */
  public BondedBlock {
    Require.positive("diameter or width", across.m(), "m");
    Require.positive("length", along.m(), "m");
    Require.positive("height", height.m(), "m");
    Require.between("weight k of the shape factor", weight, 0.01, 1.0, "");
    bulk.ifPresent(b -> Require.positive("bulk modulus", b.pa(), "Pa"));
    Require.that(
        along.m() >= across.m(),
        "length of the strip",
        along,
        () -> "at least the width, " + across,
        "turn it round");
  }

  /**
   * A round block, ideal, bonded, keeping its volume, its axis up in the printer.
   *
   * @param diameter of the faces
   * @param height distance of the faces
   * @return the block
   */
  public static BondedBlock disc(Length diameter, Length height) {
    return new BondedBlock(
        Section.DISC,
        diameter,
        diameter,
        height,
        Faces.BONDED,
        1.0,
        Optional.empty(),
        BuildDirection.AXIS_UP);
  }

  /**
   * A long strip, ideal, bonded, keeping its volume, the squeeze upright in the printer.
   *
   * @param width of the faces
   * @param length of the faces, at least the width
   * @param height distance of the faces
   * @return the block
   */
  public static BondedBlock strip(Length width, Length length, Length height) {
    return new BondedBlock(
        Section.STRIP,
        width,
        length,
        height,
        Faces.BONDED,
        1.0,
        Optional.empty(),
        BuildDirection.AXIS_UP);
  }

  /**
   * The weight k that Lindley's design table gives for a hardness: filled rubbers fall short of the
   * ideal 1 because their modulus falls with strain. With a grade that already softens, keep 1.
   *
   * @param hardness 30 to 75; the ends of the table beyond
   * @return k
   */
  public static double lindleyWeight(Irhd hardness) {
    double h = Math.min(75.0, Math.max(30.0, hardness.points()));
    return new LinearInterpolator().interpolate(IRHD, WEIGHT).value(h);
  }

  /**
   * This block with another diameter or width; a disc stays round.
   *
   * @param of the diameter or width
   * @return the new block
   */
  public BondedBlock across(Length of) {
    Length other = section == Section.DISC ? of : along;
    return new BondedBlock(section, of, other, height, faces, weight, bulk, build);
  }

  /**
   * This block with another height.
   *
   * @param of the height
   * @return the new block
   */
  public BondedBlock height(Length of) {
    return new BondedBlock(section, across, along, of, faces, weight, bulk, build);
  }

  /**
   * This block between other faces.
   *
   * @param of how they hold the rubber
   * @return the new block
   */
  public BondedBlock faces(Faces of) {
    return new BondedBlock(section, across, along, height, of, weight, bulk, build);
  }

  /**
   * This block with another weight of the shape factor.
   *
   * @param of k, see {@link #lindleyWeight}
   * @return the new block
   */
  public BondedBlock weight(double of) {
    return new BondedBlock(section, across, along, height, faces, of, bulk, build);
  }

  /**
   * This block of a rubber that can be squeezed.
   *
   * @param of bulk modulus; solid rubbers have 1 to 1.3 GPa, printed ones less
   * @return the new block
   */
  public BondedBlock bulk(Pressure of) {
    return new BondedBlock(section, across, along, height, faces, weight, Optional.of(of), build);
  }

  /**
   * This block built another way.
   *
   * @param of how it stands in the printer
   * @return the new block
   */
  public BondedBlock build(BuildDirection of) {
    return new BondedBlock(section, across, along, height, faces, weight, bulk, of);
  }

  /**
   * The shape factor: loaded area over the area free to bulge.
   *
   * @return S
   */
  public double shapeFactor() {
    return shapeFactor(across.m(), height.m());
  }

  private double shapeFactor(double d, double h) {
    return (section == Section.DISC ? 0.25 : 0.5) * d / h;
  }

  private boolean disc() {
    return section == Section.DISC;
  }

  private double factor(double s, double modulusOverBulk) {
    double shape = faces == Faces.LUBRICATED ? 0.0 : (disc() ? 2.0 : 1.0) * weight * s * s;
    double plane = disc() ? 1.0 : 4.0 / 3.0;
    return 1.0 / (1.0 / (1.0 + shape) + plane * modulusOverBulk);
  }

  /**
   * The apparent modulus at rest: stress over squeeze, for the smallest squeeze.
   *
   * @param grade the material
   * @return Ea
   */
  public Pressure apparentModulus(Grade grade) {
    double plane = disc() ? 1.0 : 4.0 / 3.0;
    return grade.modulusAtRest().times(plane * factor(shapeFactor(), modulusOverBulk(grade)));
  }

  private double modulusOverBulk(Grade grade) {
    return bulk.map(b -> grade.modulusAtRest().ratioTo(b)).orElse(0.0);
  }

  private double force(Grade grade, double over, double d, double h, double u) {
    double l = 1.0 - u / h;
    double s = shapeFactor(d, h);
    double area = disc() ? 0.25 * Math.PI * d * d : d * along.m();
    Deformation kind = disc() ? Deformation.UNIAXIAL : Deformation.PLANAR;
    double stress = -kind.nominalStress(grade.law(), l).pa();
    return area * factor(s, over) * stress * softening(grade, s, -Math.log(l));
  }

  private double softening(Grade grade, double s, double mean) {
    if (faces == Faces.LUBRICATED) {
      return 1.0;
    }
    double least = disc() ? 1.0 : 4.0 / 3.0;
    double slope = disc() ? 1.85 : 1.62;
    double working = mean * Math.sqrt(least + slope * slope * s * s);
    double end = Math.log(grade.law().range().high());
    double at = grade.secantModulus(Math.min(working, Math.max(mean, end))).pa();
    // a secant that rises does so by the geometry of the tension test, which is not that of shear
    return Math.min(1.0, at / grade.secantModulus(Math.sqrt(least) * mean).pa());
  }

  private double strain(double d, double h, double u) {
    double e = u / h;
    if (faces == Faces.LUBRICATED) {
      return Math.pow(1.0 - e, disc() ? -0.5 : -1.0) - 1.0;
    }
    double bulge = disc() ? 0.6 : 1.9;
    double shear = e * Math.hypot(6.0 * shapeFactor(d, h), bulge);
    return Math.sqrt(1.0 + 0.25 * shear * shear) + 0.5 * shear - 1.0;
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    boolean low = height.m() <= across.m();
    double fixed = low ? across.m() : height.m();
    double over = modulusOverBulk(grade);
    boolean bonded = faces == Faces.BONDED;
    return ClosedForm.of(NAME, low ? height : across)
        .loadOfLaw(
            Channel.FORCE,
            (t, u) -> low ? force(grade, over, fixed, t, u) : force(grade, over, t, fixed, u))
        .strain((t, u) -> low ? strain(fixed, t, u) : strain(t, fixed, u))
        .until(t -> FLAT * (low ? t : fixed), "squeezed by 80 % of the height, beyond any model")
        .bands(
            new ClosedForm.Band(bonded ? 0.94 : 0.97, bonded ? 1.1 : 1.03),
            new ClosedForm.Band(bonded ? 0.8 : 0.97, bonded ? 2.2 : 1.03))
        .crossesLayers(bonded || build == BuildDirection.AXIS_LYING)
        .sources(FORM, COMPUTED)
        .respond(grade, load, run, reservations(load));
  }

  private Checks reservations(LoadCase load) {
    Checks checks = Checks.of(NAME, COMPUTED);
    double s = shapeFactor();
    if (faces == Faces.BONDED) {
      checks.check("shape factor", 0.25, 4.0, s);
      if (bulk.isEmpty()) {
        checks.check("shape factor without bulk modulus", 0.0, 3.0, s);
      }
    } else {
      checks.check("height / width", 0.0, 1.5, height.ratioTo(across));
    }
    if (!disc()) {
      checks.check("length / width", 4.0, Double.POSITIVE_INFINITY, along.ratioTo(across));
    }
    if (load instanceof LoadCase.ToTravel to) {
      checks.check("squeeze / height", 0.0, 0.2, to.travel().ratioTo(height));
    }
    return checks;
  }

  @Override
  public List<Lever<BondedBlock>> levers() {
    return List.of(HEIGHT, ACROSS);
  }

  @Override
  public Volume printedVolume() {
    double share = disc() ? 0.25 * Math.PI : 1.0;
    return height.times(across.times(along)).times(share);
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.WALL, height.m() <= across.m() ? height : across);
  }

  /** One readable line. */
  @Override
  public String toString() {
    String outline = disc() ? "disc of diameter " + across : "strip " + across + " x " + along;
    return (faces == Faces.BONDED ? "bonded " : "slippery ") + outline + ", height " + height;
  }
}
