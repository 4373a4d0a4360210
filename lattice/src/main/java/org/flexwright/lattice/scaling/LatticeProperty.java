package org.flexwright.lattice.scaling;

/** What a scaling law gives, and over which property of the solid. */
public enum LatticeProperty {
  /** Young's modulus, along a cell edge if the cell is not isotropic; over that of the solid. */
  YOUNG("Young's modulus"),
  /** Shear modulus along the cell edges, over Young's modulus of the solid. */
  SHEAR("shear modulus"),
  /** Bulk modulus, over Young's modulus of the solid. */
  BULK("bulk modulus"),
  /** Young's modulus along a space diagonal, over that of the solid. */
  YOUNG_DIAGONAL("Young's modulus along a space diagonal"),
  /** Stress at which struts buckle, over Young's modulus of the solid. */
  ELASTIC_COLLAPSE("elastic collapse"),
  /** Stress at which struts yield, over the yield stress of the solid. */
  PLASTIC_COLLAPSE("plastic collapse"),
  /** Stress at which struts break, over the modulus of rupture of the solid. */
  CRUSHING("crushing"),
  /** Stress at which the peak strain of a strut reaches a limit, over that limit times E. */
  STRAIN_LIMIT("stress at a strain limit of the struts");

  private final String words;

  LatticeProperty(String words) {
    this.words = words;
  }

  /** The name in words. */
  @Override
  public String toString() {
    return words;
  }
}
