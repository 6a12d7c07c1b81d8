package org.headhouse.linter.fix;

import java.util.TreeSet;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.source.Region;
import org.jspecify.annotations.Nullable;

/** The regions that some fixes replace, none of which touches another. */
final class TakenRegions {
  private final TreeSet<Region> taken = new TreeSet<>();

  /** Takes the regions of a fix, unless one of them touches a region that is taken. */
  boolean take(@Nullable Fix fix) {
    if (fix == null || !areFree(fix)) {
      return false;
    }
    fix.replacements().forEach(one -> taken.add(one.region()));
    return true;
  }

  /** Whether a fix touches no region that is taken. */
  boolean areFree(@Nullable Fix fix) {
    return fix != null && fix.replacements().stream().noneMatch(one -> isTaken(one.region()));
  }

  private boolean isTaken(Region region) {
    Region before = taken.floor(region);
    Region after = taken.ceiling(region);
    return (before != null && Splice.touch(before, region))
        || (after != null && Splice.touch(after, region));
  }
}
