package org.headhouse.linter.visit;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.headhouse.linter.RandomCases;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.draft.SiteUpdate;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.report.sheet.Sheets;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.events.CommentEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * The list as the goal report writes it, filled in by chance, saved by another writer of such
 * files, and brought back: the records that another reader of YAML finds have what was filled in,
 * no more and no less, each "no" is a comment that the check reports, and every other byte of the
 * site is as it was.
 */
class VisitRoundTripTest {
  private static final List<String> NAMES =
      List.of("Palms", "=1+2", "Ñandú, north", "NO", "say \"hi\"", "a: b", "x, side out");

  private static final Pattern OPEN =
      Pattern.compile("look: ([^,]*), (.*): not seen on (.{10}) by .*");

  @Test
  void nothingIsLostAndNothingIsMadeUp() {
    double several =
        RandomCases.share(
            200,
            random -> {
              String site = site(random);
              String csv = reported(site, random);
              FilledList list = FilledList.of(csv, random);
              String after = after(list, site);
              Set<String> known = recorded(site);
              Set<String> wanted = new TreeSet<>(known);
              wanted.addAll(proving(list.facts()));
              assertThat(recorded(after)).isEqualTo(wanted);
              assertThat(open(after)).containsExactlyInAnyOrderElementsOf(list.open());
              comments(list, site, after);
              assertThat(after(list, after)).isEqualTo(after);
              // Another visit later goes on from there.
              FilledList more = FilledList.of(csv, random);
              SiteUpdate update = Visits.update(more.bytes(), after.getBytes(UTF_8));
              if (update instanceof SiteUpdate.Made made) {
                String last = new String(made.after(), UTF_8);
                Set<String> open = new TreeSet<>(list.open());
                more.open().stream().filter(one -> !seenSince(one, wanted)).forEach(open::add);
                wanted.addAll(proving(more.facts()));
                assertThat(recorded(last)).isEqualTo(wanted);
                assertThat(open(last)).containsExactlyInAnyOrderElementsOf(open);
              }
              return after.contains("renewed:");
            });
    assertThat(several).isBetween(0.3, 0.95);
  }

  /** A wind limit proves nothing without the vents that shut on that visit. */
  private static Set<String> proving(Set<String> facts) {
    Set<String> proving = new TreeSet<>();
    for (String fact : facts) {
      boolean isLimit = fact.contains(" | storm response: wind limit | ");
      String storm = fact.replaceFirst("wind limit \\| (.*) \\| .*", "vents shut in | $1 | ");
      if (!isLimit || facts.stream().anyMatch(one -> one.startsWith(storm))) {
        proving.add(fact);
      }
    }
    return proving;
  }

  /** Whether a later day has what was not seen, for which nothing is open any more. */
  private static boolean seenSince(String open, Set<String> facts) {
    Matcher said = OPEN.matcher(open);
    assertThat(said.matches()).as(open).isTrue();
    String fact = " | " + said.group(1) + " | " + said.group(2) + " | ";
    return facts.stream()
        .anyMatch(one -> one.contains(fact) && one.substring(0, 10).compareTo(said.group(3)) > 0);
  }

  /** The comments on open points that another reader of YAML finds. */
  private static List<String> open(String text) {
    LoaderOptions withComments = new LoaderOptions();
    withComments.setProcessComments(true);
    List<String> open = new ArrayList<>();
    for (Event event : new Yaml(withComments).parse(new StringReader(text))) {
      if (event instanceof CommentEvent comment && comment.getValue().contains("look:")) {
        open.add(comment.getValue().strip());
      }
    }
    return open;
  }

  private static String after(FilledList list, String site) {
    return new String(Visits.made(list.bytes(), site.getBytes(UTF_8)).after(), UTF_8);
  }

  private static String reported(String site, Random random) {
    return Sheets.of(
            Stream.of(SiteInput.text("elm-row.yaml", site)),
            random.nextBoolean() ? Measure.US : Measure.METRIC,
            Paper.A4)
        .file("elm-row-visit.csv")
        .replaceFirst("^\uFEFF", "");
  }

  /** Each remark is a comment of its own line; those of visits that proved nothing are reported. */
  private static void comments(FilledList list, String site, String after) {
    String added = Added.of(site, after);
    List<String> found =
        added.lines().map(String::strip).filter(line -> line.startsWith("# ")).toList();
    List<String> left =
        Visits.made(list.bytes(), site.getBytes(UTF_8)).remarks().stream()
            .map(SiteUpdate.Remark::text)
            .filter(text -> text.startsWith("Not written: "))
            .toList();
    List<String> loose = new ArrayList<>(found);
    for (String comment : list.comments()) {
      boolean written = loose.removeIf(one -> one.endsWith(comment));
      assertThat(written || left.stream().anyMatch(one -> one.endsWith(comment)))
          .as("%s in\n%s\n%s", comment, added, left)
          .isTrue();
    }
    // What is left are wind limits without the time of the vents.
    assertThat(loose).allMatch(line -> line.matches("# (look: .*|storm response: wind limit, .*)"));
  }

