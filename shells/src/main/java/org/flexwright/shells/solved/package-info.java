/**
 * Parts of closed form answered by the engine of shells of revolution: the closed form stays as
 * first guess and as check, and the ratio of both is told.
 *
 * <p><b>Cautions.</b> A pressurised elastomer stores energy and fails without warning: test behind
 * a shield, with a liquid where possible, by people licensed for it, and follow the local codes for
 * pressure equipment. A computed pressure or strain is no proof test.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.shells.solved;
