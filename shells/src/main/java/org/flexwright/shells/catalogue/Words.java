package org.flexwright.shells.catalogue;

import java.util.Locale;

/** Names of choices as words. */
final class Words {

  private Words() {}

  static String of(Enum<?> choice) {
    return choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
