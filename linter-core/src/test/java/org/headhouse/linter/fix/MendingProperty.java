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
import java.util.random.RandomGenerator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.headhouse.linter.Fixing;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.result.AppliedFix;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.FixedSite;
import org.headhouse.linter.result.Replacement;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.Utf8;
import org.headhouse.linter.yaml.Comment;
import org.headhouse.linter.yaml.Document;
import org.headhouse.linter.yaml.YamlReader;
import org.jspecify.annotations.Nullable;

/** What holds of every fix. */
public final class MendingProperty {
  private static final Pattern LINE_END = Pattern.compile("\r\n|[\n\r]");

  private final SiteLinter linter;

  public MendingProperty(SiteLinter linter) {
    this.linter = linter;
  }

  /** A random faulty site in a random style. */
  public static byte[] faultySite(RandomGenerator random) {
    return new FaultySite(random).bytes();
  }

  /** Mends bytes, and looks at what came of it. */
  public FixedSite tryWith(byte[] bytes, FixKind kind) {
    FixedSite fixed = fix(bytes, kind);
    String shown = new String(bytes, UTF_8) + "\n-> " + new String(fixed.after(), UTF_8);
    assertThat(fixed.before()).as(shown).isEqualTo(bytes);
    assertThat(replayed(bytes, fixed.applied())).as(shown).isEqualTo(fixed.after());
    assertThat(fix(fixed.after(), kind).after()).as(shown).isEqualTo(fixed.after());
    Document before = read(bytes);
    Document after = read(fixed.after());
    assertThat(isReadable(before)).as(shown).isEqualTo(isReadable(after));
    assertThat(comments(after)).as(shown).isEqualTo(comments(before));
    assertThat(fresh(check(bytes), check(fixed.after()))).as(shown).isEmpty();
    assertThat(fixed.remaining()).as(shown).isEqualTo(check(fixed.after()));
    return fixed;
  }

  private FixedSite fix(byte[] bytes, FixKind kind) {
    return Fixing.outcome(linter, new SiteInput("example.yaml", most -> bytes.clone()), kind);
  }

  private List<Result> check(byte[] bytes) {
    return linter.check(Stream.of(new SiteInput("example.yaml", most -> bytes.clone()))).results();
  }

  private static @Nullable Document read(byte[] bytes) {
    return Utf8.decode("example.yaml", bytes) instanceof Utf8.Decoded.Text decoded
        ? new YamlReader(Limits.DEFAULT).read(decoded.text())
        : null;
  }

  private static boolean isReadable(@Nullable Document document) {
    return document != null && document.root() != null;
  }

  private static List<String> comments(@Nullable Document document) {
    return document == null ? List.of() : document.comments().stream().map(Comment::text).toList();
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
  private static byte[] replayed(byte[] bytes, List<AppliedFix> applied) {
    if (applied.isEmpty()) {
      return bytes;
    }
    String text = new String(bytes, UTF_8);
    Map<Integer, List<AppliedFix>> rounds =
        applied.stream()
            .collect(Collectors.groupingBy(AppliedFix::step, TreeMap::new, Collectors.toList()));
    for (List<AppliedFix> round : rounds.values()) {
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
    Matcher ends = LINE_END.matcher(text);
    for (int i = 1; i < line; i++) {
      at = ends.find() ? ends.end() : text.length();
    }
    return text.offsetByCodePoints(at, column - 1);
  }
}
