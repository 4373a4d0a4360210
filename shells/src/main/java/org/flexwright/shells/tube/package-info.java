/** Rings and tubes: pressed across or along their axis, bent, opened, under outer pressure. */
@org.jspecify.annotations.NullMarked
package org.flexwright.shells.tube;
