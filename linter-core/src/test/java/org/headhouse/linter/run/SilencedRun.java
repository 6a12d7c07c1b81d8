package org.headhouse.linter.run;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.EditedSite;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.baseline.Baseline;
import org.headhouse.linter.baseline.SitePaths;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Result;

/** What is checked: files by their paths, with a policy, device types, and what they were. */
final class SilencedRun {
  /** The site that {@link #of} is about. */
  static final String A = "sites/example.yaml";

  static final String TYPES =
      """
      format: 1
      device-types:
        - {id: plain, title: Controller, unit-load: 1/8, idle-bias: not-needed, other-clients: waits}
        - {id: box, title: Box, unit-load: 1/8, other-clients: waits}
        - {id: needing, title: Needing, unit-load: 1/8, idle-bias: needed, other-clients: waits}
        - {id: heavy, title: Heavy, unit-load: 20, idle-bias: not-needed, other-clients: waits}
      """;

  private final Map<String, String> files = new LinkedHashMap<>();
  private String policy = "";
  private String types = TYPES;
  private String day = "2026-06-01";
  private Map<String, String> known = Map.of();
  private Map<String, String> earlier = Map.of();

  static SilencedRun of(String... edits) {
    return new SilencedRun().file(A, "example", edits);
  }

  SilencedRun file(String path, String id, String... edits) {
    String[] all =
        Stream.concat(Stream.of("site.site = " + id), Arrays.stream(edits)).toArray(String[]::new);
    files.put(path, new EditedSite(all).toString());
    return this;
  }

  SilencedRun text(String path, String text) {
    files.put(path, text);
    return this;
  }

  SilencedRun added(boolean isAdded, String block) {
    files.computeIfPresent(A, (path, text) -> isAdded ? text + block : text);
    return this;
  }

  SilencedRun suppressed(boolean isSuppressed, String... entries) {
    return added(isSuppressed, "suppressions: [{" + String.join("}, {", entries) + "}]\n");
  }

  SilencedRun policy(boolean isGiven, String rules) {
    policy = isGiven ? "format: 1\nrule-set: 1\nrules: {" + rules + "}\n" : policy;
    return this;
  }

  SilencedRun types(String text) {
    types = text;
    return this;
  }

  SilencedRun on(String date) {
    day = date;
    return this;
  }

  /** With a baseline of what another run found. */
  SilencedRun knowing(boolean isKnown, SilencedRun before) {
    known = isKnown ? before.files : Map.of();
    return this;
  }

  SilencedRun since(boolean isKnown, SilencedRun before) {
    earlier = isKnown ? before.files : Map.of();
    return this;
  }

  /** A linter with the policy, the device types and the day. */
  SiteLinter.Builder builder() throws IOException {
    SiteLinter.Builder builder =
        SiteLinter.builder()
            .deviceTypes(SiteInput.text("device-types.yaml", types))
            .clock(Clock.fixed(Instant.parse(day + "T12:00:00Z"), ZoneOffset.UTC));
    if (!policy.isEmpty()) {
      builder.policy(SiteInput.text("linter.yaml", policy));
    }
    return builder;
  }

  Stream<SiteInput> inputs() {
    return inputs(files);
  }

  private static Stream<SiteInput> inputs(Map<String, String> files) {
    return files.entrySet().stream().map(one -> SiteInput.text(one.getKey(), one.getValue()));
  }

  /** The text of a file. */
  String text(String path) {
    return Objects.requireNonNull(files.get(path));
  }

  CheckReport report() throws IOException {
    SiteLinter.Builder builder = builder();
    if (known.isEmpty()) {
      return check(builder);
    }
    Path file = Files.createTempFile("known", ".jsonl");
    try {
      Path base = Objects.requireNonNull(file.toAbsolutePath().getParent());
      List<Result> found = builder().build().check(inputs(known)).results();
      try (OutputStream out = Files.newOutputStream(file)) {
        Baseline.empty(SitePaths.of(file, base))
            .renewed(found, Set.copyOf(known.keySet()), true)
            .write(out);
      }
      return check(builder.shownFrom(base).baseline(file));
    } finally {
      Files.delete(file);
    }
  }

  private CheckReport check(SiteLinter.Builder builder) throws IOException {
    if (!earlier.isEmpty()) {
      builder.beforeAll(SiteState.of(inputs(earlier), null));
    }
    return builder.build().check(inputs(files));
  }

  /** Whether a rule has a result that neither the site accepts nor the baseline knows. */
  boolean tells(String rule) throws IOException {
    return rules().contains(rule);
  }

  List<String> rules() throws IOException {
    return report().at(Level.NOTE).stream().map(Result::rule).toList();
  }

  long count(String rule) throws IOException {
    return rules().stream().filter(rule::equals).count();
  }
}
