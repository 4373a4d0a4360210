/**
 * What every analysis answers with: a load path, how the result follows the uncertainty factors,
 * and the part itself with the dimensions that are free to choose.
 *
 * <p>Open to users: implement {@link org.flexwright.response.Part} for a part of your own and every
 * question of {@code org.flexwright.decide} can be asked of it.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.response;
