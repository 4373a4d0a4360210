package org.flexwright.examples.brief.input;

import org.flexwright.InvalidInputException;
import org.jspecify.annotations.Nullable;

/** A brief that cannot be answered: names the entry by its path and what is allowed there. */
public final class BriefException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String path;

  private BriefException(String path, String problem, String allowed, @Nullable Throwable cause) {
    super(line(path + " " + problem + "; allowed is " + allowed), cause);
    this.path = path;
  }

  /**
   * A refused entry.
   *
   * @param path the entry, such as {@code parts[1].bore.diameter}
   * @param problem what is wrong with it, such as {@code is missing}
   * @param allowed what is allowed there
   * @return the exception to throw
   */
  public static BriefException at(String path, String problem, String allowed) {
    return new BriefException(path, problem, allowed, null);
  }

  /**
   * A value of an entry that the library refused.
   *
   * @param path the entry
   * @param refused what the library says
   * @return the exception to throw
   */
  public static BriefException at(String path, InvalidInputException refused) {
    return new BriefException(path, "is " + refused.value(), refused.allowed(), refused);
  }

  /**
   * Entries that are each well formed but do not go together.
   *
   * @param path the entry, or the object that holds the entries
   * @param refused what the library says
   * @return the exception to throw
   */
  public static BriefException together(String path, InvalidInputException refused) {
    String problem = "gives a " + refused.quantity() + " of " + refused.value();
    return new BriefException(path, problem, refused.allowed(), refused);
  }

  /**
   * Something inside an entry, such as a line of a table, that the library refused.
   *
   * @param path the entry
   * @param refused what the library says
   * @return the exception to throw
   */
  public static BriefException inside(String path, InvalidInputException refused) {
    String advice = refused.advice().isBlank() ? "" : " (" + refused.advice() + ")";
    return new BriefException(
        path,
        "has " + refused.quantity() + ": " + refused.value(),
        refused.allowed() + advice,
        refused);
  }

  /**
   * The entry that is refused.
   *
   * @return its path
   */
  public String path() {
    return path;
  }

  /** One line whatever the brief holds. */
  private static String line(String words) {
    return words.replaceAll("\\p{Cntrl}+", " ").strip();
  }
}
