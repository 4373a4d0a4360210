package org.flexwright.examples.brief.input;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.flexwright.InvalidInputException;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;

/**
 * An object of a brief, read strictly: every entry has a type, a unit and a range, no entry is
 * missing and none is left over. Call {@link #end()} once all entries are read.
 */
final class Entry {

  private static final int LONGEST_QUOTE = 60;

  private final String path;
  private final JsonNode node;
  private final Set<String> known = new LinkedHashSet<>();
  private final List<String> leaves; // paths read so far, shared with the objects inside

  private Entry(String path, JsonNode node, List<String> leaves) {
    this.path = path;
    this.node = node;
    this.leaves = leaves;
  }

  static Entry root(JsonNode node) {
    return object("brief", "", node, new ArrayList<>());
  }

  private static Entry object(String shown, String path, JsonNode node, List<String> leaves) {
    if (!node.isObject()) {
      throw BriefException.at(shown, "is " + quoted(node), "an object in braces");
    }
    return new Entry(path, node, leaves);
  }

  String path() {
    return path;
  }

  String path(String name) {
    return path.isEmpty() ? name : path + "." + name;
  }

  boolean has(String name) {
    known.add(name);
    return node.has(name);
  }

  boolean isText(String name) {
    return has(name) && node.get(name).isTextual();
  }

  Entry child(String name) {
    return object(path(name), path(name), get(name, "an object in braces"), leaves);
  }

