package org.headhouse.linter.rule;

import org.headhouse.linter.result.Message;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;

/**
 * A requirement that something is unique among all sites.
 *
 * <p>Sites are not kept, so all that is remembered of a site is one text and its place.
 */
public non-sealed interface RepositoryRule extends Rule {

  /** The text that no two sites may share. */
  Setting<String> key(Site site);

  /** The message at the second site with a key. */
  Message clash(String key, String firstFile, String file);

  /** The message at the first site with a key, as a related location. */
  String firstUse(String key);
}
