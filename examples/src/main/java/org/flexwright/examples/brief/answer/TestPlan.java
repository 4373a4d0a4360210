package org.flexwright.examples.brief.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.flexwright.decide.Advice;
import org.flexwright.decide.Verdict;
import org.flexwright.evidence.Factor;

/**
 * What to test-print first: the tests that the undecided questions call for, the one that helps
 * most parts first.
 *
 * @param items the tests, most useful first
 */
public record TestPlan(List<Item> items) {

  private static final String PART = "load of the part";

  /**
   * One test print.
   *
   * @param name what it teaches
   * @param test what to print and measure
   * @param parts the parts it helps
   * @param decides the questions that it decides, with the figure each needs
   * @param needed the questions that need it, though it is not enough alone
   */
  public record Item(
      String name, String test, Set<String> parts, List<String> decides, List<String> needed) {

    private static Item of(String name, String test) {
      return new Item(name, test, new LinkedHashSet<>(), new ArrayList<>(), new ArrayList<>());
    }
  }

  /** Keeps the list from being changed. */
  public TestPlan {
    items = List.copyOf(items);
  }

  static TestPlan of(List<PartAnswer<?>> parts) {
    Map<String, Item> items = new LinkedHashMap<>();
    for (Factor f : Factor.values()) {
      items.put(f.toString(), Item.of(f.toString(), f.test()));
    }
    items.put(
        PART,
        Item.of(PART, "print the part at the size to test first and measure its load in service"));
    for (PartAnswer<?> part : parts) {
      for (Answer<?> answer : part.answers()) {
        if (answer.verdict() == Verdict.NOT_DECIDABLE) {
          collect(part.asked().name(), answer, items);
        }
      }
    }
    List<Item> ranked = new ArrayList<>(items.values());
    ranked.removeIf(i -> i.parts().isEmpty());
    ranked.sort(
        Comparator.comparing((Item i) -> -i.parts().size())
            .thenComparing(i -> -i.decides().size()));
    return new TestPlan(ranked);
  }

  private static void collect(String part, Answer<?> answer, Map<String, Item> items) {
    String name = part + ", " + answer.target();
    Set<String> found = new LinkedHashSet<>();
    boolean lifeBesides = answer.levers().stream().anyMatch(a -> !a.enough());
    for (Advice<?> advice : answer.levers()) {
      if (advice.kind() == Advice.Kind.KNOWLEDGE && items.containsKey(advice.name())) {
        Item item = Objects.requireNonNull(items.get(advice.name()));
        found.add(advice.name());
        item.parts().add(part);
        String besides = advice.enough() && lifeBesides ? ", with the life test" : "";
        (advice.enough() ? item.decides() : item.needed())
            .add(name + ": " + advice.figure() + besides);
      }
    }
    for (Factor f : Factor.values()) {
      Optional<Double> needed = answer.budget().flatMap(b -> b.needed(f));
      if (needed.isPresent() && found.add(f.toString())) {
        Item item = Objects.requireNonNull(items.get(f.toString()));
        item.parts().add(part);
        item.needed().add(name + String.format(Locale.ROOT, ": x/ %.3f", needed.get()));
      }
    }
    if (!answer.knowledgeDecides() && found.add(PART)) {
      Item item = Objects.requireNonNull(items.get(PART));
      item.parts().add(part);
      item.needed().add(name + ": at " + answer.budget().map(Budget::size).orElse("a size"));
    }
  }
}
