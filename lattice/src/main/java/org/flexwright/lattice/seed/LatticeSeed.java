package org.flexwright.lattice.seed;

import org.flexwright.seed.Seed;

/**
 * A seed of this module.
 *
 * @param seed the seed it grew from
 */
public record LatticeSeed(Seed seed) {}
