package org.flexwright.condition;

import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.law.StrainEnergy;

/**
 * A condition of service under which a grade is another one: held for a day, at 60 degrees, after a
 * first cycle.
 *
 * <p>Open to users. {@link org.flexwright.grade.Grade#under} applies it to the law, widens the
 * modulus factor by its band and keeps its caveats and sources, so that every response of the grade
 * carries them. Implementations are immutable and thread-safe.
 */
public interface Condition {

  /**
   * The law under this condition.
   *
   * @param law the law of the grade without it
   * @return the law
   */
  StrainEnergy apply(StrainEnergy law);

  /**
   * How far the stress may be off by this condition alone: 1.2 means from 1/1.2 to 1.2 of it, about
   * 95 % of cases.
   *
   * @return the end of the band, at least 1
   */
  double band();

  /**
   * What must be said about it.
   *
   * @return the caveats, those of its ranges among them
   */
  List<Caveat> caveats();

  /**
   * Where its figures come from.
   *
   * @return the sources, at least one
   */
  List<Source> sources();
}
