package org.flexwright.finder;

/** A length by which a thing is described. */
public enum Dimension {
  /** Thickness of the wall. */
  WALL("wall"),
  /** Radius of the middle of the wall; of a plate, of its rim. */
  RADIUS("radius"),
  /** Inner radius of a plate with a hole, of a disc or of a bush. */
  INNER_RADIUS("inner radius"),
  /** Length along the axis or the span. */
  LENGTH("length"),
  /** Length across. */
  WIDTH("width"),
  /** Height from face to face, or of a cone or cap. */
  HEIGHT("height"),
  /** Depth of a convolution. */
  DEPTH("depth"),
  /** Length of one convolution along the axis. */
  PITCH("pitch"),
  /** Radius of the loaded patch, of the finger or of the indenter. */
  PATCH("patch radius"),
  /** Diameter of the bore or of the stem that a part meets. */
  BORE("bore"),
  /** Diameter of the struts. */
  STRUT("strut diameter"),
  /** Edge of one cell. */
  CELL("cell edge"),
  /** Travel of the loaded face, or growth of the radius. */
  TRAVEL("travel");

  private final String words;

  Dimension(String words) {
    this.words = words;
  }

  /** The name in words. */
  @Override
  public String toString() {
    return words;
  }
}
