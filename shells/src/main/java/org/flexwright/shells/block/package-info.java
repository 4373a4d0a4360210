/**
 * Solid rubber: blocks between bonded or slippery faces, round sections between plates, bushes, and
 * fingers pressed into a layer. Closed forms with the factors that say where they hold.
 *
 * <p>Guide: a pad or mount is a {@link org.flexwright.shells.block.BondedBlock}; an O-ring, cord or
 * roller is a {@link org.flexwright.shells.block.RoundSection}; a pivot or mount of two rings with
 * rubber between is a {@link org.flexwright.shells.block.RubberBush}; a ball or pin pressed into a
 * layer is a {@link org.flexwright.shells.block.Indentation}.
 *
 * <p><b>Cautions.</b> What this package computes is no permission to load or seal anything.
 *
 * <ul>
 *   <li>Strains are unbounded at sharp bonded edges and under sharp punches; the figures are those
 *       a little way off. Round every edge, and expect tearing to start there.
 *   <li>Rubber creeps and takes a set: forces fall with time and with the first cycles. A seal
 *       needs force left at the end of its life, at its lowest temperature.
 *   <li>Printed blocks have voids: they are softer in bulk than solid rubber, and high shape
 *       factors are the most uncertain.
 *   <li>Behind a seal stands a pressure: proof-test with liquid, in slow steps, behind a shield.
 * </ul>
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.shells.block;
