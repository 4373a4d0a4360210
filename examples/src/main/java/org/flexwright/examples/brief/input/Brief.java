package org.flexwright.examples.brief.input;

import java.util.List;
import org.flexwright.grade.Grade;

/**
 * A design brief as read.
 *
 * @param title the title of the report
 * @param scenario what it is about
 * @param basis what the grade rests on
 * @param grade the grade as printed, in service
 * @param parts the questions, one or more for each part
 */
public record Brief(
    String title, String scenario, Basis basis, Grade grade, List<PartQuestion<?>> parts) {

  /** Keeps the list from being changed. */
  public Brief {
    parts = List.copyOf(parts);
  }
}
