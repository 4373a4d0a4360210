package org.flexwright.shells.inflate;

import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;

/**
 * How surely a round plug seals a bore against a medium and stays in it.
 *
 * <p>Formula: leak margin pc/pm; blow-out force pi Rb^2 pm, blow-out margin mu pc 2 pi Rb Lc over
 * it. Symbols: pc contact pressure, pm pressure of the medium over that on the other side (Pa), Rb
 * bore radius, Lc straight contact length (m), mu friction. A seal holds while pc is above pm;
 * usual margins are 1.2 to 1.5 against leaking and 2 or more against blowing out. Source: common
 * practice.
 *
 * <p>JShell: {@code SealMargins.of(Bore.of(mm(22)), kpa(80), mm(30), kpa(10))}
 *
 * @param leak contact pressure over the pressure of the medium
 * @param holding the force that friction holds
 * @param blowOut the force with which the medium pushes
 */
public record SealMargins(double leak, Force holding, Force blowOut) {

  /** The leak margin that is usual: the upper end of 1.2 to 1.5. */
  public static final double USUAL_LEAK = 1.5;

  /** The blow-out margin that is usual. */
  public static final double USUAL_BLOW_OUT = 2.0;

  /**
   * The margins of a contact.
   *
   * @param bore the bore, with its usual friction
   * @param contact the contact pressure, not negative
   * @param length the straight contact length, not negative
   * @param medium the pressure of the medium over that on the other side, above 0
   * @return the margins
   * @throws org.flexwright.InvalidInputException if a pressure or the length makes no sense
   */
  public static SealMargins of(Bore bore, Pressure contact, Length length, Pressure medium) {
    Require.notNegative("contact pressure", contact.pa(), "Pa");
    Require.notNegative("contact length", length.m(), "m");
    Require.positive("pressure of the medium", medium.pa(), "Pa");
    double radius = 0.5 * bore.diameter().m();
    double area = Math.PI * radius * radius;
    double wall = 2.0 * Math.PI * radius * length.m();
    return new SealMargins(
        contact.ratioTo(medium),
        Force.newtons(bore.friction() * contact.pa() * wall),
        Force.newtons(medium.pa() * area));
  }

  /**
   * The blow-out margin.
   *
   * @return holding force over blow-out force
   */
  public double hold() {
    return holding.ratioTo(blowOut);
  }

  /**
   * Whether both margins are at least the usual ones.
   *
   * @return true if the seal is as sure as is usual
   */
  public boolean usual() {
    return leak >= USUAL_LEAK && hold() >= USUAL_BLOW_OUT;
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "leak margin "
        + Text.number(leak, 3)
        + " (usual 1.2 to 1.5), blow-out margin "
        + Text.number(hold(), 3)
        + " (usual 2): holds "
        + holding
        + " against "
        + blowOut;
  }
}
