package org.headhouse.linter.site;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.Objects.requireNonNull;
import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.check.SiteReader;
import org.headhouse.linter.source.Limits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An isolated repeater divides a line galvanically, any other does not (TI SLLA272). */
class GalvanicSectionTest {
  private static Site site(String first, String second) {
    String text =
        new SiteText()
            .unit("120 ohm", "10 m")
            .repeater("One", "120 ohm", "10 m")
            .unit("none", "10 m")
            .repeater("Two", "120 ohm", "10 m")
            .unit("120 ohm", "")
            .toString();
    return read(said(said(text, "One", first), "Two", second));
  }

  private static String said(String text, String repeater, String isolated) {
    return isolated.isEmpty()
        ? text
        : text.replace(
            "repeater: " + repeater + "\n",
            "repeater: " + repeater + "\n    isolated: " + isolated + "\n");
  }

  private static Site read(String text) {
    return requireNonNull(
        new SiteReader(DeviceTypes.NONE, Limits.DEFAULT)
            .read("example.yaml", text.getBytes(UTF_8)));
  }

  /** The items of each section; a repeater that divides is in both. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "''    | ''    | Head House, One, Bay 2, Two, Bay 3",
        "false | false | Head House, One, Bay 2, Two, Bay 3",
        "true  | ''    | Head House, One / One, Bay 2, Two, Bay 3",
        "false | true  | Head House, One, Bay 2, Two / Two, Bay 3",
        "true  | true  | Head House, One / One, Bay 2, Two / Two, Bay 3",
        // Not understood is not known to be isolated.
        "maybe | ''    | Head House, One, Bay 2, Two, Bay 3",
      })
  void onlyAnIsolatedRepeaterDivides(String first, String second, String sections) {
    assertThat(
            site(first, second).galvanicSections().stream()
                .map(
                    section ->
                        section.items().stream()
                            .map(item -> item.name().or("?"))
                            .collect(joining(", ")))
                .collect(joining(" / ")))
        .isEqualTo(sections);
  }

  /** A repeater within a section is connected to it on both sides, one at its end on one. */
  @Test
  void theConnectionsOfARepeater() {
    Site site = site("", "true");
    ChainItem one = site.items().get(1);
    ChainItem two = site.items().get(3);
    GalvanicSection first = site.galvanicSections().get(0);
    GalvanicSection second = site.galvanicSections().get(1);
    assertThat(first.connections(one))
        .containsExactly(one.connection(Side.IN), one.connection(Side.OUT));
    assertThat(first.connections(two)).containsExactly(two.connection(Side.IN));
    assertThat(second.connections(two)).containsExactly(two.connection(Side.OUT));
    assertThat(second.connections(one)).isEmpty();
    assertThat(first.connections(site.items().get(0))).hasSize(1);
  }

  @Test
  void aSectionHasSegments() {
    assertThatThrownBy(() -> new GalvanicSection(List.of()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(read("format: 1\nsite: example\n").galvanicSections()).isEmpty();
  }
}
