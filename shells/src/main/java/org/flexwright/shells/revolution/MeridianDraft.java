package org.flexwright.shells.revolution;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.InvalidInputException;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Length;

/**
 * A meridian that is being drawn, piece after piece from its start; the wall completes it.
 *
 * <p>Lines and arcs by their closed forms; a sine fold is r = r0 + depth/2 (1 - cos(2 pi z/pitch));
 * a convolution is made of quarter circles of a quarter of the pitch and flat legs across the axis;
 * a spline is the natural cubic spline by the length of its chords.
 *
 * <p>Pieces may meet in a corner. On the axis the line must run straight across it.
 *
 * <p>JShell: {@code Meridian.from(mm(12), mm(0)).lineTo(mm(12), mm(5)).named("neck").arcTo(mm(20),
 * mm(13)).wall(mm(1))}
 *
 * <p>Immutable and thread-safe.
 */
public final class MeridianDraft {

  private static final double ROUND = 1e-6;
  private static final double LEAST = 1e-9;

  private final double r;
  private final double z;
  private final List<Curve> curves;
  private final List<Integer> pieceOf;
  private final List<String> names;
  private final List<Wall.Zone> zones;
  private final double blend;
  private final DrawnFace drawn;

  private MeridianDraft(
      double r,
      double z,
      List<Curve> curves,
      List<Integer> pieceOf,
      List<String> names,
      List<Wall.Zone> zones,
      double blend,
      DrawnFace drawn) {
    this.r = r;
    this.z = z;
    this.curves = curves;
    this.pieceOf = pieceOf;
    this.names = names;
    this.zones = zones;
    this.blend = blend;
    this.drawn = drawn;
  }

  static MeridianDraft from(Length r, Length z) {
    Require.notNegative("radius at the start", r.m(), "m");
    return new MeridianDraft(
        r.m(), z.m(), List.of(), List.of(), List.of(), List.of(), 0.0, DrawnFace.OUTER);
  }

  private MeridianDraft with(double toR, double toZ, List<Curve> more) {
    List<Curve> all = new ArrayList<>(curves);
    all.addAll(more);
    List<Integer> owners = new ArrayList<>(pieceOf);
    for (int i = 0; i < more.size(); i++) {
      owners.add(names.size());
    }
    List<String> named = new ArrayList<>(names);
    named.add("");
    return new MeridianDraft(toR, toZ, all, owners, named, zones, blend, drawn);
  }

  private String place() {
    return "piece " + (names.size() + 1);
  }

  private Spot last() {
    Curve c = curves.get(curves.size() - 1);
    return c.at(c.length());
  }

  /** The angle that the next piece continues. */
  private double heading(double otherwise) {
    return curves.isEmpty() ? otherwise : last().angle();
  }

  private double tangent(String what) {
    Require.that(
        !curves.isEmpty() || r == 0.0,
        what + " as " + place(),
        "without a direction",
        "a piece before it, or a start on the axis",
        "begin with a line or an arc about a centre");
    return heading(0.0);
  }

  private void notEmpty(double length, double scale) {
    Require.that(
        length > LEAST * scale,
        "length of " + place(),
        Text.number(length) + " m",
        "above 0",
        "leave the piece out");
  }

  /**
   * A straight line.
   *
   * @param toR radius of its end, not below 0
   * @param toZ height of its end
   * @return the draft with it
   * @throws InvalidInputException if it has no length or its end a negative radius
   */
  public MeridianDraft lineTo(Length toR, Length toZ) {
    endAt(toR);
    double dr = toR.m() - r;
    double dz = toZ.m() - z;
    double length = Math.hypot(dr, dz);
    notEmpty(length, Math.abs(r) + Math.abs(toR.m()));
    double angle = Spot.near(Math.atan2(dz, dr), heading(Math.atan2(dz, dr)));
    return with(toR.m(), toZ.m(), List.of(new Curve.Line(r, z, angle, length)));
  }

  private void endAt(Length toR) {
    Require.notNegative("radius at the end of " + place(), toR.m(), "m");
  }

  /**
   * A straight line to the axis, across it.
   *
   * @return the draft with it
   * @throws InvalidInputException if it is on the axis already
   */
  public MeridianDraft toAxis() {
    return lineTo(Length.m(0.0), Length.m(z));
  }

  /**
   * A circular arc that goes on from the piece before without a corner; at a start on the axis
   * straight outwards.
   *
   * @param toR radius of its end, not below 0
   * @param toZ height of its end
   * @return the draft with it
   * @throws InvalidInputException if there is no direction to go on in, it has no length, or its
   *     end lies straight behind
   */
  public MeridianDraft arcTo(Length toR, Length toZ) {
    endAt(toR);
    double heading = tangent("arc");
    notEmpty(Math.hypot(toR.m() - r, toZ.m() - z), r + toR.m());
    Spot from = new Spot(r, z, heading, 0.0);
    return with(toR.m(), toZ.m(), List.of(Shapes.arc(from, toR.m(), toZ.m(), place())));
  }

