package org.headhouse.linter.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.TreeMap;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/**
 * A sentence that ends with somebody else's text has one full stop, whatever the text ends with.
 */
class FullStopsTest {
  /** Nobody saw lost readings, a unit moves no vents, and a gap is accepted. */
  private static final String SITE =
      Papers.PROVED
              .replace("address: 4\n", "address: 5\n")
              .replaceFirst("(?s)vents: roof(?!.*vents: roof)", "vents: none")
              .replaceFirst(
                  "storm-response-seen: .*", "storm-response-seen: [Head House, House 2, House 3]")
              .replaceFirst("stale-response-seen: .*", "stale-response-seen: [House 2]")
          + "suppressions: [{rule: address.gap, justification: Unit 4 is in store}]\n";

  /** The site twice, so that each file has a result that is about both. */
  private static Map<String, String> texts(String site) {
    Map<String, String> texts = new TreeMap<>();
    Papers.of(Papers.YEARLY, site, site)
        .pages()
        .forEach((name, page) -> texts.put(name, text(page)));
    return texts;
  }

  private static String text(Document page) {
    return page.body().text();
  }

  @Test
  void textWithoutAFullStopGetsOne() {
    Map<String, String> texts = texts(SITE);
    assertThat(texts.get("proved-certificate.html"))
        .contains("Reason: Unit 4 is in store. No end is set.")
        .contains("No vents: House 4.")
        .contains("lost readings close the vents at Head House and House 3.");
    assertThat(texts.get("proved-night-card.html"))
        .contains("at Proved Nursery. It hangs at Head House. ");
    assertThat(texts.get("proved.html"))
        .contains("Wired to Head House. All")
        .contains("No vents: House 4.");
    assertThat(texts.values()).noneMatch(text -> text.contains(".."));
  }

  @Test
  void textWithAFullStopGetsNoSecond() {
    Map<String, String> texts =
        texts(SITE.replaceAll("(Head House|House \\d|Proved Nursery|in store)", "$1."));
    assertThat(texts.get("proved-certificate.html"))
        .contains("Reason: Unit 4 is in store. No end is set.")
        .contains("No vents: House 4.")
        .contains("lost readings close the vents at Head House. and House 3.");
    assertThat(texts.get("proved-night-card.html"))
        .contains("at Proved Nursery. It hangs at Head House. ");
    assertThat(texts.values()).noneMatch(text -> text.contains(".."));
  }
}
