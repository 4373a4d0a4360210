package org.flexwright.shells.wall;

import java.util.List;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.internal.Require;
import org.flexwright.law.StrainEnergy;
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
 * A living hinge: a short thin flexure between two stiff blocks, bent to an angle by moments.
 *
 * <p>Formula: small angles M = E' B t^3 a/(12 Le), strain t a/(2 Le), E' = E/(1 - nu^2). At any
 * angle the grade's law in a block bent into a sector (Rivlin 1949): with x = t a/Le, M = (3/4)/(1
 * - nu^2) B t^2/x^2 times the integral of sinh(2 e) s(e) over the Hencky strain e from 0 to
 * asinh(x)/2, peak strain exp(asinh(x)/2) - 1. Symbols: L free length, B width, t wall (m), a angle
 * (rad), s true stress in plane strain (Pa). Le = L between rigid blocks, L + 0.83 t between blocks
 * of the same material, which turn at the roots.
 *
 * <p>Band: 0.83 t is for blocks 30 t thick with sharp corners (plane finite elements; 0.78 t at 5
 * t, 0.68 t at 3 t), 0.96 t an upper bound by the half-plane; rigid blocks take off 0.1 t. So Le
 * runs from L + 0.68 t to L + 0.96 t, or from L - 0.1 t to L. Narrower than its length it is softer
 * by down to 1 - nu^2, which the band then holds. Range: x to 0.97, where the inner face is pressed
 * to 65 % and creases (Gent and Cho 1999); L from 0.5 t. Caveats outside, and a note on the roots.
 * Source: Rivlin 1949, Proc. R. Soc. A 195 (from memory, derived anew). Built axis up the hinge
 * line lies in a layer and bending pulls layers apart: it soon tears. Life: ask a life law at the
 * peak strain.
 *
 * <p>JShell: {@code LivingHinge.of(LivingHinge.Blocks.SAME, mm(3), mm(30), mm(0.8))}
 *
 * @param blocks what the flexure joins
 * @param length free length between the blocks
 * @param width width along the hinge line
 * @param wall thickness
 * @param build how it stands in the printer
 */
public record LivingHinge(
    Blocks blocks, Length length, Length width, Length wall, BuildDirection build)
    implements Part<LivingHinge> {

  /** What a flexure joins. */
  public enum Blocks {
    /** Thick blocks of the material of the flexure, printed with it. */
    SAME(0.83, 0.68, 0.96),
    /** Blocks of a far stiffer material. */
    RIGID(0.0, -0.1, 0.0);

    private final double root;
    private final double least;
    private final double most;

    Blocks(double root, double least, double most) {
      this.root = root;
      this.least = least;
      this.most = most;
    }
  }

  /** The wall thickness. */
  public static final Lever<LivingHinge> WALL =
      Lever.of("wall", LivingHinge::wall, LivingHinge::wall);

  /** The length. */
  public static final Lever<LivingHinge> LENGTH =
      Lever.of("length", LivingHinge::length, LivingHinge::length);

  private static final String NAME = "living hinge";
  private static final Source BLOCK =
      Source.memory("Rivlin 1949, Proc. R. Soc. A 195: flexure of an incompressible block");
  private static final Source ROOT = Source.derived("turn of the roots by plane finite elements");
  private static final Source CREASE =
      Source.memory("Gent and Cho 1999, Rubber Chem. Technol. 72: creases of bent blocks");

  /**
   * Refuses a hinge that makes no sense.
   *
   * @param blocks what the flexure joins
   * @param length free length between the blocks
   * @param width width along the hinge line
   * @param wall thickness
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0 or the flexure is
   *     shorter than a fifth of its wall
   */
  public LivingHinge {
    Require.positive("length", length.m(), "m");
    Require.positive("width", width.m(), "m");
    Require.positive("wall", wall.m(), "m");
    Require.that(
        wall.m() < 5.0 * length.m(),
        "wall",
        wall,
        () -> "below five times the length, " + length.times(5.0),
        "that is a notch, not a flexure");
  }

  /**
   * A hinge, lying flat in the printer.
   *
   * @param blocks what the flexure joins
   * @param length free length between the blocks
   * @param width width along the hinge line
   * @param wall thickness
   * @return the hinge
   */
  public static LivingHinge of(Blocks blocks, Length length, Length width, Length wall) {
    return new LivingHinge(blocks, length, width, wall, BuildDirection.AXIS_LYING);
  }

  /**
   * This hinge with another length.
   *
   * @param of the free length
   * @return the new hinge
   */
  public LivingHinge length(Length of) {
    return new LivingHinge(blocks, of, width, wall, build);
  }

  /**
   * This hinge with another wall.
   *
   * @param of the wall
   * @return the new hinge
   */
  public LivingHinge wall(Length of) {
    return new LivingHinge(blocks, length, width, of, build);
  }

  /**
   * This hinge built another way.
   *
   * @param of how it stands in the printer
   * @return the new hinge
   */
  public LivingHinge build(BuildDirection of) {
    return new LivingHinge(blocks, length, width, wall, of);
  }

  private double bend(double t, double angle) {
    return t * angle / (length.m() + blocks.root * t);
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    StrainEnergy law = grade.law();
    double plane = 1.0 - grade.poisson() * grade.poisson();
    double scale = 0.75 / plane * width.m();
    ClosedForm form =
        ClosedForm.of(NAME, wall)
            .turned()
            .loadOfLaw(Channel.MOMENT, (t, a) -> scale * t * t * Flexure.moment(law, bend(t, a)))
            .strain((t, a) -> Flexure.strain(bend(t, a)));
    double slender = wall.ratioTo(length);
    double model = 1.0 + blocks.root * slender;
    double least = Math.max(0.1, 1.0 + blocks.least * slender);
    double soft = model / (1.0 + blocks.most * slender);
    double hard = 1.02 * model / least;
    double narrow = width.m() < length.m() ? plane : 1.0;
    return form.bands(
            new ClosedForm.Band(0.98 * soft * narrow, hard), new ClosedForm.Band(0.98 * soft, hard))
        .crossesLayers(build == BuildDirection.AXIS_UP)
        .sources(BLOCK, ROOT)
        .respond(grade, load, run, reservations(bend(wall.m(), form.end(load))));
  }

  private Checks reservations(double bend) {
    Checks checks = Checks.of(NAME, BLOCK);
    checks.check(new ValidityRange(NAME, "wall x angle / length", 0.0, 0.97, "", CREASE), bend);
    checks.check("length / wall", 0.5, Double.POSITIVE_INFINITY, length.ratioTo(wall));
    checks.note("sharp corners where it meets the blocks tear first: round them by the wall");
    if (width.m() < length.m()) {
      checks.note("narrower than long, so its width gives way: see the low end");
    }
    return checks;
  }

  @Override
  public List<Lever<LivingHinge>> levers() {
    return List.of(WALL, LENGTH);
  }

  @Override
  public Volume printedVolume() {
    return wall.times(width.times(length));
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.WALL, wall);
  }

  /** One readable line. */
  @Override
  public String toString() {
    String between = blocks == Blocks.SAME ? "blocks of its material" : "rigid blocks";
    return "living hinge between "
        + between
        + ", length "
        + length
        + ", width "
        + width
        + ", wall "
        + wall;
  }
}
