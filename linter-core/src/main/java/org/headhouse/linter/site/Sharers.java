package org.headhouse.linter.site;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.stability.Internal;

/** Which items of a chain share something of which each should have its own. For one thread. */
@Internal
public final class Sharers<K> {
  /** Whatever is shared by more is not told apart better by naming them. */
  private static final int MOST = 8;

  private final Map<K, List<ChainItem>> first = new HashMap<>();

  /** The first items that had it before this one, in their order; this one is added. */
  public List<ChainItem> before(K shared, ChainItem item) {
    List<ChainItem> sharers = first.computeIfAbsent(shared, any -> new ArrayList<>(1));
    List<ChainItem> before = List.copyOf(sharers);
    if (sharers.size() < MOST) {
      sharers.add(item);
    }
    return before;
  }
}
