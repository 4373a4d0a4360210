package org.flexwright.shells.inflate;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Exponents;
import org.flexwright.evidence.Factor;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Force;
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
 * An inflating finger: a thin sleeve between stiff ends on a stiff core, which grows under pressure
 * into a bore and holds by friction. Its outside stays when the wall changes.
 *
 * <p>Formula. Long tube: p_tube from {@link ThickTube} at axial stretch 1, bore stretch la^2 = 1 +
 * (Rb^2 - B^2)/A^2. The built-in ends hold the sleeve back: cylinder built in and held in length,
 * linear (see {@code HeldEnds}); the middle touches at p_touch = p_tube (1 - nu^2 + nu^2 m)/f with
 * f = 1 - 2 [cosh(h) sin(h) + sinh(h) cos(h)]/(sinh 2h + sin 2h), h = b L/2, b = [3 (1 -
 * nu^2)]^(1/4)/sqrt(R t), m the mean of the deflection. After that the contact spreads; the free
 * length a at either end follows from the linear contact problem. Grip: F = mu (p - p_tube) 2 pi Rb
 * (L - 2 a). Peak strain: the larger of the hoop strain of the inner face, la - 1, and the bending
 * strain of the built-in ends.
 *
 * <p>Symbols: A, B inner and outer radius, Rb bore radius, R = B - t/2, t wall, L span (m), mu
 * friction, nu Poisson ratio. Left out on the safe side: line reactions at the edges of the
 * contact, and what the held length adds to the contact pressure where the sleeve can slip along
 * the bore.
 *
 * <p>The pressure that holds F is p_tube, which follows the modulus, plus the contact pressure
 * F/(mu 2 pi Rb Lc), which does not but for the contact length Lc. The offset of the load is F
 * dp/dF, the contact pressure less that small share, so that the rest follows the modulus with
 * power 1. Range: t/R to 0.2, b L from 3, bending and hoop strain to 0.1 and 1 and within the law.
 * Band 0.9 to 1.1 for the end correction and the choice of the strain measure, our judgement; -20
 * to +20 % on the strain (a fillet at the ends lowers it, a notch raises it).
 *
 * <p>A stopped run keeps the states so far; load and strain are those of the force asked for.
 *
 * <p>Read the cautions of this package before pressurising anything. Source: derived; Hetenyi 1946
 * for the beam on a foundation (from memory). Built axis up, the hoop strain lies in the layers;
 * axis lying, it pulls them apart.
 *
 * <p>JShell: {@code Sleeve.outside(mm(21.4)).span(mm(30)).wall(mm(0.6)).into(Bore.of(mm(22)).
 * tolerance(mm(0.2)).friction(0.4, 0.1))}
 *
 * @param outside diameter of the outside at rest
 * @param span free length between the stiff ends
 * @param wall wall thickness, below half the outside
 * @param bore the bore, wider than the outside even at its narrowest
 * @param build how it stands in the printer
 */
