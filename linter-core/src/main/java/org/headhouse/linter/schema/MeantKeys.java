package org.headhouse.linter.schema;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.headhouse.linter.source.SpellingSuggester;

/**
 * The keys that were probably meant by those that are not known. Each is looked for once, however
 * many errors of the schema ask for it.
 */
final class MeantKeys {
  private final Map<Collection<String>, Near> near = new HashMap<>();

  /** What is near to keys among some that are known. */
  private record Near(SpellingSuggester suggester, Map<String, Optional<String>> found) {
    static Near among(Collection<String> known) {
      return new Near(new SpellingSuggester(known), new HashMap<>());
    }
  }

  /** The known key that is nearest to a written one. */
  Optional<String> of(String key, Collection<String> known) {
    Near one = near.computeIfAbsent(known, Near::among);
    return one.found.computeIfAbsent(key, one.suggester::suggest);
  }

  /** Whether nothing but that key can be meant. */
  boolean isCertain(String key, String nearest, Collection<String> known) {
    return near.computeIfAbsent(known, Near::among).suggester.isCertain(key, nearest);
  }
}
