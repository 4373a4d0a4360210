package org.flexwright.lattice;

import java.util.List;
import org.flexwright.testing.ModuleRules;

final class LatticeRulesTest extends ModuleRules {
  private static final List<String> ORDER =
      List.of("seed", "cell", "scaling", "homogenize", "pad", "catalogue", "exchange");

  LatticeRulesTest() {
    super("org.flexwright.lattice", "lattice.", ORDER);
  }
}