  private static String site(Random random) {
    List<String> names = new ArrayList<>(NAMES.subList(0, 3 + random.nextInt(NAMES.size() - 3)));
    StringBuilder text = new StringBuilder(Visits.SITE.replaceFirst("(?s)  - unit: Seed.*", ""));
    for (int i = 0; i < names.size(); i++) {
      String name = '"' + names.get(i).replace("\"", "\\\"") + '"';
      boolean repeater = i == 1;
      boolean last = i == names.size() - 1;
      String end = last ? "120 ohm" : "none";
      if (repeater) {
        text.append("  - repeater: ").append(name);
        text.append("\n    conductors: [A, B]\n    termination: {in: 120 ohm, out: 120 ohm}\n");
        text.append("    idle-bias: built-in\n    isolated: true\n    unit-load: 1\n");
      } else {
        text.append("  - unit: ").append(name).append("\n    role: follower\n    address: ");
        text.append(i + 2).append("\n    termination: ").append(end).append("\n    vents: ");
        text.append(random.nextBoolean() ? "roof" : "none").append('\n');
      }
      if (!last) {
        text.append("    cable-to-next: 30 m   # measured\n");
      }
    }
    text.append(
        switch (random.nextInt(4)) {
          case 0 -> "";
          case 1 -> "# the end\n";
          case 2 ->
              "commissioning:\n    date: 2025-03-14\n    by: K.A.\n    # by hand\nnotes: |\n  a\n";
          default ->
              """
              commissioning:
                date: 2025-03-14
                by: K.A.
                measured: {pair-resistance: 62 ohm}
                renewed:
                - {date: 2025-05-14, by: K.A., outdoor-readings-seen: [Palms]}
              """;
        });
    String all = random.nextInt(4) == 0 ? text.toString().stripTrailing() : text.toString();
    return random.nextInt(3) == 0 ? all.replace("\n", "\r\n") : all;
  }

  /** What another reader of YAML finds in the records, in the words of the list. */
  private static Set<String> recorded(String text) {
    Set<String> facts = new TreeSet<>();
    Map<?, ?> site =
        (Map<?, ?>) plain(new Yaml(new LoaderOptions()).compose(new StringReader(text)));
    if (!(site.get("commissioning") instanceof Map<?, ?> first)) {
      return facts;
    }
    records(first, facts);
    if (first.get("renewed") instanceof List<?> renewed) {
      renewed.forEach(one -> records((Map<?, ?>) one, facts));
    }
    return facts;
  }

  private static void records(Map<?, ?> record, Set<String> facts) {
    Set<String> known = new HashSet<>(Set.of("date", "by", "reason", "renewed"));
    Map<String, String> lists =
        Map.of(
            "outdoor-readings-seen", "outdoor readings seen",
            "stale-response-seen", "vents shut without readings",
            "storm-response-seen", "storm response: vents shut in");
    lists.forEach(
        (key, what) -> {
          known.add(key);
          for (Object one : list(record.get(key))) {
            if (one instanceof Map<?, ?> storm) {
              String unit = text(storm.get("unit"));
              String time = text(storm.get("closed-in"));
              facts.add(fact(record, what, unit, time.isEmpty() ? "yes" : quantity(time)));
              if (storm.get("limit") != null) {
                String limit = quantity(text(storm.get("limit")));
                facts.add(fact(record, "storm response: wind limit", unit, limit));
              }
            } else {
              facts.add(fact(record, what, text(one), "yes"));
            }
          }
        });
    known.add("measured");
    if (record.get("measured") instanceof Map<?, ?> measured) {
      measured(record, measured, "Propagation", facts);
      for (Object one : list(measured.get("elsewhere"))) {
        Map<?, ?> place = (Map<?, ?>) one;
        String side = place.get("side") == null ? "" : ", side " + place.get("side");
        measured(record, place, text(place.get("at")) + side, facts);
      }
    }
    assertThat(known).containsAll(record.keySet().stream().map(Object::toString).toList());
  }

  private static void measured(
      Map<?, ?> record, Map<?, ?> measured, String place, Set<String> facts) {
    if (measured.get("pair-resistance") != null) {
      String value = quantity(text(measured.get("pair-resistance")));
      facts.add(fact(record, "pair resistance", place, value));
    }
    if (measured.get("idle-voltage") != null) {
      String value = quantity(text(measured.get("idle-voltage")));
      facts.add(fact(record, "idle voltage", place, value));
    }
  }

  private static String quantity(String written) {
    return FilledList.quantity(written);
  }

  private static String fact(Map<?, ?> record, String what, String place, String value) {
    LocalDate day = LocalDate.parse(text(record.get("date")));
    return FilledList.fact(day, text(record.get("by")), what, place, value);
  }

  private static List<?> list(@Nullable Object value) {
    return value instanceof List<?> list ? list : List.of();
  }

  private static String text(@Nullable Object value) {
    return value == null ? "" : value.toString();
  }

  private static Object plain(Node node) {
    if (node instanceof ScalarNode scalar) {
      return scalar.getValue();
    }
    if (node instanceof SequenceNode sequence) {
      return sequence.getValue().stream().map(VisitRoundTripTest::plain).toList();
    }
    Map<Object, Object> content = new LinkedHashMap<>();
    ((MappingNode) node)
        .getValue()
        .forEach(one -> content.put(plain(one.getKeyNode()), plain(one.getValueNode())));
    return content;
  }
}
