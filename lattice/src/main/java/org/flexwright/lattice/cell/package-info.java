/**
 * Unit cells of struts: how dense, how stiff and how strained they are for a given slenderness of
 * their struts.
 *
 * <p>Everything here is a ratio: slenderness x = d/L (strut diameter over strut length from node to
 * node), moduli over Young's modulus of the solid, strains over the macroscopic strain. Sizes,
 * units and material enter with {@code org.flexwright.lattice.pad}.
 *
 * <p>These are laws of the endless lattice. The modulus of an endless lattice is no answer for a
 * pad between plates, which can be twenty times as stiff.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.lattice.cell;
