package org.headhouse.linter.figures;

import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.stability.Internal;

/** Which unit of length a file uses. */
@Internal
public final class SiteMeasure {
  private int feet;
  private int metres;

  private SiteMeasure() {}

  /** Feet where more of its lengths are in feet than in metres. */
  public static Measure of(Site site) {
    SiteMeasure counts = new SiteMeasure();
    for (ChainItem item : site.items()) {
      counts.add(item.cableToNext());
      counts.add(item.connection(Side.IN).stub());
    }
    return counts.feet > counts.metres ? Measure.US : Measure.METRIC;
  }

  private void add(Setting<Length> setting) {
    Length length = setting.orNull();
    if (length != null && length.written().endsWith(Measure.US.unit())) {
      feet++;
    } else if (length != null) {
      metres++;
    }
  }
}
