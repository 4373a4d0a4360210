/**
 * What service does to a grade: time under load, temperature, softening by earlier cycles. Each is
 * optional, sourced, and widens the band of the modulus by what it is uncertain itself.
 *
 * <p>Several act in the order given to {@link org.flexwright.grade.Grade#under}: softening first,
 * since its constants belong to the material as tested; then the temperature; then the time, by the
 * relaxation at that temperature.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.condition;
