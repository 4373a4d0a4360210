package org.flexwright.decide;

import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Mass;
import org.flexwright.quantity.Volume;
import org.flexwright.response.Channel;

/**
 * One realisable size with all that a person weighs.
 *
 * @param size the size
 * @param load the load by the first target: force at the travel, or pressure that holds
 * @param strain the largest tensile strain
 * @param meetsNominally whether every demand is met with all factors at their median
 * @param verdict the verdict over the whole band and every extreme of service
 * @param probability share of cases that meet, in nominal service; life by a placeholder law is not
 *     counted
 * @param leastProbability the same at the worst extreme of service
 * @param binds what stands nearest to failing
 * @param life what is said about the life
 * @param printedVolume the volume of material
 * @param mass the mass
 * @param caveats the reservations of this size
 */
public record Candidate(
    Length size,
    Banded load,
    Banded strain,
    boolean meetsNominally,
    Verdict verdict,
    double probability,
    double leastProbability,
    String binds,
    String life,
    Volume printedVolume,
    Mass mass,
    List<Caveat> caveats) {

  /**
   * A value with its whole band, in SI.
   *
   * @param channel what it is
   * @param low the low end
   * @param nominal the value at factors of 1
   * @param high the high end
   */
  public record Banded(Channel channel, double low, double nominal, double high) {

    /** One readable line. */
    @Override
    public String toString() {
      return channel.show(nominal) + " (" + channel.show(low) + " to " + channel.show(high) + ")";
    }
  }

  /**
   * Keeps the lists from being changed.
   *
   * @param size the size
   * @param load the load by the first target: force at the travel, or pressure that holds
   * @param strain the largest tensile strain
   * @param meetsNominally whether every demand is met with all factors at their median
   * @param verdict the verdict over the whole band and every extreme of service
   * @param probability share of cases that meet, in nominal service; life by a placeholder law is
   *     not counted
   * @param leastProbability the same at the worst extreme of service
   * @param binds what stands nearest to failing
   * @param life what is said about the life
   * @param printedVolume the volume of material
   * @param mass the mass
   * @param caveats the reservations of this size
   */
  public Candidate {
    caveats = List.copyOf(caveats);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return size
        + ": "
        + load
        + ", "
        + verdict
        + ", P(meets) "
        + Text.percent(probability)
        + ", binds: "
        + binds;
  }
}
