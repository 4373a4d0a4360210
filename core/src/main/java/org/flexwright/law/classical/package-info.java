/**
 * The strain-energy laws of the textbooks, each with the range in which it may be used, and their
 * families, whose constants a fit varies and a file names.
 *
 * <p>For positive stretches no law gives NaN: where it has no value (at locking and beyond, or past
 * the numbers a computer holds) energy and derivatives are infinite.
 *
 * <p>Symbols as in {@link org.flexwright.law}; I1 = sum l_i^2, I2 = sum over pairs l_i^2 l_j^2.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.law.classical;
