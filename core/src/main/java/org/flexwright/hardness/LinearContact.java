package org.flexwright.hardness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.hardness.contact.Ball;
import org.flexwright.hardness.contact.BondedLayer;
import org.flexwright.hardness.contact.Indenter;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;

/**
 * What a durometer reads on a linear elastic material, and back: the spring of the instrument
 * balances its indenter in a half-space, or in a layer bonded to a rigid base.
 *
 * <p>E = (1 - nu^2) F(H) / (2 A(d(H)) k), with k = 1 on a half-space.
 *
 * <p>E Young's modulus; H reading in points; F spring force; d depth; A area of the {@link
 * Indenter}; nu Poisson's ratio, 0 to 0.5; k factor of the {@link BondedLayer}.
 *
 * <p>Range: the readings that the standard keeps, {@link Durometer#range}. The strain under an
 * indenter is large, so the modulus is a convention that holds for rubber within some ten per cent
 * in the middle of scale A and is a bracket elsewhere. Scales A, D and IRHD have fitted relations,
 * which come first; for the others this is what there is. Soft platinum silicones measure 0.3 to
 * 0.5 of the modulus read on scale A.
 *
 * <p>Caveats: {@link #check}.
 *
 * <p>Source: derived from I. N. Sneddon, Int. J. Eng. Sci. 3 (1965) 47 for the indenters of the
 * standard; the same construction as A. W. Mix and A. J. Giacomin, J. Test. Eval. 39 (2011) 696,
 * whose printed coefficients were not seen.
 *
 * <pre>{@code
 * var oo = LinearContact.of(Durometer.SHORE_OO);
 * oo.modulus(50)                                            // 242.4 kPa
 * oo.points(Pressure.kpa(300))                              // 54.75
 * LinearContact.of(Durometer.SHORE_A).on(Length.mm(2)).points(Pressure.mpa(4.398))   // 66.79
 * }</pre>
 *
 * @param durometer the instrument
 * @param indenter its indenter as it is, new or worn
 * @param poisson Poisson's ratio, 0 to 0.5
 * @param layer the layer that is measured, nothing for a thick piece
 */
public record LinearContact(
    Durometer durometer, Indenter indenter, double poisson, Optional<BondedLayer> layer) {

  private static final Source SOURCE =
      Source.derived(
          "linear contact, I. N. Sneddon, Int. J. Eng. Sci. 3 (1965) 47, with spring and indenter of"
              + " the durometer");
  private static final ValidityRange BALL =
      new ValidityRange(
          "ball taken as a paraboloid",
          "radius of contact over radius of the ball",
          0.0,
          0.5,
          "",
          Source.derived("the exact sphere takes 2.8 per cent less force at a half"));

  /**
   * Refuses a Poisson's ratio out of its bounds.
   *
   * @param durometer the instrument
   * @param indenter its indenter as it is, new or worn
   * @param poisson Poisson's ratio, 0 to 0.5
   * @param layer the layer that is measured, nothing for a thick piece
   * @throws org.flexwright.InvalidInputException unless Poisson's ratio is 0 to 0.5
   */
  public LinearContact {
    Require.between("Poisson's ratio", poisson, 0.0, 0.5, "");
  }

  /**
   * A new instrument on a thick, incompressible piece.
   *
   * @param durometer the instrument
   * @return the contact
   */
  public static LinearContact of(Durometer durometer) {
    return new LinearContact(durometer, durometer.indenter(), 0.5, Optional.empty());
  }

  /**
   * This contact with another indenter, such as a worn one or a simpler shape.
   *
   * @param indenter the indenter
   * @return the new contact
   */
  public LinearContact indenter(Indenter indenter) {
    return new LinearContact(durometer, indenter, poisson, layer);
  }

  /**
   * This contact with another Poisson's ratio.
   *
   * @param poisson Poisson's ratio, 0 to 0.5
   * @return the new contact
   * @throws org.flexwright.InvalidInputException unless Poisson's ratio is 0 to 0.5
   */
  public LinearContact poisson(double poisson) {
    return new LinearContact(durometer, indenter, poisson, layer);
  }

  /**
   * This contact on a thin piece that cannot slip on a rigid base. On a loose piece the effect is
   * smaller, so that the two cases bracket.
   *
   * @param thickness the thickness, 0.001 mm to 1 m
   * @return the new contact
   * @throws org.flexwright.InvalidInputException unless the thickness is 0.001 mm to 1 m
   */
  public LinearContact on(Length thickness) {
    return new LinearContact(durometer, indenter, poisson, Optional.of(new BondedLayer(thickness)));
  }

  /**
   * Young's modulus from a reading.
   *
   * @param points the reading, strictly between 0 and 100 points
   * @return the modulus
   * @throws org.flexwright.InvalidInputException if the reading is off the scale, or the layer is
   *     thinner than a twentieth of the radius of contact
   */
  public Pressure modulus(double points) {
    Scale.points(durometer.scale(), points);
    Length depth = durometer.indentation(points);
    Pressure half = indenter.modulus(depth, durometer.springForce(points), poisson);
    return layer.isEmpty() ? half : half.times(1.0 / layer.get().factor(indenter, depth, poisson));
  }

  /**
   * The reading on a material of known modulus, solved to 1e-10 points.
   *
   * @param modulus Young's modulus
   * @return the reading in points, strictly between 0 and 100
   * @throws org.flexwright.InvalidInputException if no reading of the scale has this modulus, or
   *     the layer is thinner than a twentieth of the radius of contact
   */
  public double points(Pressure modulus) {
    return Scale.solve("a " + durometer.scale() + " durometer", this::modulus, modulus);
  }

  /**
   * The radius of contact at a reading, on a half-space.
   *
   * @param points the reading, strictly between 0 and 100 points
   * @return the radius
   * @throws org.flexwright.InvalidInputException if the reading is off the scale
   */
  public Length contactRadius(double points) {
    Scale.points(durometer.scale(), points);
    return indenter.contactRadius(durometer.indentation(points));
  }

  /**
   * The caveats at a reading: one that the standard discards, a ball that sinks too far for its
   * law, a piece thinner than the standard asks, a layer strained too much.
   *
   * @param points the reading, strictly between 0 and 100 points
   * @return the caveats, none if all is in range
   * @throws org.flexwright.InvalidInputException if the reading is off the scale
   */
  public List<Caveat> check(double points) {
    Length a = contactRadius(points);
    List<Caveat> caveats = new ArrayList<>();
    durometer.range().check(points).ifPresent(caveats::add);
    if (indenter instanceof Ball ball) {
      BALL.check(a.ratioTo(ball.radius())).ifPresent(caveats::add);
    }
    if (layer.isPresent()) {
      BondedLayer sheet = layer.get();
      ValidityRange thick =
          new ValidityRange(
              durometer.scale() + " durometer",
              "thickness of the piece",
              durometer.leastThickness().mm(),
              Double.POSITIVE_INFINITY,
              "mm",
              durometer.source());
      thick.check(sheet.thickness().mm()).ifPresent(caveats::add);
      sheet.check(durometer.indentation(points)).ifPresent(caveats::add);
    }
    return List.copyOf(caveats);
  }

  /**
   * Where the law comes from.
   *
   * @return the source
   */
  public Source source() {
    return SOURCE;
  }

  /** One readable line. */
  @Override
  public String toString() {
    String piece = layer.map(l -> ", " + l).orElse("");
    return durometer.scale() + " durometer with a " + indenter + piece;
  }
}
