package org.headhouse.linter.check;

import org.headhouse.linter.bind.SiteBinder;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.yaml.Document;
import org.jspecify.annotations.Nullable;

/** Reads sites without checking them. Safe for use by several threads. */
public final class SiteReader {
  private final DeviceTypes types;
  private final Limits limits;

  public SiteReader(DeviceTypes types, Limits limits) {
    this.types = types;
    this.limits = limits;
  }

  /** The site in one file as far as it is understood, or null where it cannot be read as YAML. */
  public @Nullable Site read(String path, byte[] bytes) {
    Document document = SiteDocument.read(path, bytes, limits);
    var root = document.root();
    return root == null ? null : SiteBinder.bind(document.source(), root, types).model();
  }
}
