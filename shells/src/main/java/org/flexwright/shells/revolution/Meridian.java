package org.flexwright.shells.revolution;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Volume;
import org.flexwright.response.Lever;

/**
 * The meridian of a part of revolution: a line drawn in the plane of the axis by one face of the
 * wall, and the wall along it.
 *
 * <p>Formula: the middle of the wall is the drawn line moved by half the wall along its normal n =
 * (-sin f, cos f), mitred at corners; the volume is 2 pi int int (1 - y k)(r - y sin f) dy ds.
 * Symbols: s arc length of the drawn line (m), f its angle from the outward radial direction, k =
 * df/ds its curvature (1/m), r its distance from the axis (m), y distance from it through the wall
 * (m).
 *
 * <p>Range: any line whose wall does not fold, cross itself or cross the axis; others are refused
 * with the place. Draw upwards, or with what is enclosed on the left: pressure inside is then
 * positive. Where the wall changes it does so by a smooth step. Thick parts may be {@link
 * #rigid(String) rigid}.
 *
 * <p>Caveats: none of its own. Source: Pappus' rule for volumes of revolution.
 *
 * <p>JShell: {@code Meridian.from(mm(12), mm(0)).lineTo(mm(12),
 * mm(5)).named("neck").convolutions(3, mm(5), mm(6)).lineTo(mm(12), mm(28)).wall("neck",
 * mm(2)).wall(mm(0.8))}
 *
 * <p>Immutable and thread-safe.
 */
public final class Meridian {

  /** The wall outside the zones; the drawn face stays. */
  public static final Lever<Meridian> WALL = Lever.of("wall", Meridian::wall, Meridian::wall);

  private final DrawnLine line;
  private final DrawnFace drawn;
  private final Length usual;
  private final List<Wall.Zone> zones;
  private final double blend;
  private final Rigid rigid;
  private final Wall wall;
  private final Layer middle;
  private final Solid solid;

  /**
   * A piece of the drawn line.
   *
   * @param number counted from 1
   * @param name its name, or empty
   * @param from where it starts, by the length of the line
   * @param to where it ends
   */
  public record Piece(int number, String name, Length from, Length to) {

    String label() {
      return "piece " + number + (name.isEmpty() ? "" : " (" + name + ")");
    }
  }

  Meridian(DrawnLine line, DrawnFace drawn, Length usual, List<Wall.Zone> zones, double blend) {
    this(line, drawn, usual, zones, blend, Rigid.NONE);
  }

  private Meridian(
      DrawnLine line,
      DrawnFace drawn,
      Length usual,
      List<Wall.Zone> zones,
      double blend,
      Rigid rigid) {
    this.line = line;
    this.rigid = rigid;
    this.drawn = drawn;
    this.usual = usual;
    this.zones = List.copyOf(zones);
    this.blend = blend;
    Require.positive("wall", usual.m(), "m");
    wall = new Wall(line, usual.m(), zones, blend);
    Room.checkLine(line);
    Layer right = new Layer(line, wall, drawn.right());
    Layer left = new Layer(line, wall, drawn.left());
    middle = new Layer(line, wall, drawn.middle(), rigid);
    Room.checkLayer(right);
    Room.checkLayer(left);
    solid = new Solid(right, left);
    Room.checkCrossing(solid, line);
    rigid.check(middle);
  }

  /**
   * Starts a meridian.
   *
   * @param r radius of its start, 0 for a start on the axis
   * @param z height of its start
   * @return a draft; draw pieces, give the wall last
   * @throws org.flexwright.InvalidInputException if the radius is negative
   */
  public static MeridianDraft from(Length r, Length z) {
    return MeridianDraft.from(r, z);
  }

  /**
   * The wall of the pieces of a name; the drawn face stays. It is read in the middle of the first
   * of them, and set all along them: a taper becomes even.
   *
   * @param name of the pieces
   * @return the lever; a meridian without such a piece refuses it
   */
  public static Lever<Meridian> wallOf(String name) {
    return Lever.of(
        "wall of " + name,
        m -> {
          Piece p = Wall.called(m.line, name, "wall").get(0);
          return m.wallAt(p.from().plus(p.to()).times(0.5));
        },
        (m, of) -> m.wall(name, of));
  }

  /**
   * The face that the line draws.
   *
   * @return the face
   */
  public DrawnFace drawn() {
    return drawn;
  }

  /**
   * The pieces of the line.
   *
   * @return the pieces in order
   */
  public List<Piece> pieces() {
    return line.pieces();
  }

  /**
   * The length of the drawn line.
   *
   * @return the length
   */
  public Length length() {
    return Length.m(line.length());
  }

  /**
   * The wall outside the zones.
   *
   * @return the thickness
   */
  public Length wall() {
    return usual;
  }

  /**
   * The wall at a place.
   *
   * @param s length of the drawn line up to there
   * @return the thickness, across the drawn line
   * @throws org.flexwright.InvalidInputException if the place is not on the line
   */
  public Length wallAt(Length s) {
    Require.between("place on the line", s.m(), 0.0, line.length(), "m");
    return Length.m(wall.thickness(s.m()));
  }

  private Meridian with(List<Wall.Zone> more) {
    List<Wall.Zone> all = new ArrayList<>(zones);
    all.addAll(more);
    return new Meridian(line, drawn, usual, all, blend, rigid);
  }

  /**
   * This meridian with another wall outside the zones.
   *
   * @param of wall thickness
   * @return the new meridian; the drawn face stays
   * @throws org.flexwright.InvalidInputException if the wall does not find room
   */
  public Meridian wall(Length of) {
    return new Meridian(line, drawn, of, zones, blend, rigid);
  }

