/**
 * Shells of revolution at finite strain: parts whose wall changes from thick to thin along its
 * meridian, bent, pushed, pulled, inflated and pressed against rigid bores, plates and balls.
 *
 * <p><b>Kinematics.</b> A point of the mid-surface moves from (R, Z) to (r, z); the director, a
 * straight line across the wall, stands at the angle f. The line of the meridian has the stretch l
 * and the angle a. With c = sqrt(5/6): e = l cos c(a - f), g = l sin c(a - f), k = df/dS. A layer
 * at reference depth d moves to depth y so that each part of the wall keeps its volume exactly, a
 * cubic in y; its stretches are u = (e - y k)/(1 - d K) along the meridian, v = (r - y sin f)/(R -
 * d sin F) around the axis, 1/(u v) across, and the shear is g/(1 - d K). Energy is summed over
 * five Gauss points through the wall, whatever the law. Depth counts towards the axis where the
 * meridian runs up.
 *
 * <p><b>Pressure.</b> Since each half of the wall keeps its volume, the pressure on the wetted face
 * does the work p dV of the volume inside the mid-surface, exactly; equal pressures on both faces
 * do nothing.
 *
 * <p><b>Rigid stretches.</b> Thick ends, cores and stiffening rings can be said to be rigid ({@link
 * Meridian#rigid(String)}): each moves along the axis as one body, its pressed face pushes it, and
 * the walls that meet it are built in. Obstacles do not stop it; a caveat says if one would have
 * to.
 *
 * <p><b>Fillets.</b> Where a thin wall meets a thick one the shell gives the strain of smooth
 * walls; {@link ShellState#junctions} raises it by the notch factor of the fillet and judges it.
 *
 * <p><b>Assumptions and limits.</b> Incompressible, isotropic, elastic; axisymmetric, so that
 * sideways squirm, polygonal dimples and wrinkles are not in the shape (a caveat says where a
 * compressed wall would wrinkle, and where equal parts no longer move alike); obstacles rigid and
 * without friction. Faces of one shell press on each other without friction where they lie two
 * walls or more apart along the meridian; a path says where they first touch. The director stays
 * straight: up to a wall of a tenth of the radius that costs half a per cent on bellows and tubes
 * (0.8 where the wall is 0.8 of a convolution's round), one on sleeves between solid ends, 1.7 on
 * clamped discs and domes, 1.8 on domes under a ball or a plate, three beside a boss of three
 * walls.
 *
 * <p><b>Example.</b> A bellows between rigid ends, pushed by 4 mm and then inflated:
 *
 * <pre>{@code
 * var wave = Meridian.from(mm(12), mm(0)).convolutions(3, mm(6), mm(8)).wall(mm(0.8));
 * var path = RevolvedShell.of(wave).run(law, Drive.travel(mm(4)), Drive.pressure(kpa(5)));
 * path.last().force();
 * }</pre>
 *
 * <p><b>Cautions.</b> A pressurised elastomer stores energy and fails without warning: test behind
 * a shield, with a liquid where possible, by people licensed for it, and follow the local codes for
 * pressure equipment. A computed limit point or strain is no proof test.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.shells.revolution;
