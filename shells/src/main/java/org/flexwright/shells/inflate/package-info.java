/**
 * Inflated parts: spheres, tubes and flat membranes of any law with their limit pressures, the
 * sleeve that grips a bore, seals of any meridian in a bore, and stems pressed into soft bosses.
 *
 * <p><b>A seal in a bore.</b> {@link Seal} takes a thick-and-thin part of revolution at finite
 * strain from rest to its first touch, into contact and on to the supply pressure, or to the
 * pressure that holds a force or keeps a medium back; {@link Sleeve} is the closed form of the
 * plain one.
 *
 * <pre>{@code
 * var plug = Meridian.from(mm(10), mm(0)).lineTo(mm(10), mm(6)).
 *     lineTo(mm(10), mm(46)).named("sleeve").lineTo(mm(10), mm(52)).
 *     wall("sleeve", mm(0.8)).wall(mm(4));
 * var seal = Seal.of(plug, Bore.of(mm(21)).friction(0.4, 0.1));
 * seal.inflate(grade, kpa(150)).table()
 * seal.toSeal(grade, kpa(20), 1.5, kpa(150), RunControl.none()).last()
 * }</pre>
 *
 * <p>Against continuum finite elements, wall a twelfth of the radius, gap 5 %: an even sleeve
 * touches within 0.1 %, its force on the bore is within 0.2 %, its contact length within an element
 * and the pressure inside the contact within 0.3 %. Where the contact has climbed a wall step from
 * one to five walls the force is 2.5 % low and the contact 7 % short; a caveat says so.
 *
 * <p><b>Cautions for pressurised soft parts.</b> What this package computes is no permission to
 * pressurise anything. Common practice:
 *
 * <ul>
 *   <li>Compressed gas stores energy: a litre at 0.1 MPa gauge holds about 90 J (isentropic), the
 *       same volume of water some thousandths of a joule. Fill with liquid, without trapped air;
 *       the stretched wall itself still stores energy.
 *   <li>Proof-test behind a shield or from a distance, in slow steps, with nobody in line with end
 *       caps, with eye protection. No standard covers printed elastomer parts; a proof pressure of
 *       1.5 times and a burst pressure of at least 3 to 4 times the working pressure is usual.
 *   <li>Stay below 70 to 80 % of any limit pressure, or limit the volume instead of the pressure. A
 *       relief valve and a restrictor belong in the line. Never use oxygen or a flammable gas.
 *   <li>Printed walls have seams and voids; stiffness changes with the first cycles, with fluids
 *       and with time. Check again.
 *   <li>Local codes on pressure equipment and a licensed professional have the last word.
 * </ul>
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.shells.inflate;
