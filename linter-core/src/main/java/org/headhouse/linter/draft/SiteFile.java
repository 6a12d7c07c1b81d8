package org.headhouse.linter.draft;

import java.util.LinkedHashMap;
import java.util.Map;
import org.headhouse.linter.bind.SiteBinder;
import org.headhouse.linter.bind.UnitDefaults;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.Role;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Alias;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Sequence;
import org.headhouse.linter.yaml.YamlReader;
import org.jspecify.annotations.Nullable;

/**
 * The text of a site with what is read of it.
 *
 * @param root the tree, with the defaults given to the units
 */
record SiteFile(SourceText source, Node.Valued root, Site site) {

  /** Null where the text cannot be read as YAML. */
  static @Nullable SiteFile of(SourceText source, DeviceTypes types, Limits limits) {
    Node.Valued written = new YamlReader(limits).read(source).root();
    if (written == null) {
      return null;
    }
    Node.Valued root = UnitDefaults.spread(written);
    return new SiteFile(source, root, SiteBinder.bind(source, root, types).model());
  }

  /** The list of the items as it is written, or null. */
  @Nullable Sequence chain() {
    Mapping.Entry entry = new Cursor(root, null).entry("chain");
    return entry != null && entry.value() instanceof Sequence list ? list : null;
  }

  /** The keys of an item that are written in it; none where an alias stands for it. */
  Map<String, Mapping.Entry> keysOf(ChainItem item) {
    Map<String, Mapping.Entry> keys = new LinkedHashMap<>();
    Sequence chain = chain();
    if (chain != null && chain.items().get(item.index()) instanceof Mapping mapping) {
      for (Mapping.Entry entry : mapping.entries()) {
        if (entry.via() == null) {
          keys.put(entry.key().text(), entry);
        }
      }
    }
    return keys;
  }

  /** Whether an alias stands for an item. */
  boolean isAlias(ChainItem item) {
    Sequence chain = chain();
    return chain == null || chain.items().get(item.index()) instanceof Alias;
  }

  /** What units of a role have by default, as it is written. */
  Map<String, String> defaults(Role role) {
    Map<String, String> defaults = new LinkedHashMap<>();
    Cursor all = new Cursor(root, null).get("defaults");
    Cursor ofRole = all == null ? null : all.get(role.word());
    if (ofRole != null && ofRole.node() instanceof Mapping mapping) {
      for (Mapping.Entry entry : mapping.entries()) {
        Region region = ofRole.valueOf(entry).node().region();
        defaults.put(entry.key().text(), slice(region));
      }
    }
    return defaults;
  }

  private String slice(Region region) {
    return source
        .text()
        .substring(
            source.offset(region.startLine(), region.startColumn()),
            source.offset(region.endLine(), region.endColumn()));
  }

  /** Whether a region is under one of some keys of the site. */
  boolean isUnder(Region region, String... keys) {
    Cursor top = new Cursor(root, null);
    for (String key : keys) {
      Cursor value = top.get(key);
      if (value != null && value.node().region().contains(region)) {
        return true;
      }
    }
    return false;
  }
}
