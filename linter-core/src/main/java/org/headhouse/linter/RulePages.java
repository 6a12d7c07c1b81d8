package org.headhouse.linter;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import org.headhouse.linter.rule.RuleDescriptor;

/** The pages of the built-in rules: requirement, reason, examples and sources, in Markdown. */
public final class RulePages {
  private RulePages() {}

  /** The page of a rule, or empty for a rule without one. */
  public static Optional<String> text(String id) {
    if (!RuleDescriptor.isId(id)) {
      return Optional.empty();
    }
    try (InputStream in = RulePages.class.getResourceAsStream("rules/" + id + ".md")) {
      return in == null ? Optional.empty() : Optional.of(new String(in.readAllBytes(), UTF_8));
    } catch (IOException unreadableJar) {
      throw new UncheckedIOException(unreadableJar);
    }
  }
}
