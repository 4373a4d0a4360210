/** Reads a design brief, entry by entry, and turns it into questions. */
@org.jspecify.annotations.NullMarked
package org.flexwright.examples.brief.input;
