/**
 * The design brief: reads what the parts of a soft end effector shall do, answers hardness, wall
 * and strut, and writes a report. The grade is given by a hardness ({@code bottling-line.json}), by
 * a datasheet, or by measured curves ({@code bottling-line-curves.json}, invented, with conditions
 * of service).
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.examples.brief;