  /** The objects of a list, of which there must be one at least. */
  List<Entry> objects(String name) {
    JsonNode list = list(name, "a list of at least one object");
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < list.size(); i++) {
      String at = path(name) + "[" + i + "]";
      entries.add(object(at, at, list.get(i), new ArrayList<>()));
    }
    return entries;
  }

  private JsonNode list(String name, String allowed) {
    JsonNode list = get(name, allowed);
    if (!list.isArray() || list.isEmpty()) {
      String problem = list.isArray() ? "is empty" : "is " + quoted(list);
      throw BriefException.at(path(name), problem, allowed);
    }
    return list;
  }

  private JsonNode get(String name, String allowed) {
    known.add(name);
    JsonNode value = node.get(name);
    if (value == null || value.isNull()) {
      throw BriefException.at(path(name), "is missing", allowed);
    }
    if (value.isValueNode()) {
      leaves.add(path(name));
    }
    return value;
  }

  String text(String name, String allowed) {
    return text(path(name), get(name, allowed), allowed);
  }

  private static String text(String at, JsonNode value, String allowed) {
    if (!value.isTextual() || value.textValue().isBlank()) {
      throw BriefException.at(at, "is " + quoted(value), allowed);
    }
    return value.textValue().strip();
  }

  String oneOf(String name, String... words) {
    String allowed = "one of " + String.join(", ", words);
    String given = text(name, allowed);
    for (String word : words) {
      if (word.equals(given)) {
        return word;
      }
    }
    throw BriefException.at(path(name), "is \"" + given + '"', allowed);
  }

  Length length(String name, Length least, Length most) {
    return quantity(name, "a length such as \"22 mm\"", Length::parse, least, most);
  }

  Force force(String name, Force least, Force most) {
    return quantity(name, "a force such as \"5 N\"", Force::parse, least, most);
  }

  Pressure pressure(String name, Pressure least, Pressure most) {
    return quantity(name, "a gauge pressure such as \"200 kPa\"", Pressure::parse, least, most);
  }

  <Q extends Comparable<Q>> Q quantity(
      String name, String allowed, Function<String, Q> parse, Q least, Q most) {
    return quantity(path(name), get(name, allowed), allowed, parse, least, most);
  }

  private static <Q extends Comparable<Q>> Q quantity(
      String at, JsonNode node, String allowed, Function<String, Q> parse, Q least, Q most) {
    String words = text(at, node, allowed);
    Q value;
    try {
      value = parse.apply(words);
    } catch (InvalidInputException e) {
      throw BriefException.at(at, e);
    }
    if (value.compareTo(least) < 0 || value.compareTo(most) > 0) {
      throw BriefException.at(at, "is \"" + words + '"', least + " to " + most);
    }
    return value;
  }

  /** A list of lengths, each once. */
  List<Length> lengths(String name, Length least, Length most) {
    JsonNode list = list(name, "a list such as [\"0.6 mm\", \"0.9 mm\"]");
    List<Length> values = new ArrayList<>();
    for (int i = 0; i < list.size(); i++) {
      String at = path(name) + "[" + i + "]";
      Length value =
          quantity(at, list.get(i), "a length such as \"0.9 mm\"", Length::parse, least, most);
      if (values.contains(value)) {
        throw BriefException.at(at, "repeats " + value, "each length once");
      }
      values.add(value);
    }
    return values;
  }

  /** A list of pairs of numbers. */
  List<double[]> pairs(String name) {
    JsonNode list = list(name, "a list such as [[1.1, 0.2], [1.5, 0.6]]");
    List<double[]> pairs = new ArrayList<>();
    for (JsonNode pair : list) {
      boolean numbers = pair.size() == 2 && pair.path(0).isNumber() && pair.path(1).isNumber();
      if (!numbers || !Double.isFinite(pair.path(0).doubleValue() + pair.path(1).doubleValue())) {
        String at = path(name) + "[" + pairs.size() + "]";
        throw BriefException.at(at, "is " + quoted(pair), "a pair of numbers such as [1.1, 0.2]");
      }
      pairs.add(new double[] {pair.path(0).doubleValue(), pair.path(1).doubleValue()});
    }
    return pairs;
  }

  /** A number with a word behind it, such as "2 points" or "30 %". */
  double counted(String name, String unit, double least, double most) {
    String allowed = shown(least) + " to " + shown(most) + " " + unit;
    String words = text(name, allowed);
    String number = words.endsWith(unit) ? words.substring(0, words.length() - unit.length()) : "";
    double value;
    try {
      value = Double.parseDouble(number.strip());
    } catch (NumberFormatException e) {
      value = Double.NaN; // refused below, with the words as given
    }
    if (!(value >= least && value <= most)) {
      throw BriefException.at(path(name), "is \"" + words + '"', allowed);
    }
    return value;
  }

  double number(String name, double least, double most) {
    String allowed = "a number from " + shown(least) + " to " + shown(most);
    JsonNode value = get(name, allowed);
    if (!value.isNumber() || !(value.doubleValue() >= least && value.doubleValue() <= most)) {
      throw BriefException.at(path(name), "is " + quoted(value), allowed);
    }
    return value.doubleValue();
  }

  int whole(String name, int least, int most) {
    String allowed = "a whole number from " + least + " to " + most;
    JsonNode value = get(name, allowed);
    if (!value.canConvertToExactIntegral()
        || !(value.doubleValue() >= least && value.doubleValue() <= most)) {
      throw BriefException.at(path(name), "is " + quoted(value), allowed);
    }
    return value.intValue();
  }

  /** Refuses what was never asked for. */
  void end() {
    for (Iterator<String> names = node.fieldNames(); names.hasNext(); ) {
      String name = names.next();
      if (!known.contains(name)) {
        throw BriefException.at(path(name), "is not known", "one of " + String.join(", ", known));
      }
    }
  }

  /** Makes something of what was read; what the library refuses is put down to an entry. */
  <T> T make(Supplier<T> maker) {
    try {
      return maker.get();
    } catch (InvalidInputException e) {
      throw blame(e);
    }
  }

  /** Makes something of one entry; what the library refuses is put down to it. */
  static <T> T make(String path, Supplier<T> maker) {
    try {
      return maker.get();
    } catch (InvalidInputException e) {
      throw BriefException.at(path, e);
    }
  }

  /** The entry whose name stands in the refused quantity, or this object if none does. */
  private BriefException blame(InvalidInputException refused) {
    String quantity = refused.quantity().toLowerCase(Locale.ROOT);
    String best = "";
    int length = 0;
    for (String leaf : leaves) {
      if (!leaf.startsWith(path)) {
        continue;
      }
      String name = leaf.substring(leaf.lastIndexOf('.') + 1);
      String words = name.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
      if (quantity.contains(words) && words.length() > length) {
        best = leaf;
        length = words.length();
      }
    }
    return BriefException.together(best.isEmpty() ? path : best, refused);
  }

  private static String shown(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e6
        ? Integer.toString((int) value)
        : Double.toString(value);
  }

  private static String quoted(JsonNode value) {
    String words = value.toString();
    return words.length() > LONGEST_QUOTE ? words.substring(0, LONGEST_QUOTE) + "..." : words;
  }
}
