/** First seed of the build. */
package org.flexwright.shells.seed;
