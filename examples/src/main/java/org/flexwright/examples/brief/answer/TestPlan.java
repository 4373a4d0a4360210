package org.flexwright.examples.brief.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.flexwright.decide.Advice;
import org.flexwright.decide.Verdict;
import org.flexwright.evidence.Factor;

/**
 * What to test-print first: the knowledge levers of the undecided questions, the one that decides
 * most of them first.
 *
 * @param items the tests, most useful first
 */
public record TestPlan(List<Item> items) {

  /**
   * One test print.
   *
   * @param factor what it teaches
   * @param decides the questions that it takes part in deciding, with the figure each needs
   * @param rank sum of its places in the lists of levers, for ties
   */
  public record Item(Factor factor, List<String> decides, int rank) {

    /** Keeps the list from being changed. */
    public Item {
      decides = List.copyOf(decides);
    }
  }

  /** Keeps the list from being changed. */
  public TestPlan {
    items = List.copyOf(items);
  }

  static TestPlan of(List<PartAnswer<?>> parts) {
    Map<Factor, List<String>> decides = new EnumMap<>(Factor.class);
    Map<Factor, Integer> rank = new EnumMap<>(Factor.class);
    for (PartAnswer<?> part : parts) {
      for (Answer<?> answer : part.answers()) {
        if (answer.verdict() == Verdict.NOT_DECIDABLE) {
          collect(part.asked().name() + ", " + answer.target(), answer, decides, rank);
        }
      }
    }
    List<Item> items = new ArrayList<>();
    decides.forEach((factor, names) -> items.add(new Item(factor, names, rank.get(factor))));
    items.sort(
        Comparator.comparing((Item i) -> -i.decides().size()).thenComparing(Item::rank));
    return new TestPlan(items);
  }

  private static void collect(
      String name,
      Answer<?> answer,
      Map<Factor, List<String>> decides,
      Map<Factor, Integer> rank) {
    int place = 0;
    for (Advice<?> advice : answer.levers()) {
      place++;
      for (Factor factor : Factor.values()) {
        if (advice.kind() == Advice.Kind.KNOWLEDGE && advice.name().equals(factor.toString())) {
          String line = name + " (needs " + advice.figure() + ")";
          decides.computeIfAbsent(factor, f -> new ArrayList<>()).add(line);
          rank.merge(factor, place, Integer::sum);
        }
      }
    }
  }
}
