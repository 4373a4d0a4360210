package org.flexwright.examples.brief.input;

import java.util.List;
import org.flexwright.grade.Grade;
import org.flexwright.hardness.HardnessReading;

/**
 * A design brief as read.
 *
 * @param title the title of the report
 * @param scenario what it is about
 * @param reading the hardness of the grade
 * @param grade the grade as printed
 * @param parts the questions, one or more for each part
 */
public record Brief(
    String title,
    String scenario,
    HardnessReading reading,
    Grade grade,
    List<PartQuestion<?>> parts) {

  /** Keeps the list from being changed. */
  public Brief {
    parts = List.copyOf(parts);
  }
}
