/**
 * Domes: spherical walls pressed by a finger or from outside, conical discs, and cylinders with
 * domed ends.
 *
 * <p>Guide: a dome pressed at its top is a {@link org.flexwright.shells.dome.PressedDome}; a
 * shallow cap with a clamped rim, under pressure from outside, is a {@link
 * org.flexwright.shells.dome.ClampedCap}; a conical disc pressed flat is a {@link
 * org.flexwright.shells.dome.ConicalDisc}; a bottle under pressure is a {@link
 * org.flexwright.shells.dome.DomedCylinder}.
 *
 * <p><b>Cautions for pressurised soft parts.</b> What this package computes is no permission to
 * pressurise anything. Common practice:
 *
 * <ul>
 *   <li>Thin domes give way far below their computed load, since small errors of shape decide; a
 *       part that has snapped through jumps, and what it drives jumps with it.
 *   <li>Compressed gas stores energy. Fill with liquid, without trapped air; proof-test behind a
 *       shield, in slow steps, with nobody in line, with eye protection. No standard covers printed
 *       elastomer parts; a proof pressure of 1.5 times and a burst pressure of at least 3 to 4
 *       times the working pressure is usual.
 *   <li>Printed walls have seams and voids; stiffness changes with the first cycles, with fluids
 *       and with time. Check again.
 *   <li>Local codes on pressure equipment and a licensed professional have the last word.
 * </ul>
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.shells.dome;
