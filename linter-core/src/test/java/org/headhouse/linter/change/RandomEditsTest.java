package org.headhouse.linter.change;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.headhouse.linter.JsonText;
import org.headhouse.linter.RandomCases;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What no edit changes, no played plan has been tried on: each key of the schema has its edit. */
class RandomEditsTest {
  private static final String SCHEMA = "/org/headhouse/linter/schema/site.schema.json";

  /** The format of the file, what several items have at once, and what is no state of the line. */
  private static final Set<String> NOT_EDITED =
      Set.of(
          "site format",
          "site defaults",
          "site commissioning",
          "site as-found",
          "site suppressions");

  /** Keys that have keys of their own. */
  private static final Set<String> WITH_KEYS =
      Set.of("site weather-station", "site line", "site chain", "site supervision", "site site");

  private final Set<String> edited = new TreeSet<>();

  @Tag("long")
  @Test
  void eachKeyIsEdited() throws IOException {
    RandomCases.each(
        1500,
        random -> {
          RandomSite before = RandomSite.of(random, 7);
          RandomSite after = RandomEdits.edited(before, random);
          compare("site", before.site, after.site);
          compare("weather-station", before.station, after.station);
          compare("line", before.line, after.line);
          compare("supervision", before.supervision, after.supervision);
          items(before.chain, after.chain);
        });
    Set<String> wanted = keys();
    wanted.removeAll(NOT_EDITED);
    wanted.removeAll(WITH_KEYS);
    assertThat(wanted).hasSizeGreaterThan(70);
    assertThat(edited).containsAll(wanted);
  }

  private void items(List<Map<String, String>> before, List<Map<String, String>> after) {
    Map<String, Map<String, String>> named = new HashMap<>();
    before.forEach(item -> named.put(RandomSite.name(item), item));
    for (Map<String, String> item : after) {
      String kind = item.getOrDefault("kind", "");
      Map<String, String> was = named.get(RandomSite.name(item));
      if (was == null) {
        edited.add(kind + " " + kind);
      } else if (kind.equals(was.get("kind"))) {
        compare(kind, was, item);
      }
    }
  }

  private void compare(String of, Map<String, String> before, Map<String, String> after) {
    Set<String> keys = new HashSet<>(before.keySet());
    keys.addAll(after.keySet());
    keys.removeIf(key -> Objects.equals(before.get(key), after.get(key)));
    keys.forEach(key -> edited.add(of + " " + key));
  }

  private static Set<String> keys() throws IOException {
    Set<String> keys = new TreeSet<>();
    try (InputStream in = RandomEditsTest.class.getResourceAsStream(SCHEMA)) {
      JsonNode schema = JsonText.read(new String(in.readAllBytes(), UTF_8));
      add("site", schema, keys);
      JsonNode parts = schema.get("$defs");
      for (String part : List.of("weather-station", "line", "supervision")) {
        add(part, parts.get(part), keys);
      }
      for (String kind : List.of("unit", "repeater", "equipment", "converter")) {
        add(kind, parts.get(kind + "-item"), keys);
      }
    }
    return keys;
  }

  private static void add(String of, JsonNode part, Set<String> keys) {
    JsonText.keys(part.get("properties")).forEach(key -> keys.add(of + " " + key));
  }
}
