/**
 * Published relations from hardness to modulus, each with source and range, and the choice among
 * them: from a reading to a modulus with a band, and back to the hardness that a part feels like.
 *
 * <p>Reading order: {@link org.flexwright.hardness.relation.Gent1958}, {@link
 * org.flexwright.hardness.relation.ModulusFromHardness}, {@link
 * org.flexwright.hardness.relation.HardnessFromModulus}.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.hardness.relation;
