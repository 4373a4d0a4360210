/** Answers a design brief: windows, levers, feel, and what to test-print first. */
@org.jspecify.annotations.NullMarked
package org.flexwright.examples.brief.answer;
