package org.headhouse.linter.fix;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.headhouse.linter.Checks;
import org.headhouse.linter.FixedSite;
import org.headhouse.linter.Fixing;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Replacement;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.Utf8;
import org.headhouse.linter.yaml.Comment;
import org.headhouse.linter.yaml.Document;
import org.headhouse.linter.yaml.YamlReader;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What holds of every fix, tried on random faulty sites in random styles. */
@Tag("long")
class MendingPropertiesTest {
  private static final int SITES = 1500;

  /** One for all: each loads the schema once. */
  private final SiteLinter linter = Checks.linter();

  private FixedSite fix(byte[] bytes, FixKind kind) {
    return Fixing.outcome(linter, new SiteInput("example.yaml", most -> bytes.clone()), kind);
  }

  private List<Result> check(byte[] bytes) {
    return linter.check(Stream.of(new SiteInput("example.yaml", most -> bytes.clone()))).results();
  }

  @ParameterizedTest
  @EnumSource
  void mendsWithoutHarm(FixKind kind) {
    Map<String, Integer> mended = new TreeMap<>();
    for (long seed = 0; seed < SITES; seed++) {
      byte[] bytes = new FaultySite(seed).bytes();
      FixedSite fixed = fix(bytes, kind);
      String shown =
          "seed "
              + seed
              + "\n"
              + new String(bytes, UTF_8)
              + "\n-> "
              + new String(fixed.after(), UTF_8);
      assertThat(fixed.before()).as(shown).isEqualTo(bytes);
      assertThat(replayed(bytes, fixed.applied())).as(shown).isEqualTo(fixed.after());
      assertThat(fix(fixed.after(), kind).after()).as(shown).isEqualTo(fixed.after());
      Document before = read(bytes);
      Document after = read(fixed.after());
      assertThat(before.root() == null).as(shown).isEqualTo(after.root() == null);
      assertThat(comments(after)).as(shown).isEqualTo(comments(before));
      assertThat(fresh(check(bytes), check(fixed.after()))).as(shown).isEmpty();
      assertThat(fixed.remaining()).as(shown).isEqualTo(check(fixed.after()));
      fixed.applied().forEach(one -> mended.merge(one.result().rule(), 1, Integer::sum));
    }
    assertThat(mended.keySet()).containsAll(commonlyMended(kind));
    assertThat(mended.values().stream().mapToInt(Integer::intValue).sum())
        .isGreaterThan(SITES + SITES / 2);
  }

  private static List<String> commonlyMended(FixKind kind) {
    List<String> rules =
        new ArrayList<>(
            List.of(
                "address.duplicate",
                "address.gap",
                "address.order",
                "address.reserved",
                "conductors.ground",
                "conductors.pair-missing",
                "head.address",
                "name.unreadable",
                "outdoor.head-not-local",
                "outdoor.not-from-head",
                "outdoor.unsafe-fallback",
                "reference.unknown",
                "schema.bad-value",
                "schema.unknown-key",
                "schema.wrong-type",
                "serial.framing",
                "supervision.zone-duplicate",
                "supervision.zone-missing",
                "supervision.zone-unknown",
                "termination.mid-line",
                "termination.undeclared",
                "yaml.ambiguous-scalar"));
    if (kind == FixKind.PROPOSED) {
      rules.addAll(
          List.of(
              "bias.out-of-range",
              "bias.weak",
              "cable.too-thin",
              "cable.unshielded",
              "module.absent",
              "outdoor.not-measured",
              "run.unprotected",
              "station.not-at-head",
              "termination.mismatch",
              "termination.missing-at-end"));
    }
    return rules;
  }

  private static Document read(byte[] bytes) {
    Utf8.Decoded decoded = Utf8.decode("example.yaml", bytes);
    return new YamlReader(Limits.DEFAULT).read(((Utf8.Decoded.Text) decoded).text());
  }

  private static List<String> comments(Document document) {
    return document.comments().stream().map(Comment::text).toList();
  }

  /** The results that are there now and were not before, by rule, unit and last key. */
  private static Set<String> fresh(List<Result> before, List<Result> after) {
    Map<String, Integer> old = counted(before);
    Set<String> fresh = new TreeSet<>();
    counted(after)
        .forEach(
            (result, number) -> {
              if (number > old.getOrDefault(result, 0)) {
                fresh.add(result);
              }
            });
    return fresh;
  }

  private static Map<String, Integer> counted(List<Result> results) {
    Map<String, Integer> counts = new HashMap<>();
    for (Result result : results) {
      if (!result.suppressed()) {
        String last = result.logical().substring(result.logical().lastIndexOf('/') + 1);
        String unit = result.unit() == null ? "" : result.unit().strip();
        String place = last.matches("[0-9]+") ? "an item" : last.strip();
        counts.merge(result.rule() + " " + unit + " " + place, 1, Integer::sum);
      }
    }
    return counts;
  }

  /**
   * The rounds once more, in the plainest way: lines cut at their ends, columns counted in code
   * points. All that is not in a replaced region comes from the original.
   */
  private static byte[] replayed(byte[] bytes, List<Mending.Applied> applied) {
    String text = new String(bytes, UTF_8);
    Map<Integer, List<Mending.Applied>> rounds =
        applied.stream()
            .collect(
                Collectors.groupingBy(Mending.Applied::step, TreeMap::new, Collectors.toList()));
    for (List<Mending.Applied> round : rounds.values()) {
      List<Replacement> all =
          new ArrayList<>(
              round.stream().flatMap(one -> one.fix().replacements().stream()).toList());
      all.sort((one, other) -> other.region().compareTo(one.region()));
      for (Replacement one : all) {
        int from = index(text, one.region().startLine(), one.region().startColumn());
        int to = index(text, one.region().endLine(), one.region().endColumn());
        text = text.substring(0, from) + one.text() + text.substring(to);
      }
    }
    return text.getBytes(UTF_8);
  }

  private static int index(String text, int line, int column) {
    int at = text.startsWith("\uFEFF") ? 1 : 0;
    for (int i = 1; i < line; i++) {
      at = text.indexOf('\n', at) + 1;
    }
    return text.offsetByCodePoints(at, column - 1);
  }
}
