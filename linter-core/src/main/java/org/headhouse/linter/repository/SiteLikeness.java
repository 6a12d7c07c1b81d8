package org.headhouse.linter.repository;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.HashSet;
import java.util.Set;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Site;
import org.jspecify.annotations.Nullable;

/** What a site is known by where neither its id nor its file tells: its lines and its items. */
final class SiteLikeness {
  private final Set<String> lines = new HashSet<>();
  private final Set<String> items = new HashSet<>();

  SiteLikeness(byte[] bytes, @Nullable Site site) {
    new String(bytes, UTF_8).lines().map(String::strip).forEach(lines::add);
    lines.remove("");
    if (site != null) {
      ChainItem.names(site.items()).forEach(name -> items.add(name == null ? "" : name));
      items.remove("");
    }
  }

  /**
   * The share that both have of the lines or of the items of the larger one, whichever is greater:
   * from 0 to 1.
   */
  double to(SiteLikeness other) {
    return Math.max(share(lines, other.lines), share(items, other.items));
  }

  private static double share(Set<String> one, Set<String> other) {
    long larger = Math.max(length(one), length(other));
    long common = one.stream().filter(other::contains).mapToLong(String::length).sum();
    return larger == 0 ? 0 : (double) common / larger;
  }

  private static long length(Set<String> texts) {
    return texts.stream().mapToLong(String::length).sum();
  }
}
