package org.headhouse.linter.figures;

import java.util.Collection;
import java.util.List;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.stability.Internal;

/** Which unit of length a file uses. */
@Internal
public final class SiteMeasure {
  private SiteMeasure() {}

  /** Feet where more of its lengths are in feet than in metres. */
  public static Measure of(Site site) {
    return of(site.items().stream().flatMap(item -> lengthsAt(item).stream()).toList());
  }

  /** The same for some lengths. */
  public static Measure of(Collection<Setting<Length>> lengths) {
    long feet = lengths.stream().filter(length -> is(length, Measure.US)).count();
    return feet > lengths.size() - feet ? Measure.US : Measure.METRIC;
  }

  /** The lengths that are written at an item: of its cable to the next one and of its stub. */
  public static List<Setting<Length>> lengthsAt(ChainItem item) {
    return List.of(item.cableToNext(), item.connection(Side.IN).stub()).stream()
        .filter(length -> length.orNull() != null)
        .toList();
  }

  /** Whether a length is written in the unit of a measure. */
  public static boolean is(Setting<Length> setting, Measure measure) {
    Length length = setting.orNull();
    return length != null
        && length.written().endsWith(Measure.US.unit()) == (measure == Measure.US);
  }
}
