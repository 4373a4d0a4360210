/**
 * Strain-energy laws of incompressible elastomers in principal stretches, the homogeneous
 * deformations that tests are made of and any biaxial one, {@link org.flexwright.law.Stability},
 * and {@link org.flexwright.law.LawCheck}, the contract that any law must meet, a user's own
 * included.
 *
 * <p>Symbols: l1, l2, l3 principal stretches with l1 l2 l3 = 1, W strain energy per reference
 * volume (Pa), P nominal stress (force per reference area, Pa), s true stress (Pa), e Hencky
 * (logarithmic) strain.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.law;
