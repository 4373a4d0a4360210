/**
 * Flat walls: strips, hinges, round, ring-shaped and rectangular plates, and membranes, from the
 * first bending to pure stretch.
 *
 * <p><b>Pressurised walls.</b> The cautions for pressurised soft parts of {@link
 * org.flexwright.shells.inflate} hold for every wall here that carries pressure: compressed gas
 * stores energy, so fill with liquid first; prove behind a shield; no computed pressure is a
 * permission to use it.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.shells.wall;
