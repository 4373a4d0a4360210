/**
 * An elastomer grade as printed: one stress curve and its law, density, strain limits in and across
 * layers, the printing process with the sizes it can make, and the uncertainty factors.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.grade;
