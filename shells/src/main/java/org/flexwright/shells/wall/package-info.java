/**
 * The simplest walls: strips, round, ring-shaped and rectangular plates, and membranes, from the
 * first bending to pure stretch. A wall that holds air can burst: fill with water first, keep
 * clear.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.shells.wall;
