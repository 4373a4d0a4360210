package org.flexwright.hardness.relation;

import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.hardness.Durometer;
import org.flexwright.hardness.HardnessReading;
import org.flexwright.hardness.HardnessRelation;
import org.flexwright.hardness.LinearContact;
import org.flexwright.hardness.ShoreA;
import org.flexwright.hardness.ShoreD;
import org.flexwright.hardness.contact.Ball;
import org.flexwright.hardness.contact.Cone;
import org.flexwright.hardness.contact.FlatPunch;
import org.flexwright.hardness.contact.Indenter;
import org.flexwright.hardness.contact.RoundedCone;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;

/**
 * Young's modulus from Shore A or Shore D by linear contact of the indenter, see {@link
 * LinearContact}.
 *
 * <p>Sharp cone on D: E = 31.27 MPa s / (1 - s)^2, s = reading / 100. Rounded cone on D: the tip of
 * 0.1 mm of the standard. Truncated cone on A: the true shape of that indenter, where {@link
 * Gent1958} and {@link KunzStuder2006} take a cylinder.
 *
 * <p>Range 20 to 90 Shore D, where the scale is read; 30 to 90 Shore A, where the contact stays on
 * the cone. The strain under a cone is large, so linear theory is a convention: on D the sharp cone
 * brackets from above what the rounded one brackets from below (0.69 of it at 45, 0.49 at 75 Shore
 * D). Between 60 and 90 Shore A the rounded cone on D and the truncated one on A close the chart
 * within 20 per cent of modulus, which the sharp cone does not. Above 60 Shore D moulded
 * thermoplastic polyurethane is several times stiffer than any hardness relation says.
 *
 * <p>Source: derived from I. N. Sneddon, Int. J. Eng. Sci. 3 (1965) 47.
 *
 * <pre>{@code
 * ContactRelation.sharpConeOnD().modulus(46)                       // 49.33 MPa
 * ContactRelation.roundedConeOnD().modulus(46)                     // 33.76 MPa
 * ContactRelation.roundedConeOnD(Length.mm(0.13)).modulus(46)      // read with a worn tip
 * ContactRelation.truncatedConeOnA().modulus(60)                   // 4.398 MPa
 * }</pre>
 *
 * @param contact the instrument with its indenter
 */
public record ContactRelation(LinearContact contact) implements HardnessRelation {

  /** Below, the contact has left the cone of type A and reaches its rod. */
  private static final double ROD_BEGINS = 30.0;

  /**
   * Refuses an instrument whose scale no relation reads.
   *
   * @param contact the instrument with its indenter
   * @throws org.flexwright.InvalidInputException unless the instrument is of type A or D
   */
  public ContactRelation {
    Require.that(
        contact.durometer() == Durometer.SHORE_A || contact.durometer() == Durometer.SHORE_D,
        "durometer of a contact relation",
        contact.durometer().scale(),
        "Shore A or Shore D",
        "for other scales ask LinearContact");
  }

  /**
   * The indenter of type A on Shore A.
   *
   * @return the relation, 30 to 90 Shore A
   */
  public static ContactRelation truncatedConeOnA() {
    return new ContactRelation(LinearContact.of(Durometer.SHORE_A));
  }

  /**
   * A sharp cone of the angle of type D on Shore D.
   *
   * @return the relation, 20 to 90 Shore D
   */
  public static ContactRelation sharpConeOnD() {
    return onD(new Cone(tip().halfAngle()));
  }

  /**
   * The indenter of type D on Shore D, tip radius 0.1 mm.
   *
   * @return the relation, 20 to 90 Shore D
   */
  public static ContactRelation roundedConeOnD() {
    return onD(tip());
  }

  /**
   * The indenter of type D with a tip of known radius, such as a worn one.
   *
   * @param tipRadius the radius of the tip, above 0 and at most 1 mm
   * @return the relation, 20 to 90 Shore D
   * @throws org.flexwright.InvalidInputException unless the radius is above 0 and at most 1 mm
   */
  public static ContactRelation roundedConeOnD(Length tipRadius) {
    Require.positive("tip radius of the type D indenter", tipRadius.mm(), "mm");
    Require.between("tip radius of the type D indenter", tipRadius.mm(), 0.0, 1.0, "mm");
    return onD(new RoundedCone(tipRadius, tip().halfAngle()));
  }

  private static RoundedCone tip() {
    return (RoundedCone) Durometer.SHORE_D.indenter();
  }

  private static ContactRelation onD(Indenter indenter) {
    return new ContactRelation(LinearContact.of(Durometer.SHORE_D).indenter(indenter));
  }

  @Override
  public String name() {
    Indenter shape = contact.indenter();
    if (shape instanceof Cone) {
      return "Sneddon cone";
    }
    if (shape instanceof RoundedCone) {
      return "Radiused cone";
    }
    if (shape instanceof FlatPunch) {
      return "Flat punch";
    }
    return shape instanceof Ball ? "Ball" : "Truncated cone";
  }

  @Override
  public Class<? extends HardnessReading> scale() {
    return onA() ? ShoreA.class : ShoreD.class;
  }

  private boolean onA() {
    return contact.durometer() == Durometer.SHORE_A;
  }

  @Override
  public ValidityRange range() {
    ValidityRange kept = contact.durometer().range();
    double low = onA() ? ROD_BEGINS : kept.low();
    return new ValidityRange(name(), kept.input(), low, kept.high(), "points", kept.source());
  }

  @Override
  public Source source() {
    return contact.source();
  }

  /**
   * {@inheritDoc}
   *
   * @throws org.flexwright.InvalidInputException if the reading is off the scale
   */
  @Override
  public Pressure modulus(double points) {
    return contact.modulus(points);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return HardnessRelation.describe(this) + ", " + contact.indenter();
  }
}
