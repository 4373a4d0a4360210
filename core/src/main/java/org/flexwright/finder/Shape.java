package org.flexwright.finder;

/** What a described thing is. */
public enum Shape {
  /** A round flat plate or membrane. */
  ROUND_PLATE("round plate"),
  /** A rectangular flat plate. */
  RECTANGULAR_PLATE("rectangular plate"),
  /** A flat strip that bends, or a hinge. */
  STRIP("strip"),
  /** A round tube, ring or cylinder. */
  TUBE("tube"),
  /** A sphere or a part of one. */
  DOME("dome"),
  /** A conical disc. */
  CONE("conical disc"),
  /** A bellows. */
  BELLOWS("bellows"),
  /** A solid block, roller or bush. */
  BLOCK("block"),
  /** A lattice of struts. */
  LATTICE("lattice");

  private final String words;

  Shape(String words) {
    this.words = words;
  }

  /** The name in words. */
  @Override
  public String toString() {
    return words;
  }
}
