/** Numbered steps: from a hardness to a narrower answer, each with one number to expect. */
@org.jspecify.annotations.NullMarked
package org.flexwright.examples.steps;
