/**
 * What the whole library shares: the one exception thrown for input that makes no sense.
 *
 * <p>Reading order of the packages: {@code quantity} (values with units), {@code evidence} (how far
 * to trust a number), {@code hardness} and {@code law} (from a Shore reading to a material law),
 * {@code grade} (the material as printed), {@code response} (what every analysis answers with),
 * {@code decide} (the question that a shop really asks).
 */
@org.jspecify.annotations.NullMarked
package org.flexwright;
