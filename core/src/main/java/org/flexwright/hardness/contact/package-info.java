/**
 * Indenters and linear contact: force, depth and radius of contact of a rigid, smooth indenter on a
 * half-space and on a layer bonded to a rigid base.
 *
 * <p>Reading order: {@link org.flexwright.hardness.contact.Indenter}, {@link
 * org.flexwright.hardness.contact.BondedLayer}.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.hardness.contact;
