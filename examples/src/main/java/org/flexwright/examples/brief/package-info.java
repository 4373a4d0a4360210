/**
 * The design brief: reads what the parts of a soft end effector shall do, answers hardness, wall
 * and strut, and writes a report.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.examples.brief;
