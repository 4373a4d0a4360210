package org.flexwright;

/**
 * Thrown at once when an input makes no sense (negative thickness, hardness off its scale, not a
 * number). The message names the quantity, the value with its unit, what is allowed and what to do.
 *
 * <p>Physics outside the range of a formula is not an invalid input: it is answered, with a caveat
 * on the result.
 */
public final class InvalidInputException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  /** The name of the refused input. */
  private final String quantity;

  /** The value as given, with its unit. */
  private final String value;

  /** What would have been allowed. */
  private final String allowed;

  /** What to do, or an empty text. */
  private final String advice;

  /**
   * An input that is refused.
   *
   * @param quantity the name of the input
   * @param value the value as given, with its unit
   * @param allowed what is allowed
   * @param advice what to do, a short sentence, or an empty text
   */
  public InvalidInputException(String quantity, String value, String allowed, String advice) {
    super(sentence(quantity, value, allowed, advice));
    this.quantity = quantity;
    this.value = value;
    this.allowed = allowed;
    this.advice = advice;
  }

  private static String sentence(String quantity, String value, String allowed, String advice) {
    String tail = advice.isEmpty() ? "" : "; " + advice;
    return quantity + " is " + value + ", allowed is " + allowed + tail;
  }

  /**
   * The message, never null.
   *
   * @return one sentence with quantity, value, what is allowed and what to do
   */
  public String sentence() {
    return sentence(quantity, value, allowed, advice);
  }

  /**
   * The name of the refused input.
   *
   * @return the name
   */
  public String quantity() {
    return quantity;
  }

  /**
   * The refused value, as given, with its unit.
   *
   * @return the value as text
   */
  public String value() {
    return value;
  }

  /**
   * What would have been allowed.
   *
   * @return the allowed range as text
   */
  public String allowed() {
    return allowed;
  }

  /**
   * What to do, or an empty text.
   *
   * @return the advice
   */
  public String advice() {
    return advice;
  }
}
