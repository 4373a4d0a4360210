package org.flexwright.grade;

import org.flexwright.internal.Require;

/**
 * The one strain that stands for a bent part when its secant modulus is chosen: the energy-weighted
 * mean of the equivalent Hencky strain, which closed forms pass to {@link Grade#secantModulus}.
 *
 * <p>Formula: e_w = int |e|^3 dV / int e^2 dV over the part. For strains that vary as products this
 * is the peak strain times one share for each direction of variation. A bending strain is positive
 * on one face and negative on the other; to second order its logarithm has the same mean size, so
 * the linear bending strain is taken as the Hencky strain.
 *
 * <p>Symbols: e peak strain of the surface (dimensionless). Range: bending strains to about 0.1;
 * beyond, the shares still follow but the linear strain field does not. Source: derived, the rule
 * is ours; {@link org.flexwright.law.HenckyCurve} fixes what "equivalent" means.
 *
 * <p>JShell: {@code WorkingStrain.bending(0.08).linearMoment().planeStrain().value()}
 *
 * @param value the strain, not negative
 */
public record WorkingStrain(double value) {

  /** Share through a rectangular section in bending, int y^3 / int y^2 over half of it. */
  public static final double RECTANGLE = 0.75;

  /** Share through a round section in bending: 32 / (15 pi). */
  public static final double CIRCLE = 32.0 / (15.0 * Math.PI);

  /** Share along a strip whose moment varies linearly through zero or from zero. */
  public static final double LINEAR_MOMENT = 0.75;

  /** Equivalent strain of plane strain over its largest strain, at constant volume. */
  public static final double PLANE_STRAIN = 2.0 / Math.sqrt(3.0);

  /**
   * Refuses a strain below zero.
   *
   * @param value the strain, not negative
   */
  public WorkingStrain {
    Require.notNegative("strain", value, "");
  }

  /**
   * A flat wall bent to a strain of its surface.
   *
   * @param surface the largest strain of the surface, not negative
   * @return the working strain of that section
   */
  public static WorkingStrain bending(double surface) {
    return new WorkingStrain(RECTANGLE * surface);
  }

  /**
   * A round strut bent to a strain of its surface.
   *
   * @param surface the largest strain of the surface, not negative
   * @return the working strain of that section
   */
  public static WorkingStrain roundBending(double surface) {
    return new WorkingStrain(CIRCLE * surface);
  }

  /**
   * This strain where the moment varies linearly along the part: cantilevers, guided and built-in
   * strips, struts between joints.
   *
   * @return the working strain of the whole strip
   */
  public WorkingStrain linearMoment() {
    return new WorkingStrain(LINEAR_MOMENT * value);
  }

  /**
   * This strain where the part cannot change its width.
   *
   * @return the equivalent strain
   */
  public WorkingStrain planeStrain() {
    return new WorkingStrain(PLANE_STRAIN * value);
  }

  /**
   * This strain times a share of another variation.
   *
   * @param share the share, not negative
   * @return the new strain
   */
  public WorkingStrain times(double share) {
    return new WorkingStrain(share * value);
  }
}
