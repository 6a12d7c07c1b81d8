package org.headhouse.linter.check;

import org.headhouse.linter.bind.UnitDefaults;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.yaml.Document;

/** From the bytes of a site's file to its tree, in which each unit has the defaults of its role. */
final class SiteDocument {
  private SiteDocument() {}

  static Document read(String path, byte[] bytes, Limits limits) {
    Document document = SourceDecoder.read(path, bytes, limits);
    var root = document.root();
    return root == null ? document : document.withRoot(UnitDefaults.spread(root));
  }
}
