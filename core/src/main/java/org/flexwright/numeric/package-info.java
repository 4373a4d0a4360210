/**
 * Linear algebra for the library's own solvers: what a general-purpose library does not have or has
 * without the structure that makes it fast. Exported to the library's modules only.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.numeric;
