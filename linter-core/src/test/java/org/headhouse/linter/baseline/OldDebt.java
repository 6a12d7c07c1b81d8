package org.headhouse.linter.baseline;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.result.Result;
import org.jspecify.annotations.Nullable;

/** A folder with a baseline in it, for texts that are checked now and later. */
final class OldDebt {
  static final String NAME = "linter-baseline.jsonl";

  private final Path folder;
  private final @Nullable SiteInput policy;
  private final @Nullable SiteInput types;

  OldDebt(Path folder) {
    this(folder, null);
  }

  OldDebt(Path folder, @Nullable SiteInput policy) {
    this(folder, policy, null);
  }

  OldDebt(Path folder, @Nullable SiteInput policy, @Nullable SiteInput types) {
    this.folder = folder;
    this.policy = policy;
    this.types = types;
  }

  Path file() {
    return folder.resolve(NAME);
  }

  static String text(Baseline baseline) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    baseline.write(out);
    return out.toString(UTF_8);
  }

  /** Checks texts without a baseline, and takes what is found into one. */
  String take(Map<String, String> texts) throws IOException {
    CheckReport report = builder().threads(2).build().check(inputs(texts).stream());
    Baseline baseline =
        Baseline.empty(SitePaths.of(file(), folder))
            .renewed(report.results(), texts.keySet(), true);
    Files.writeString(file(), text(baseline));
    return text(baseline);
  }

  /** Checks texts with the baseline. */
  CheckReport check(Map<String, String> texts) throws IOException {
    return check(texts, 1);
  }

  CheckReport check(Map<String, String> texts, int threads) throws IOException {
    return builder()
        .threads(threads)
        .baseline(file())
        .shownFrom(folder)
        .build()
        .check(inputs(texts).stream());
  }

  private SiteLinter.Builder builder() throws IOException {
    SiteLinter.Builder builder = SiteLinter.builder();
    if (policy != null) {
      builder.policy(policy);
    }
    if (types != null) {
      builder.deviceTypes(types);
    }
    return builder;
  }

  private static List<SiteInput> inputs(Map<String, String> texts) {
    return new TreeMap<>(texts)
        .entrySet().stream().map(one -> SiteInput.text(one.getKey(), one.getValue())).toList();
  }

  /** The rules of results that are neither suppressed nor known, and where. */
  static List<String> fresh(CheckReport report) {
    return report.results().stream()
        .filter(result -> !result.suppressed() && !result.known())
        .map(OldDebt::told)
        .toList();
  }

  static List<String> absent(CheckReport report) {
    return report.absent().stream().map(one -> one.rule() + " " + one.identity().at()).toList();
  }

  private static String told(Result result) {
    return result.rule() + " " + result.logical();
  }
}