public record Sleeve(Length outside, Length span, Length wall, Bore bore, BuildDirection build)
    implements Part<Sleeve> {

  /** The wall thickness; the outside stays. */
  public static final Lever<Sleeve> WALL = Lever.of("wall", Sleeve::wall, Sleeve::wall);

  /** The diameter of the outside; the wall stays. */
  public static final Lever<Sleeve> OUTSIDE =
      Lever.of("outside", Sleeve::outside, Sleeve::withOutside);

  /** The free length. */
  public static final Lever<Sleeve> SPAN = Lever.of("span", Sleeve::span, Sleeve::span);

  private static final String NAME = "sleeve in a bore";
  private static final int STATES = 8;
  private static final double LOW = 0.9;
  private static final double HIGH = 1.1;
  private static final double STRAIN_LOW = 0.8;
  private static final double STRAIN_HIGH = 1.2;
  private static final Source TUBE =
      Source.memory("Green and Zerna 1954: thick tube at fixed axial stretch");
  private static final Source ENDS =
      Source.derived("linear cylinder with built-in ends, held length, against a rigid bore");

  /**
   * Refuses a sleeve that makes no sense.
   *
   * @param outside diameter of the outside at rest
   * @param span free length between the stiff ends
   * @param wall wall thickness, below half the outside
   * @param bore the bore, wider than the outside even at its narrowest
   * @param build how it stands in the printer
   * @throws InvalidInputException if a length is not above 0, the wall leaves no inside, or the
   *     bore at its narrowest is not wider than the outside
   */
  public Sleeve {
    Require.positive("outside", outside.m(), "m");
    Require.positive("span", span.m(), "m");
    Require.positive("wall", wall.m(), "m");
    Require.that(
        wall.m() < 0.5 * outside.m(),
        "wall",
        wall,
        () -> "below half the outside, " + outside.times(0.5),
        "nothing would be left to inflate");
    Require.that(
        bore.narrowest().m() > outside.m(),
        "narrowest bore",
        bore.narrowest(),
        () -> "above the outside of the sleeve, " + outside,
        "the part would not go in: take a smaller outside or a tighter tolerance");
  }

  /**
   * Starts a sleeve.
   *
   * @param diameter diameter of the outside at rest
   * @return a draft; give span and wall, the bore last
   */
  public static SleeveDraft outside(Length diameter) {
    return new SleeveDraft(diameter, null, null);
  }

  /**
   * This sleeve with another outside, on the same wall.
   *
   * @param of diameter of the outside at rest
   * @return the new sleeve
   */
  public Sleeve withOutside(Length of) {
    return new Sleeve(of, span, wall, bore, build);
  }

  /**
   * This sleeve with another span.
   *
   * @param of the span
   * @return the new sleeve
   */
  public Sleeve span(Length of) {
    return new Sleeve(outside, of, wall, bore, build);
  }

  /**
   * This sleeve with another wall, on the same outside.
   *
   * @param of the wall
   * @return the new sleeve
   */
  public Sleeve wall(Length of) {
    return new Sleeve(outside, span, of, bore, build);
  }

  /**
   * This sleeve in another bore.
   *
   * @param of the bore
   * @return the new sleeve
   */
  public Sleeve into(Bore of) {
    return new Sleeve(outside, span, wall, of, build);
  }

  /**
   * This sleeve built another way.
   *
   * @param of how it stands in the printer
   * @return the new sleeve
   */
  public Sleeve build(BuildDirection of) {
    return new Sleeve(outside, span, wall, bore, of);
  }

  private Grip grip(Grade grade, double t) {
    return new Grip(
        grade.law(),
        1.0,
        grade.poisson(),
        0.5 * outside.m(),
        span.m(),
        t,
        0.5 * bore.diameter().m(),
        bore.friction());
  }

  private Grip grip(Grade grade) {
    return grip(grade, wall.m());
  }

  /**
   * The pressure at which the middle of the sleeve touches the bore.
   *
   * @param grade the material
   * @return the pressure
   */
  public Pressure touch(Grade grade) {
    return Pressure.pa(grip(grade).touch());
  }

  /**
   * The length of the contact at which a force is held.
   *
   * @param grade the material
   * @param force the force, above 0
   * @return the length
   */
  public Length contact(Grade grade, Force force) {
    Require.positive("holding force", force.newtons(), "N");
    Grip g = grip(grade);
    return Length.m(g.contact(g.freeToHold(force.newtons())));
  }

  /**
   * How surely this sleeve seals and stays when inflated until it holds a force.
   *
   * @param grade the material
   * @param force the force it is inflated to hold, above 0
   * @param medium the pressure of the medium over that on the other side, above 0
   * @return the margins
   */
  public SealMargins seal(Grade grade, Force force, Pressure medium) {
    Require.positive("holding force", force.newtons(), "N");
    Grip g = grip(grade);
    double free = g.freeToHold(force.newtons());
    Pressure contact = Pressure.pa(g.pressure(free) - g.tube());
    return SealMargins.of(bore, contact, Length.m(g.contact(free)), medium);
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    if (!(load instanceof LoadCase.ToHold hold)) {
      throw new InvalidInputException(
          Part.LOAD_CASE, load.toString(), "a force to hold", "ask with LoadCase.toHold(...)");
    }
    double force = hold.force().newtons();
    Grip g = grip(grade);
    double free = g.freeToHold(force);
    LoadPath path = path(g, free, force, run);
    // pressure and strain of a thicker and a thinner wall, which hold the same force
    double[] sizes =
        LogSlope.ofAll(
            t -> {
              Grip of = grip(grade, t);
              double layer = of.freeToHold(force);
              return new double[] {of.pressure(layer), peak(of, layer)};
            },
            wall.m());
    return new Response(
        path,
        load(g, free, sizes[0]),
        strain(g, force, peak(g, free), sizes[1]),
        build == BuildDirection.AXIS_LYING,
        List.of(TUBE, ENDS),
        reservations(grade, g, free));
  }

  private static double peak(Grip g, double free) {
    return Math.max(g.hoop(), Math.max(g.edgeAtTouch(), g.edge(free)));
  }

  /** From rest to the touch, then to the force; the last state is exactly the one asked for. */
  private static LoadPath path(Grip g, double free, double force, RunControl run) {
    LoadPath.Builder states =
        LoadPath.of(
            2 * STATES + 1, Channel.TRAVEL, Channel.FORCE, Channel.PRESSURE, Channel.STRAIN);
    double need = g.pressure(free);
    double touch = Math.min(g.touch(), need);
    states.add(0.0, 0.0, 0.0, 0.0);
    Termination end = Termination.completed();
    double peak = 0.0;
    for (int i = 1; i <= 2 * STATES; i++) {
      if (i <= STATES) {
        double share = (double) i / STATES;
        peak = Math.max(g.hoop(share), share * g.edgeAtTouch());
        states.add(share * g.gap(), 0.0, Math.min(g.growth(share), need), peak);
      } else {
        double p = touch + (need - touch) * (i - STATES) / STATES;
        double layer = i == 2 * STATES ? free : g.freeAt(p);
        peak = Math.max(peak, Math.max(g.hoop(), g.edge(layer)));
        states.add(g.gap(), i == 2 * STATES ? force : g.force(layer), p, peak);
      }
      run.progress(new Progress(NAME, i / (2.0 * STATES)));
      if (i < 2 * STATES && run.stopRequested()) {
        end = Termination.stopped("state " + i + " of " + 2 * STATES);
        break;
      }
    }
    return states.end(end);
  }

  private static ScaledValue load(Grip g, double free, double slope) {
    double need = g.pressure(free);
    double following = Math.min(g.following(free), need);
    double size = slope * need / following;
    return new ScaledValue(
        Channel.PRESSURE, need, need - following, exponents(1.0, size), LOW, HIGH);
  }

  private static ScaledValue strain(Grip g, double force, double peak, double size) {
    double modulus =
        LogSlope.at(
            m -> {
              Grip of = g.stiffer(m);
              return peak(of, of.freeToHold(force));
            },
            1.0);
    return new ScaledValue(
        Channel.STRAIN, peak, 0.0, exponents(modulus, size), STRAIN_LOW, STRAIN_HIGH);
  }

  private static Exponents exponents(double modulus, double size) {
    return Exponents.none()
        .with(Factor.MODULUS, modulus)
        .with(Factor.SIZE_BIAS, size)
        .with(Factor.SIZE_SCATTER, size);
  }

  private List<Caveat> reservations(Grade grade, Grip g, double free) {
    List<Caveat> caveats = new ArrayList<>();
    check("wall / radius", 0.0, 0.2, wall.m() / (0.5 * outside.m() - 0.5 * wall.m()), caveats);
    check("b L, span in decay lengths", 3.0, Double.POSITIVE_INFINITY, g.lengths(), caveats);
    check("contact / span", 0.2, 1.0, g.contact(free) / span.m(), caveats);
    double edge = Math.max(g.edgeAtTouch(), g.edge(free));
    check("bending strain at the ends", 0.0, 0.1, edge, caveats);
    check("hoop strain", 0.0, 1.0, g.hoop(), caveats);
    grade.law().range().of("law of the grade").check(1.0 + g.hoop()).ifPresent(caveats::add);
    if (edge > g.hoop()) {
      caveats.add(
          Caveat.note(
              NAME,
              "the largest strain is bending at the stiff ends, where a notch raises it further: "
                  + "give the ends a fillet of at least the wall",
              ENDS));
    }
    return caveats;
  }

  private static void check(
      String input, double low, double high, double value, List<Caveat> caveats) {
    new ValidityRange(NAME, input, low, high, "", ENDS).check(value).ifPresent(caveats::add);
  }

  /**
   * This sleeve in the widest and in the narrowest bore, both with the low friction.
   *
   * @return two sleeves, each in an exact bore
   */
  @Override
  public List<Sleeve> serviceExtremes() {
    return List.of(into(bore.worst(bore.widest())), into(bore.worst(bore.narrowest())));
  }

  @Override
  public List<Lever<Sleeve>> levers() {
    return List.of(WALL, OUTSIDE, SPAN);
  }

  /** The volume of the sleeve between its ends; core and ends are not counted. */
  @Override
  public Volume printedVolume() {
    double middle = outside.m() - wall.m();
    return Volume.m3(Math.PI * middle * wall.m() * span.m());
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.AIRTIGHT_WALL, wall);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "sleeve, outside "
        + outside
        + ", span "
        + span
        + ", wall "
        + wall
        + ", into "
        + bore
        + ", "
        + build;
  }
}
