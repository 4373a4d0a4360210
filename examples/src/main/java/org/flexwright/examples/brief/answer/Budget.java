package org.flexwright.examples.brief.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.flexwright.decide.Candidate;
import org.flexwright.decide.Question;
import org.flexwright.decide.Target;
import org.flexwright.evidence.Factor;
import org.flexwright.evidence.Factors;
import org.flexwright.grade.Grade;
import org.flexwright.response.Part;
import org.flexwright.response.ScaledValue;

/**
 * Where the band of a load comes from and how much room the limits leave, as ratios to the nominal
 * load in nominal service.
 *
 * @param size the size in words
 * @param shares what each factor and the model itself contribute
 * @param roomDown how far the load may fall, below 1, or 0 if there is no lower limit
 * @param roomUp how far the load may rise, above 1, or infinity if there is no upper limit
 */
public record Budget(String size, List<Share> shares, double roomDown, double roomUp) {

  private static final String MODEL = "the model itself";

  /**
   * One share of the band.
   *
   * @param name the factor, or the model
   * @param low the load at the low end of this share alone
   * @param high the load at its high end
   * @param power the exponent with which the load follows the factor; 1 for the model
   */
  public record Share(String name, double low, double high, double power) {}

  /** Keeps the list from being changed. */
  public Budget {
    shares = List.copyOf(shares);
  }

  static <P extends Part<P>> Optional<Budget> of(
      Question<P> question, Target target, Grade grade, Optional<Candidate> best) {
    if (best.isEmpty()) {
      return Optional.empty();
    }
    P part = question.lever().set(question.part(), best.get().size());
    ScaledValue load = part.respond(grade, target.load()).load();
    Factors factors = grade.factors(part.thinnest().size());
    List<Share> shares = new ArrayList<>();
    for (Factor f : Factor.values()) {
      double power = Math.abs(load.exponents().of(f));
      double end = Math.exp(Factors.COVERAGE * factors.sigma(f) * power);
      if (end > 1.0 + 1e-9) {
        shares.add(new Share(f.toString(), 1.0 / end, end, power));
      }
    }
    shares.add(new Share(MODEL, load.modelLow(), load.modelHigh(), 1.0));
    double down = target.least().isPresent() ? room(target.least().getAsDouble(), load) : 0.0;
    double up =
        target.most().isPresent()
            ? room(target.most().getAsDouble(), load)
            : Double.POSITIVE_INFINITY;
    String size = question.lever() + " " + best.get().size();
    return Optional.of(new Budget(size, shares, down, up));
  }

  private static double room(double limit, ScaledValue load) {
    return Math.max(0.0, (limit - load.offset()) / (load.nominal() - load.offset()));
  }

  /**
   * How well a factor would have to be known at the least, all else being certain: the end of its
   * band. Necessary, not sufficient.
   *
   * @param factor the factor
   * @return the end of the band, or nothing if the factor is known well enough already or no
   *     knowledge of it can help
   */
  public Optional<Double> needed(Factor factor) {
    double room = Math.min(roomUp, 1.0 / roomDown);
    return shares.stream()
        .filter(s -> s.name().equals(factor.toString()) && room > 1.0 && s.high() > room)
        .map(s -> Math.pow(room, 1.0 / s.power()))
        .findFirst();
  }

  /**
   * The budget in one sentence.
   *
   * @return shares and room
   */
  public String sentence() {
    StringBuilder words = new StringBuilder("the band at ").append(size).append(" comes from ");
    for (Share s : shares) {
      boolean even = Math.abs(s.low() * s.high() - 1.0) < 1e-9;
      words.append(s.name()).append(even ? " x/ " : " x " + two(s.low()) + " to ");
      words.append(two(s.high())).append(", ");
    }
    words.append("while the limits leave ");
    if (roomDown > 0.0) {
      words.append("x ").append(two(roomDown)).append(" down").append(roomUp < 1e9 ? " and " : "");
    }
    if (roomUp < 1e9) {
      words.append("x ").append(two(roomUp)).append(" up");
    }
    return words.append(" in nominal service").toString();
  }

  private static String two(double ratio) {
    return String.format(Locale.ROOT, "%.2f", ratio);
  }
}
