/**
 * Inflated parts: spheres, tubes and flat membranes of any law with their limit pressures, the
 * sleeve that grips a bore, and stems pressed into soft bosses.
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
