/**
 * What service does to a grade: time under load, temperature, softening by earlier cycles. Each is
 * optional, sourced, and widens the band of the modulus by what it is uncertain itself.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.condition;