  /**
   * This meridian with another wall of the pieces of a name.
   *
   * @param name of the pieces
   * @param of wall thickness
   * @return the new meridian
   * @throws org.flexwright.InvalidInputException if no piece has the name or the wall does not find
   *     room
   */
  public Meridian wall(String name, Length of) {
    return taper(name, of, of);
  }

  /**
   * This meridian with a wall that changes evenly along each of the pieces of a name.
   *
   * @param name of the pieces
   * @param first wall thickness where each starts
   * @param last wall thickness where it ends
   * @return the new meridian
   * @throws org.flexwright.InvalidInputException if no piece has the name or the wall does not find
   *     room
   */
  public Meridian taper(String name, Length first, Length last) {
    return with(List.of(Wall.zone(name, first, last)));
  }

  /**
   * This meridian with a wall of its own for a stretch of the line, over zones given before.
   *
   * @param from where it starts, by the length of the drawn line
   * @param to where it ends
   * @param first wall thickness where it starts
   * @param last wall thickness where it ends
   * @return the new meridian
   * @throws org.flexwright.InvalidInputException if the stretch is not on the line or the wall does
   *     not find room
   */
  public Meridian taper(Length from, Length to, Length first, Length last) {
    return with(List.of(Wall.zone(from, to, first, last)));
  }

  /**
   * This meridian with smooth steps of another length between zones of different wall.
   *
   * @param over length of a step
   * @return the new meridian
   * @throws org.flexwright.InvalidInputException if it is not above 0 or longer than a zone
   */
  public Meridian blend(Length over) {
    double length = Require.positive("blend of the wall", over.m(), "m");
    return new Meridian(line, drawn, usual, zones, length, rigid);
  }

  /**
   * This meridian with its whole wall, zones too, made thicker or thinner.
   *
   * @param factor on every thickness
   * @return the new meridian
   * @throws org.flexwright.InvalidInputException if the factor is not above 0 or the wall does not
   *     find room
   */
  public Meridian wallTimes(double factor) {
    Require.positive("factor on the wall", factor, "");
    List<Wall.Zone> all = new ArrayList<>();
    zones.forEach(z -> all.add(z.times(factor)));
    return new Meridian(line, drawn, usual.times(factor), all, blend, rigid);
  }

  /**
   * This meridian with the wall of the pieces of a name made thicker or thinner.
   *
   * @param name of the pieces
   * @param factor on every thickness of theirs
   * @return the new meridian
   * @throws org.flexwright.InvalidInputException if no piece has the name, the factor is not above
   *     0 or the wall does not find room
   */
  public Meridian wallTimes(String name, double factor) {
    Require.positive("factor on the wall", factor, "");
    return with(wall.scaled(line, name, factor));
  }

  /**
   * This meridian with the pieces of a name taken as rigid: thick ends, cores, stiffening rings,
   * lids and bosses.
   *
   * <p>A rigid stretch moves along the axis only, as one body. The walls that meet it are built in
   * there, see {@link End#BUILT_IN}; so is an end inside a rigid stretch, whatever the shell is
   * told of it. The stretch ends on a cut straight across the drawn line. It keeps its wall in
   * print.
   *
   * @param name of the pieces
   * @return the new meridian
   * @throws org.flexwright.InvalidInputException if no piece has the name, nothing flexible is
   *     left, a flexible stretch is shorter than a fifth of the wall beside it, or a border is in a
   *     corner
   */
  public Meridian rigid(String name) {
    return new Meridian(line, drawn, usual, zones, blend, rigid.with(line, name));
  }

  /**
   * This meridian with a stretch of the line taken as rigid.
   *
   * @param from where it starts, by the length of the drawn line
   * @param to where it ends
   * @return the new meridian
   * @throws org.flexwright.InvalidInputException if the stretch is not on the line, nothing
   *     flexible is left, a flexible stretch is shorter than a fifth of the wall beside it, or a
   *     border is in a corner
   * @see #rigid(String)
   */
  public Meridian rigid(Length from, Length to) {
    return new Meridian(line, drawn, usual, zones, blend, rigid.with(line, from.m(), to.m()));
  }

  /**
   * The volume of the wall, that is of the material to print.
   *
   * @return the volume, by quadrature of the drawn shape
   */
  public Volume printedVolume() {
    return Volume.m3(solid.volume());
  }

  /**
   * The wall as a closed surface of triangles, to be written for printing.
   *
   * @param tolerance how far a triangle may leave the true surface
   * @return the triangles
   * @throws org.flexwright.InvalidInputException if the tolerance is not above 0 or so small that
   *     there would be too many triangles
   */
  public Triangles triangles(Length tolerance) {
    return Triangles.of(solid, tolerance.m());
  }

  /**
   * The mesh of the middle of the wall.
   *
   * @param fineness sizes are divided by it; 1 is the usual one
   */
  ShellMesh mesh(double fineness) {
    return new Mesher(middle, drawn, fineness).graded();
  }

  /** The middle of the wall. */
  Layer middle() {
    return middle;
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "meridian of "
        + pieces().size()
        + " pieces, "
        + Text.number(1e3 * line.length())
        + " mm, wall "
        + usual
        + (zones.isEmpty() ? "" : " and " + zones.size() + " zones")
        + ", drawn by its "
        + drawn.toString().toLowerCase(Locale.ROOT)
        + " face";
  }
}