  /**
   * A circular arc that goes on from the piece before without a corner, by its radius and turn.
   *
   * @param radius of the arc
   * @param turn how far it turns, positive to the left, up to a full turn
   * @return the draft with it
   * @throws InvalidInputException if there is no direction to go on in or it has no length
   */
  public MeridianDraft bend(Length radius, Angle turn) {
    double heading = tangent("bend");
    Require.positive("radius of " + place(), radius.m(), "m");
    Require.nonZero("turn of " + place(), turn.rad(), "rad");
    Require.between("turn of " + place(), turn.rad(), -2.0 * Math.PI, 2.0 * Math.PI, "rad");
    double curvature = Math.signum(turn.rad()) / radius.m();
    Curve arc = new Curve.Arc(r, z, heading, curvature, Math.abs(turn.rad()) * radius.m());
    return ending(List.of(arc), radius.m());
  }

  private MeridianDraft ending(List<Curve> made, double scale) {
    Curve c = made.get(made.size() - 1);
    Spot end = c.at(c.length());
    double endR = Math.abs(end.r()) < 1e-12 * (scale + r) ? 0.0 : end.r();
    endAt(Length.m(endR));
    return with(endR, end.z(), made);
  }

  /**
   * A circular arc about a centre, the shorter way round.
   *
   * @param centreR radius of its centre, which may be beyond the axis
   * @param centreZ height of its centre
   * @param toR radius of its end, not below 0
   * @param toZ height of its end
   * @return the draft with it
   * @throws InvalidInputException if start and end are not as far from the centre, or it is half a
   *     turn, which has no shorter way
   */
  public MeridianDraft arcAbout(Length centreR, Length centreZ, Length toR, Length toZ) {
    endAt(toR);
    Spot centre = new Spot(centreR.m(), centreZ.m(), 0.0, 0.0);
    Spot from = new Spot(r, z, heading(Double.NaN), 0.0);
    Curve arc = Shapes.arcAbout(centre, from, toR.m(), toZ.m(), place());
    return with(toR.m(), toZ.m(), List.of(arc));
  }

  /**
   * Sine folds along the axis, from a root outwards and back.
   *
   * @param count how many, in halves
   * @param depth from root to crest; negative starts at a crest and folds inwards
   * @param pitch height of one fold; negative runs down
   * @return the draft with them
   * @throws InvalidInputException if the count is not of halves, a length is 0, or they reach the
   *     axis
   */
  public MeridianDraft sine(double count, Length depth, Length pitch) {
    Shapes.folds(count, depth.m(), pitch.m(), place());
    double up = Math.signum(pitch.m()) * 0.5 * Math.PI;
    Curve made = Shapes.sine(r, z, count, depth.m(), pitch.m(), Spot.near(up, heading(up)));
    boolean crest = (Math.round(2.0 * count) & 1) == 1;
    double toR = r + (crest ? depth.m() : 0.0);
    endAt(Length.m(toR));
    return with(toR, z + count * pitch.m(), List.of(made));
  }

  /**
   * U-shaped convolutions along the axis, from the inside of a root: round roots and crests of a
   * quarter of the pitch, flat legs across the axis.
   *
   * @param count how many, in halves
   * @param depth from root to crest, at least half the pitch; negative starts at a crest and folds
   *     inwards
   * @param pitch height of one convolution; negative runs down
   * @return the draft with them
   * @throws InvalidInputException if the count is not of halves, the depth has no room for the
   *     rounds, or they reach the axis
   */
  public MeridianDraft convolutions(double count, Length depth, Length pitch) {
    Shapes.folds(count, depth.m(), pitch.m(), place());
    double round = 0.25 * Math.abs(pitch.m());
    double leg = Math.abs(depth.m()) - 2.0 * round;
    Require.that(
        leg >= -ROUND * round,
        "depth of " + place(),
        depth,
        () -> "at least half the pitch, " + pitch.times(0.5),
        "make it deeper or the pitch shorter");
    double up = Math.signum(pitch.m()) * 0.5 * Math.PI;
    double angle = Spot.near(up, heading(up));
    double bend = -Math.signum(depth.m() * pitch.m()) / round;
    List<Curve> made =
        Shapes.convolutions(
            new Spot(r, z, angle, 0.0),
            Math.round(2.0 * count),
            round,
            leg > ROUND * round ? leg : 0.0,
            bend);
    return ending(made, Math.abs(depth.m()));
  }

