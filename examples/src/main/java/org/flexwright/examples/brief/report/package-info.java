/** Writes the answer to a design brief: console, HTML with plots, CSV and JSON. */
@org.jspecify.annotations.NullMarked
package org.flexwright.examples.brief.report;
