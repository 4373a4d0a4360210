package org.flexwright.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;

/** The tests run under a locale and a time zone that show up careless code. */
final class LocaleTest {

  @Test
  void testsRunUnderAwkwardDefaults() {
    assertThat(Locale.getDefault()).isEqualTo(Locale.forLanguageTag("tr-TR"));
    assertThat(TimeZone.getDefault().getID()).isEqualTo("Asia/Kolkata");
  }
}
