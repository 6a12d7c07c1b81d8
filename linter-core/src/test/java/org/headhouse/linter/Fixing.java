package org.headhouse.linter;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.FixedSite;

/** Mends one text, for tests. */
public final class Fixing {
  private Fixing() {}

  /** The text after mending. */
  public static String fix(SiteLinter linter, String name, String text, FixKind kind) {
    return new String(outcome(linter, SiteInput.text(name, text), kind).after(), UTF_8);
  }

  /** What came of one input. */
  public static FixedSite outcome(SiteLinter linter, SiteInput input, FixKind kind) {
    List<FixedSite> fixed = new ArrayList<>();
    assertThat(linter.fix(Stream.of(input), kind, fixed::add)).isEmpty();
    assertThat(fixed).hasSize(1);
    return fixed.get(0);
  }
}
