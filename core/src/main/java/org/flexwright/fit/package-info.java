/**
 * Laws from test curves: reading the curves, fitting any law family to any mix of them, and saying
 * what the data can and cannot tell apart.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.fit;
