/** First seed of the build. */
package org.flexwright.lattice.seed;
