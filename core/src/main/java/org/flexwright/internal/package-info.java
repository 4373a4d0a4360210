/**
 * Shared by the library's own modules only: input checks and locale-proof text. Exported to nobody
 * else.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.internal;
