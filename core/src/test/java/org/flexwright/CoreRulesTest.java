package org.flexwright;

import java.util.List;
import org.flexwright.testing.ModuleRules;

final class CoreRulesTest extends ModuleRules {
  private static final List<String> ORDER =
      List.of(
          "org.flexwright",
          "internal",
          "quantity",
          "run",
          "evidence",
          "numeric",
          "hardness.contact",
          "hardness",
          "hardness.relation",
          "law",
          "law.classical",
          "fit",
          "condition",
          "grade",
          "durability",
          "response",
          "finder",
          "decide",
          "sampling",
          "calibrate",
          "exchange");

  CoreRulesTest() {
    super("org.flexwright.core", "", ORDER);
  }
}
