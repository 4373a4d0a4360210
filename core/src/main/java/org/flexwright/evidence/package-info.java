/**
 * Where a number comes from and how far to trust it: sources, validity ranges, caveats, estimates
 * with a band that says what it is, and the named uncertainty factors with their covariance.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.evidence;
