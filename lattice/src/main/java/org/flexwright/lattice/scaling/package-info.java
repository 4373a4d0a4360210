/**
 * Relative-density laws of lattices and foams: stiffness, collapse, crushing, densification,
 * energy, struts that buckle, bend out of true or carry a flaw.
 *
 * <p>Guide: {@link org.flexwright.lattice.scaling.ScalingLaws} compares every published and
 * computed law at one density; {@link org.flexwright.lattice.scaling.Buckling} says at which stress
 * a stretch-dominated cell gives way; {@link org.flexwright.lattice.scaling.FoamCurve} draws the
 * classical envelope of plateau and densification, which bending-dominated printed lattices only
 * approach; {@link org.flexwright.lattice.scaling.CompressionCurve} reads the figures of the trade
 * from any curve, computed or measured; {@link org.flexwright.lattice.scaling.StrutFlaws} says what
 * crooked and nicked struts cost.
 *
 * <p>Caution: a lattice pad that carries loads can fail all at once when its struts buckle or tear.
 * Prove a pad under load before anybody relies on it; local codes and licensed practice go first.
 */
package org.flexwright.lattice.scaling;
