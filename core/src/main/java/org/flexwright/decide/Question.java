package org.flexwright.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.flexwright.InvalidInputException;
import org.flexwright.grade.Grade;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Length;
import org.flexwright.response.Lever;
import org.flexwright.response.Part;

/**
 * A question to a part: which value of a lever meets the targets, prints and survives? It knows no
 * grade; ask it again of a better known one.
 *
 * <p>Immutable and thread-safe.
 *
 * <p>JShell: {@code Question.of(neck).vary(Bellows.WALL, mm(0.3), mm(2)).meet(Target.force().
 * between(newtons(3), newtons(8)).atTravel(mm(6))).answer(grade)}
 *
 * @param <P> the part
 */
public final class Question<P extends Part<P>> {

  /** A lever with the values to try. */
  record Second<P>(Lever<P> lever, List<Length> values) {}

  private final P part;
  private final Optional<Lever<P>> lever;
  private final Length from;
  private final Length to;
  private final List<Target> targets;
  private final Survival survival;
  private final List<Length> sizes;
  private final Optional<Second<P>> second;
  private final double modelShare;

  private Question(
      P part,
      Optional<Lever<P>> lever,
      Length from,
      Length to,
      List<Target> targets,
      Survival survival,
      List<Length> sizes,
      Optional<Second<P>> second,
      double modelShare) {
    this.part = part;
    this.lever = lever;
    this.from = from;
    this.to = to;
    this.targets = List.copyOf(targets);
    this.survival = survival;
    this.sizes = List.copyOf(sizes);
    this.second = second;
    this.modelShare = modelShare;
  }

  /**
   * A question to a part, without lever and target yet.
   *
   * @param part the part
   * @param <P> the part's type
   * @return the question
   */
  public static <P extends Part<P>> Question<P> of(P part) {
    Length none = Length.mm(0.0);
    return new Question<>(
        part,
        Optional.empty(),
        none,
        none,
        List.of(),
        Survival.once(),
        List.of(),
        Optional.empty(),
        1.0);
  }

  /**
   * This question with the dimension to choose.
   *
   * @param of the lever
   * @param least the least value, above 0
   * @param most the greatest value
   * @return the new question
   * @throws org.flexwright.InvalidInputException if the ends are not in order
   */
  public Question<P> vary(Lever<P> of, Length least, Length most) {
    Require.positive("least " + of.name(), least.m(), "m");
    Require.that(
        least.compareTo(most) < 0,
        "range of the " + of.name(),
        least + " to " + most,
        "the least below the greatest",
        "swap the ends");
    return new Question<>(
        part, Optional.of(of), least, most, targets, survival, sizes, second, modelShare);
  }

  /**
   * This question with one more target.
   *
   * @param target the target
   * @return the new question
   */
  public Question<P> meet(Target target) {
    List<Target> more = new ArrayList<>(targets);
    more.add(target);
    return new Question<>(part, lever, from, to, more, survival, sizes, second, modelShare);
  }

  /**
   * This question with another demand on life; by default the load once.
   *
   * @param demand the demand
   * @return the new question
   */
  public Question<P> survive(Survival demand) {
    return new Question<>(part, lever, from, to, targets, demand, sizes, second, modelShare);
  }

  /**
   * This question with the sizes that can be made; by default those of the grade's process.
   *
   * @param realisable the sizes
   * @return the new question
   */
  public Question<P> sizes(List<Length> realisable) {
    realisable.forEach(s -> Require.positive("realisable size", s.m(), "m"));
    List<Length> sorted = realisable.stream().distinct().sorted().toList();
    return new Question<>(part, lever, from, to, targets, survival, sorted, second, modelShare);
  }

  /**
   * This question with a second lever of listed values; each is answered beside the part's own.
   *
   * @param of the second lever
   * @param values the values to try
   * @return the new question
   */
  public Question<P> or(Lever<P> of, List<Length> values) {
    return new Question<>(
        part,
        lever,
        from,
        to,
        targets,
        survival,
        sizes,
        Optional.of(new Second<>(of, List.copyOf(values))),
        modelShare);
  }

