/**
 * How much strain a printed elastomer bears once, and how often it bears less: strain limits and
 * life laws. Generic values are placeholders; they may leave a question open, never condemn a part
 * that a test has shown to live.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.durability;
