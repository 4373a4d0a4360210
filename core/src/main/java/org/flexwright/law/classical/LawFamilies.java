package org.flexwright.law.classical;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.flexwright.internal.Require;
import org.flexwright.law.LawFamily;
import org.flexwright.law.StrainEnergy;
import org.flexwright.quantity.Pressure;

/**
 * The families of the classical laws, with the bounds that keep a law stable.
 *
 * <p>JShell: {@code LawFamilies.ALL}
 */
public final class LawFamilies {

  /** {@link NeoHookean}. */
  public static final LawFamily NEO_HOOKEAN =
      new Family<>(
          "neo-Hookean",
          List.of(LawFamily.Constant.stress("mu", 0.0, 0.5, 2.0)),
          NeoHookean.class,
          v -> NeoHookean.of(Pressure.pa(v[0])),
          law -> new double[] {law.shear().pa()});

  /** {@link MooneyRivlin}. */
  public static final LawFamily MOONEY_RIVLIN =
      new Family<>(
          "Mooney-Rivlin",
          List.of(
              LawFamily.Constant.stress("C10", 0.0, 0.1, 0.6),
              LawFamily.Constant.stress("C01", 0.0, 0.0, 0.4)),
          MooneyRivlin.class,
          v -> MooneyRivlin.of(Pressure.pa(v[0]), Pressure.pa(v[1])),
          law -> new double[] {law.c10().pa(), law.c01().pa()});

  /** All families. */
  public static final List<LawFamily> ALL = List.of(NEO_HOOKEAN, MOONEY_RIVLIN);

  private LawFamilies() {}

  private record Family<L extends StrainEnergy>(
      String name,
      List<Constant> constants,
      Class<L> type,
      Function<double[], L> from,
      Function<L, double[]> to)
      implements LawFamily {

    @Override
    public StrainEnergy law(double[] values) {
      Require.atLeast("constants of " + name, values.length, constants.size());
      return from.apply(values);
    }

    @Override
    public Optional<double[]> values(StrainEnergy law) {
      return type.isInstance(law) ? Optional.of(to.apply(type.cast(law))) : Optional.empty();
    }

    /** The name and the constants. */
    @Override
    public String toString() {
      return name + constants.stream().map(Constant::name).toList();
    }
  }
}
