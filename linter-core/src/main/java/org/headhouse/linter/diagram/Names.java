package org.headhouse.linter.diagram;

import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Site;

/** The names of things on a drawing. */
final class Names {
  private Names() {}

  /** An item's name, or its place in the chain where it has none. */
  static String plain(ChainItem item) {
    String name = Lettering.visible(item.name().or(""));
    return name.isBlank() ? "item " + (item.index() + 1) + ", no name" : name;
  }

  /** The same, isolated from the direction of the sentence around it. */
  static String inSentence(ChainItem item) {
    return Lettering.isolated(plain(item));
  }

  /** The title of a site with its id, or the one that there is. */
  static String of(Site site) {
    String id = site.id().or(site.source().path());
    return Lettering.visible(site.title().isGiven() ? site.title().or("") + " (" + id + ")" : id);
  }
}
