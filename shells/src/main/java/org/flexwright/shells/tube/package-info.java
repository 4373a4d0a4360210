/**
 * Rings and tubes: pressed across or along their axis, bent, opened, pinched, under outer pressure.
 *
 * <p>Buckling and collapse come at once and before the nominal load in an imperfect wall: stay
 * below the low end of the band. Try outer pressure with water, not with gas.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.shells.tube;
