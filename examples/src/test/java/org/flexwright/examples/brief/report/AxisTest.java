package org.flexwright.examples.brief.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Axes, markup, tables and words of the report. */
final class AxisTest {

  @Test
  void linearAxisHasRoundTicks() {
    Axis axis = Axis.over(1.0, 9.0, 0.0, 100.0);
    assertThat(axis.log()).isFalse();
    assertThat(axis.ticks(5)).containsExactly(0.0, 2.0, 4.0, 6.0, 8.0);
    assertThat(axis.at(axis.low())).isEqualTo(0.0, within(1e-9));
    assertThat(axis.at(axis.high())).isEqualTo(100.0, within(1e-9));
  }

  @Test
  void wideRangeIsLogarithmic() {
    Axis axis = Axis.over(1.0, 100.0, 0.0, 100.0);
    assertThat(axis.log()).isTrue();
    assertThat(axis.ticks(6)).containsExactly(1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0);
    assertThat(axis.at(10.0)).isEqualTo(50.0, within(1e-9));
  }

  @Test
  void markupEscapesAndRefusesOpenElements() {
    Markup markup = new Markup().open("p", "title", "a\"b").words("1 < 2 & \u0001").close();
    assertThat(markup.toString()).isEqualTo("<p title=\"a&quot;b\">1 &lt; 2 &amp; ?</p>\n");
    assertThatThrownBy(() -> new Markup().open("p").toString())
        .isInstanceOf(IllegalStateException.class);
  }

  @Test
  void tablesQuoteWhatNeedsIt() {
    String line = new Csv().line(java.util.List.of("a,b", "say \"x\"", "plain")).toString();
    assertThat(line).isEqualTo("\"a,b\",\"say \"\"x\"\"\",plain\r\n");
  }

  @Test
  void consoleWordsArePlain() {
    assertThat(Say.ascii("caf\u00e9 \u4e2d")).isEqualTo("cafe ?");
    assertThat(Say.number(1234.5678, 4)).isEqualTo("1235");
  }
}
