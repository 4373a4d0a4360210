/**
 * The simplest walls: strips and plates in bending, and the spring that every closed form of a bent
 * wall is made of.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.shells.wall;
