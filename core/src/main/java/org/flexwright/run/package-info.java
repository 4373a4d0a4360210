/**
 * Long work lets its caller watch and stop it: progress, stop request, the executor and the memory
 * limit that the caller lends, and how a run ended.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.run;
