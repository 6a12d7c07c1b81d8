package org.headhouse.linter.fix;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Location;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.Replacement;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.result.Suppression;
import org.headhouse.linter.source.Region;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Mending with rules on letters: {@code a>x} finds each a and would write x, {@code a~x} proposes
 * it, {@code (a>x)} is accepted, {@code ab!} finds ab and knows no fix, {@code ab?} is a trouble.
 */
class FixLoopTest {

  /** Rules, the text before, the text after, the steps with what each mended. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a>x             | b     | b     | ''",
        "a>x             | a     | x     | 1 a>x",
        "a~x             | a     | a     | ''",
        "(a>x)           | a     | a     | ''",
        // All that do not touch each other go at once.
        "a>x b>y         | a-b   | x-y   | 1 a>x 1 b>y",
        "a>x             | a-a-b | x-x-b | 1 a>x 1 a>x",
        // What is beside another waits.
        "a>x b>y         | ab    | xy    | 1 a>x 2 b>y",
        "a>x a>y         | a     | x     | 1 a>x",
        // Good one by one, but not together.
        "a>x b>x x-x!    | a-b   | x-b   | 1 a>x",
        "a>x b>y x-y!    | b-a   | y-x   | 1 a>x 1 b>y",
        "a>x b>y c>z x-y! | a-b-c | x-b-z | 1 a>x 1 c>z",
        "a>x b>y c>z xb-z! | ab-c | xy-z | 1 a>x 2 b>y 2 c>z",
        "a>x b>y x-b! y! | a-b   | a-b   | ''",
        // A fix that makes another fault is none, unless that is mended too.
        "a>b b!          | a     | a     | ''",
        "a>b b>c         | a     | c     | 1 a>b 2 b>c",
        "a>b b>c c!      | a     | a     | ''",
        "a>b b>c d>d     | a-d   | c-d   | 1 a>b 2 b>c",
        "a>bb b>c        | a     | cc    | 1 a>bb 2 b>c 3 b>c",
        "a>b-b b>c       | a     | c-c   | 1 a>b-b 2 b>c 2 b>c",
        // At most eight steps are looked ahead.
        "a>b b>c c>d d>e e>f f>g g>h h>i     | a | i | 1 a>b 2 b>c 3 c>d 4 d>e 5 e>f 6 f>g 7 g>h 8 h>i",
        // What is left is not more than before.
        "a>a             | a     | a     | ''",
        "a>aa            | a     | a     | ''",
        "a>x aa!         | aa    | xx    | 1 a>x 2 a>x",
        // A trouble of the tool is worse than a fault.
        "a>x x?          | a     | a     | ''",
        "a>x x? y?       | a-y   | a-y   | ''",
        "a>x y?          | a-y   | x-y   | 1 a>x",
        // What is accepted counts for nothing.
        "a>b (b>c)       | a     | b     | 1 a>b",
      })
  void mended(String rules, String before, String after, String steps) {
    FixLoop mending = mend(rules, before, FixKind.SAFE);
    assertThat(new String(mending.bytes(), UTF_8)).isEqualTo(after);
    assertThat(
            mending.applied().stream()
                .map(one -> one.step() + " " + one.result().rule())
                .reduce("", (all, one) -> all.isEmpty() ? one : all + " " + one))
        .isEqualTo(steps);
    assertThat(mending.remaining()).isEqualTo(checked(rules, after));
  }

  @ParameterizedTest
  @CsvSource({"a~x, SAFE, a", "a~x, PROPOSED, x", "a>x, PROPOSED, x"})
  void asFarAsIsAsked(String rule, FixKind asked, String after) {
    assertThat(new String(mend(rule, "a", asked).bytes(), UTF_8)).isEqualTo(after);
  }

  /** Nine steps are more than are looked ahead. */
  @ParameterizedTest
  @CsvSource({"a>b b>c c>d d>e e>f f>g g>h h>i i>j"})
  void notTooFar(String rules) {
    FixLoop mending = mend(rules, "a", FixKind.SAFE);
    assertThat(new String(mending.bytes(), UTF_8)).isEqualTo("a");
    assertThat(mending.applied()).isEmpty();
  }

  /** Whether a fix is good alone shows only by a check; that is not tried for thousands. */
  @Test
  void notForEver() {
    String text = "a-".repeat(5000);
    AtomicInteger checks = new AtomicInteger();
    FixLoop mending =
        FixLoop.of(
            text.getBytes(UTF_8),
            FixKind.SAFE,
            bytes -> {
              checks.incrementAndGet();
              return checked("a>b b!", new String(bytes, UTF_8));
            });
    assertThat(new String(mending.bytes(), UTF_8)).isEqualTo(text);
    assertThat(checks).hasValueBetween(10, 20);
  }

  /** One bad fix among many costs a few checks, and the others are made. */
  @Test
  void oneBadAmongManyIsFoundSoon() {
    String text = "a-".repeat(100) + "c-" + "a-".repeat(100);
    AtomicInteger checks = new AtomicInteger();
    FixLoop mending =
        FixLoop.of(
            text.getBytes(UTF_8),
            FixKind.SAFE,
            bytes -> {
              checks.incrementAndGet();
              return checked("a>b c>d d!", new String(bytes, UTF_8));
            });
    assertThat(new String(mending.bytes(), UTF_8)).isEqualTo(text.replace('a', 'b'));
    assertThat(checks).hasValueLessThan(40);
  }

  private static FixLoop mend(String rules, String text, FixKind asked) {
    return FixLoop.of(
        text.getBytes(UTF_8), asked, bytes -> checked(rules, new String(bytes, UTF_8)));
  }

  private static FixLoop.Checked checked(String rules, String text) {
    List<Result> results = new ArrayList<>();
    int troubles = 0;
    for (String rule : rules.split(" ", -1)) {
      String found = rule.replaceAll("^\\(|[>~!?].*", "");
      String written = rule.replaceAll(".*[>~]|\\)", "");
      for (int at = text.indexOf(found); at >= 0; at = text.indexOf(found, at + 1)) {
        if (rule.endsWith("?")) {
          troubles++;
        } else {
          results.add(result(rule, written, Region.onLine(1, at + 1, found.length())));
        }
      }
    }
    return new FixLoop.Checked(results, troubles);
  }

  private static Result result(String rule, String written, Region region) {
    Location location = new Location("a.yaml", region, "");
    Suppression accepted = rule.startsWith("(") ? new Suppression("Known.", location) : null;
    return new Result(
        rule,
        Level.ERROR,
        new Message("fact", "reason", "remedy"),
        location,
        "",
        null,
        List.of(),
        accepted,
        List.of(),
        null,
        fix(rule, written, region));
  }

  private static @Nullable Fix fix(String rule, String written, Region region) {
    if (rule.endsWith("!")) {
      return null;
    }
    return new Fix(
        rule.contains("~") ? FixKind.PROPOSED : FixKind.SAFE,
        "Write " + written,
        List.of(new Replacement(region, written)));
  }
}