  /**
   * This question of another part.
   *
   * @param of the part
   * @return the new question
   */
  public Question<P> about(P of) {
    return new Question<>(of, lever, from, to, targets, survival, sizes, second, modelShare);
  }

  Question<P> targets(List<Target> of) {
    return new Question<>(part, lever, from, to, of, survival, sizes, second, modelShare);
  }

  /**
   * This question with the error of the load model narrowed, as by loading a printed part.
   *
   * @param share what remains of the model's band: 0 for none, 1 for all
   * @return the new question
   * @throws org.flexwright.InvalidInputException if the share is outside 0 to 1
   */
  public Question<P> modelKnown(double share) {
    Require.between("share of the model's band", share, 0.0, 1.0, "");
    return new Question<>(part, lever, from, to, targets, survival, sizes, second, share);
  }

  double modelShare() {
    return modelShare;
  }

  Question<P> single() {
    return new Question<>(
        part, lever, from, to, targets, survival, sizes, Optional.empty(), modelShare);
  }

  /**
   * The answer in a grade.
   *
   * @param grade the grade
   * @return the window of sizes with everything that bounds it
   * @throws org.flexwright.InvalidInputException if lever or target is missing, or the part cannot
   *     be asked for such a target
   */
  public Window<P> answer(Grade grade) {
    Require.that(
        lever.isPresent(), "lever", "missing", "a dimension to choose", "call vary(...) first");
    Require.that(!targets.isEmpty(), "target", "missing", "at least one", "call meet(...) first");
    Optional<P> ready = part.prepared(lever.get(), from, to);
    return ready.isPresent() ? about(ready.get()).windows(grade) : windows(grade);
  }

  private Window<P> windows(Grade grade) {
    refuseWrongLoads(grade);
    List<Window<P>> others = new ArrayList<>();
    List<String> impossible = new ArrayList<>();
    second.ifPresent(
        s -> {
          for (Length value : s.values()) {
            try {
              Question<P> moved = about(s.lever().set(part, value)).single();
              others.add(Scan.run(moved, grade, List.of(), List.of()));
            } catch (InvalidInputException e) {
              impossible.add(s.lever() + " " + value + ": " + e.sentence());
            }
          }
        });
    return Scan.run(single(), grade, others, impossible);
  }

  /** A part that cannot answer such a target at any size says so before sizes are tried. */
  private void refuseWrongLoads(Grade grade) {
    for (Target t : targets) {
      try {
        Limits.judged(t, part.respond(grade, t.load()));
      } catch (InvalidInputException e) {
        boolean anySize = answers(from, grade, t) || answers(to, grade, t);
        if (e.quantity().equals(Part.LOAD_CASE) || !anySize) {
          throw e;
        }
      }
    }
  }

  private boolean answers(Length size, Grade grade, Target target) {
    try {
      lever().set(part, size).respond(grade, target.load());
      return true;
    } catch (InvalidInputException e) {
      return false; // this size cannot exist or cannot bear the load
    }
  }

  /**
   * The part.
   *
   * @return the part
   */
  public P part() {
    return part;
  }

  /**
   * The targets.
   *
   * @return the targets
   */
  public List<Target> targets() {
    return targets;
  }

  /**
   * The demand on life.
   *
   * @return the demand
   */
  public Survival survival() {
    return survival;
  }

  /**
   * The lever that is varied.
   *
   * @return the lever
   * @throws org.flexwright.InvalidInputException if none was named
   */
  public Lever<P> lever() {
    Require.that(
        lever.isPresent(), "lever", "missing", "a dimension to choose", "call vary(...) first");
    return lever.get();
  }

  /**
   * The least value of the lever.
   *
   * @return the value
   */
  public Length from() {
    return from;
  }

  /**
   * The greatest value of the lever.
   *
   * @return the value
   */
  public Length to() {
    return to;
  }

  List<Length> listedSizes() {
    return sizes;
  }

  /** One readable line. */
  @Override
  public String toString() {
    String levers = lever.map(l -> ", " + l + " " + from + " to " + to).orElse("");
    return part + levers + ", " + targets + ", " + survival;
  }
}
