package org.flexwright.examples.brief;

/** Reads a design brief and answers it. */
public final class DesignBrief {
  private DesignBrief() {}

  /**
   * Answers the brief in the given file.
   *
   * @param args the brief's file
   */
  public static void main(String[] args) {
    System.out.println("brief: " + String.join(" ", args));
  }
}
