/**
 * Finite pads of lattice between two flat plates.
 *
 * <p>A pad is not a piece of endless lattice: faces that grip hold its sides back and can make it
 * twenty times as stiff; free sides make it softer. The answers here come from frames of whole
 * pads.
 *
 * <p>These are estimates for the choice of what to print and test. A pad that carries a load whose
 * loss can hurt people or damage goods must be tested before use; local codes and the judgement of
 * a licensed engineer come before any number given here.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.lattice.pad;
