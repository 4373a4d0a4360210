/**
 * Hardness as an instrument reads it: readings with their tolerance, the durometers with spring and
 * indenter, what they read on a linear elastic material, thick or thin, the comparison chart
 * between scales, and the open interface for a relation from hardness to modulus.
 *
 * <p>The published relations and the choice among them live in {@code hardness.relation}.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.hardness;
