/**
 * Domes, caps, conical discs and domed ends: how they give under a finger, when they snap.
 *
 * <p>Guide: {@link org.flexwright.shells.dome.ConicalDisc} for discs that flatten or snap over,
 * {@link org.flexwright.shells.dome.PressedDome} for a sphere under a point load, {@link
 * org.flexwright.shells.dome.SnapCap} for a cap under outer pressure, {@link
 * org.flexwright.shells.dome.DomeEdge} for the edge of a dome, {@link
 * org.flexwright.shells.dome.DomedTube} for a tube with domed ends under inner pressure.
 *
 * <p>Cautions. Snapping parts let go at once: keep fingers and eyes out of their way. Parts under
 * pressure: prove them with liquid first, without trapped air, behind a shield and in slow steps,
 * at 1.5 times the working pressure (common practice); a relief valve and a restrictor belong in
 * the line. Local codes and licensed practice go first.
 */
package org.flexwright.shells.dome;
