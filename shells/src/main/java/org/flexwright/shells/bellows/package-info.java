/**
 * Bellows by closed form: U convolutions and omega (toroidal) convolutions, linear shells of
 * revolution with the factors that the expansion-joint standards use, computed anew for soft walls.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.shells.bellows;
