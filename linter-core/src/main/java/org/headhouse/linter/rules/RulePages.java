package org.headhouse.linter.rules;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import org.headhouse.linter.rule.RuleDescriptor;

/**
 * The pages of rules: requirement, reason, examples and sources, in Markdown. A rule of another jar
 * has its page, called after its id, beside its class.
 */
public final class RulePages {
  private RulePages() {}

  /** The page of a built-in rule, or empty for a rule without one. */
  public static Optional<String> text(String id) {
    return RuleDescriptor.isId(id) ? text(RulePages.class, id + ".md") : Optional.empty();
  }

  /** The page of a rule of another jar, or empty where it has none. */
  public static Optional<String> beside(Class<?> rule, String id) {
    return text(rule, id + ".md");
  }

  private static Optional<String> text(Class<?> place, String name) {
    try (InputStream in = place.getResourceAsStream(name)) {
      return in == null ? Optional.empty() : Optional.of(new String(in.readAllBytes(), UTF_8));
    } catch (IOException unreadableJar) {
      throw new UncheckedIOException(unreadableJar);
    }
  }
}