  /**
   * A smooth line from here through points.
   *
   * @param points radius and height of each point in turn; the last one may be on the axis
   * @return the draft with it
   * @throws InvalidInputException if a height is missing, a radius is negative, two points in turn
   *     are the same or the line has a cusp
   */
  public MeridianDraft splineThrough(Length... points) {
    int n = points.length / 2;
    Require.that(
        n >= 1 && points.length == 2 * n,
        "points of " + place(),
        points.length + " lengths",
        "radius and height of each point",
        "");
    double[] rs = new double[n + 1];
    double[] zs = new double[n + 1];
    rs[0] = r;
    zs[0] = z;
    for (int i = 1; i <= n; i++) {
      endAt(points[2 * i - 2]);
      rs[i] = points[2 * i - 2].m();
      zs[i] = points[2 * i - 1].m();
      notEmpty(Math.hypot(rs[i] - rs[i - 1], zs[i] - zs[i - 1]), rs[i] + rs[i - 1]);
    }
    if (n == 1 && rs[0] > 0.0 && rs[1] > 0.0) {
      return lineTo(points[0], points[1]);
    }
    return with(rs[n], zs[n], List.of(Shapes.spline(rs, zs, heading(0.0))));
  }

  /**
   * Names the last piece, for zones of the wall and for messages. Several pieces may bear a name.
   *
   * @param name the name
   * @return the draft
   * @throws InvalidInputException if there is no piece yet or the name is blank
   */
  public MeridianDraft named(String name) {
    Require.that(!names.isEmpty(), "name", name, "given after a piece", "draw a piece first");
    Require.that(!name.isBlank(), "name", "blank", "a word", "");
    List<String> named = new ArrayList<>(names);
    named.set(named.size() - 1, name);
    return new MeridianDraft(r, z, curves, pieceOf, named, zones, blend, drawn);
  }

  /**
   * Says which face of the wall the line draws; the outer one if not said.
   *
   * @param face the face that stays when the wall changes
   * @return the draft
   */
  public MeridianDraft drawn(DrawnFace face) {
    return new MeridianDraft(r, z, curves, pieceOf, names, zones, blend, face);
  }

  private MeridianDraft with(Wall.Zone zone) {
    List<Wall.Zone> all = new ArrayList<>(zones);
    all.add(zone);
    return new MeridianDraft(r, z, curves, pieceOf, names, all, blend, drawn);
  }

  /**
   * Gives the pieces of a name a wall of their own.
   *
   * @param name of the pieces
   * @param of wall thickness
   * @return the draft
   * @throws InvalidInputException if the thickness is not above 0
   */
  public MeridianDraft wall(String name, Length of) {
    return taper(name, of, of);
  }

  /**
   * Gives the pieces of a name a wall that grows or shrinks evenly.
   *
   * @param name of the pieces
   * @param first wall thickness where each starts
   * @param last wall thickness where it ends
   * @return the draft
   * @throws InvalidInputException if a thickness is not above 0
   */
  public MeridianDraft taper(String name, Length first, Length last) {
    return with(Wall.zone(name, first, last));
  }

  /**
   * Gives a stretch of the line a wall of its own, over zones given before.
   *
   * @param from where it starts, by the length of the drawn line
   * @param to where it ends
   * @param first wall thickness where it starts
   * @param last wall thickness where it ends
   * @return the draft
   * @throws InvalidInputException if a thickness is not above 0
   */
  public MeridianDraft taper(Length from, Length to, Length first, Length last) {
    return with(Wall.zone(from, to, first, last));
  }

  /**
   * Sets the length of the smooth steps between zones of different wall; the thicker wall if not
   * set.
   *
   * @param over length of a step, centred at the border of the zones
   * @return the draft
   * @throws InvalidInputException if it is not above 0
   */
  public MeridianDraft blend(Length over) {
    double length = Require.positive("blend of the wall", over.m(), "m");
    return new MeridianDraft(r, z, curves, pieceOf, names, zones, length, drawn);
  }

  /**
   * Gives the wall outside the zones, which completes the meridian.
   *
   * @param of wall thickness
   * @return the meridian
   * @throws InvalidInputException if nothing is drawn yet, or the wall does not find room: the
   *     message names the place
   */
  public Meridian wall(Length of) {
    Require.that(!curves.isEmpty(), "meridian", "empty", "at least one piece", "add lineTo(...)");
    DrawnLine line =
        new DrawnLine(curves, pieceOf.stream().mapToInt(Integer::intValue).toArray(), names);
    return new Meridian(line, drawn, of, zones, blend);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "draft of a meridian of " + names.size() + " pieces";
  }
}
