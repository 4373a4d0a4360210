package org.flexwright.examples.brief.report;

import java.util.ArrayDeque;
import java.util.Deque;

/** Writes well-formed markup, for HTML and the SVG inside it. Not thread-safe. */
final class Markup {

  private final StringBuilder text = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /** Opens an element; attributes are name, value, name, value. */
  Markup open(String tag, String... attributes) {
    start(tag, attributes).append('>');
    open.push(tag);
    return this;
  }

  /** An element with text alone inside. */
  Markup leaf(String tag, String words, String... attributes) {
    start(tag, attributes).append('>').append(escape(words));
    text.append("</").append(tag).append(">\n");
    return this;
  }

  /** An element without content. */
  Markup empty(String tag, String... attributes) {
    start(tag, attributes).append(" />\n");
    return this;
  }

  Markup words(String words) {
    text.append(escape(words));
    return this;
  }

  Markup close() {
    text.append("</").append(open.pop()).append(">\n");
    return this;
  }

  private StringBuilder start(String tag, String... attributes) {
    text.append('<').append(tag);
    for (int i = 0; i + 1 < attributes.length; i += 2) {
      text.append(' ').append(attributes[i]).append("=\"").append(escape(attributes[i + 1]));
      text.append('"');
    }
    return text;
  }

  private static String escape(String words) {
    return words
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replaceAll(
            "[\\x00-\\x08\\x0b\\x0c\\x0e-\\x1f\\x7f-\\x9f\\ud800-\\udfff\\ufffe\\uffff]", "?");
  }

  /** The text so far; all elements must be closed. */
  @Override
  public String toString() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("not closed: " + open);
    }
    return text.toString();
  }
}
