package org.flexwright.lattice.cell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.flexwright.InvalidInputException;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

final class TopologyTest {

  @RegisterExtension
  static final VerificationTable TABLE = VerificationTable.of(TopologyTest.class, "topology.csv");

  static Stream<ReferenceCase> cases() {
    return TABLE.cases();
  }

  private static Topology topology(String name) {
    return CellContractTest.every().stream()
        .filter(c -> c.name().equals(name))
        .findFirst()
        .orElseThrow()
        .topology();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void meetsTheReference(ReferenceCase c) {
    Topology t = topology(c.text("cell"));
    TABLE.check(
        c,
        switch (c.formula()) {
          case "mechanisms, cell held" -> t.mechanisms();
          case "self-stress, cell held" -> t.selfStresses();
          case "rank of the pin-jointed stiffness" -> t.stiffModes();
          default -> throw new IllegalArgumentException(c.formula());
        });
  }

  /** Counts of crystallography; angles by the share of each direction. */
  @ParameterizedTest
  @CsvSource({
    "simple cubic, 1, 3, 6, 6, true",
    "body-centred, 2, 8, 8, 8, false",
    "body-centred with verticals, 2, 9, 8, 10, true",
    "face-centred, 4, 12, 4, 12, true",
    "octet, 4, 24, 12, 12, true",
    "octahedral, 3, 12, 8, 8, true",
    "diamond, 8, 16, 4, 4, false",
    "Kelvin, 12, 24, 4, 4, false",
    "rhombic dodecahedral, 12, 32, 4, 8, false",
    "gyroid net, 8, 12, 3, 3, false",
    "simple cubic and body-centred, 2, 14, 14, 14, true",
    "face- and body-centred, 5, 20, 4, 20, true"
  })
  void countsOfTheCells(
      String name, int nodes, int struts, int least, int most, boolean stretches) {
    Topology t = topology(name);
    assertThat(t.nodes()).isEqualTo(nodes);
    assertThat(t.struts()).hasSize(struts);
    int[] z = IntStream.range(0, nodes).map(t::coordination).sorted().toArray();
    assertThat(z[0]).isEqualTo(least);
    assertThat(z[nodes - 1]).isEqualTo(most);
    assertThat(IntStream.of(z).sum()).isEqualTo(2 * struts);
    assertThat(t.stretchesAlongEdge()).isEqualTo(stretches);
    assertThat(t.maxwell()).isEqualTo(struts - 3 * nodes + 3);
    assertThat(t.toString()).isEqualTo(nodes + " nodes and " + struts + " struts in a cell");
  }

  @Test
  void strutsAreVectors() {
    Topology t = Cells.BODY_CENTRED_WITH_VERTICALS.topology();
    Topology.Strut vertical = t.struts().get(8);
    assertThat(t.vector(vertical)).containsExactly(0.0, 0.0, 1.0);
    assertThat(t.length(t.struts().get(0))).isCloseTo(Math.sqrt(0.75), within(1e-15));
    assertThat(t.node(1)).containsExactly(0.5, 0.5, 0.5);
    t.node(1)[0] = 7.0;
    assertThat(t.node(1)).containsExactly(0.5, 0.5, 0.5);
  }

  /** One straight line of struts: nothing but stretch along it. */
  @Test
  void aSingleLine() {
    Topology t = Topology.ofEighths(0, 0, 0).join(0, 0, 0, 0, 1).build();
    assertThat(t.stiffModes()).isEqualTo(1);
    assertThat(t.stretchesAlongEdge()).isTrue();
    assertThat(t.crowding(1)).isEqualTo(4.0);
  }

  @Test
  void refusesWhatMakesNoSense() {
    assertThatThrownBy(() -> Topology.ofEighths(0, 0)).isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(() -> Topology.ofEighths(0, 0, 8)).hasMessageContaining("0 to 7 eighths");
    assertThatThrownBy(() -> Topology.ofEighths(0, 0, 0).build())
        .hasMessageContaining("struts of a cell");
    assertThatThrownBy(() -> Topology.ofEighths(0, 0, 0).join(0, 0, 0, 0, 0))
        .hasMessageContaining("two places");
    assertThatThrownBy(() -> Topology.ofEighths(0, 0, 0).join(0, 1, 0, 0, 0))
        .hasMessageContaining("node of a strut");
    assertThatThrownBy(() -> Cells.OCTET.topology().crowding(0))
        .hasMessageContaining("cells across");
    assertThatThrownBy(() -> Cells.OCTET.topology().coordination(4))
        .hasMessageContaining("node is 4");
  }
}
