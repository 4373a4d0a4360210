/**
 * The formula finder: which analyses apply to a wall, a block or a cell that is described by what
 * is known about it, how far each of them is out of its range there, and what it says.
 */
package org.flexwright.finder;
