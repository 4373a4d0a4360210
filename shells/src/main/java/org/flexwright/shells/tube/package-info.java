/** Rings and tubes pressed across their axis. */
@org.jspecify.annotations.NullMarked
package org.flexwright.shells.tube;
