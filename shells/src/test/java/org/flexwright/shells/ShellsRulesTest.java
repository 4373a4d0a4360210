package org.flexwright.shells;

import java.util.List;
import org.flexwright.testing.ModuleRules;

final class ShellsRulesTest extends ModuleRules {
  private static final List<String> ORDER =
      List.of(
          "wall",
          "tube",
          "block",
          "dome",
          "bellows",
          "revolution",
          "inflate",
          "solved",
          "surface",
          "catalogue");

  ShellsRulesTest() {
    super("org.flexwright.shells", "shells.", ORDER);
  }
}
