/**
 * The few unit-safe values that cross the public door: one SI number inside, made and read by the
 * name of the unit, as in {@code Length.mm(1.2)} and {@code wall.mm()}.
 *
 * <p>There is no general unit algebra, only the handful of products that users write. Kernels work
 * on plain SI doubles.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.quantity;
