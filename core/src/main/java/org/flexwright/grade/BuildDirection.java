package org.flexwright.grade;

/** How a part stands in the printer; its layers are horizontal. */
public enum BuildDirection {
  /** The part's axis (or the load direction of a pad) points up. */
  AXIS_UP("axis up"),
  /** The part's axis lies in the plane of the layers. */
  AXIS_LYING("axis lying");

  private final String words;

  BuildDirection(String words) {
    this.words = words;
  }

  /** The name in words. */
  @Override
  public String toString() {
    return words;
  }
}
