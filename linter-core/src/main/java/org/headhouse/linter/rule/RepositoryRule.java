package org.headhouse.linter.rule;

import java.util.List;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;

/**
 * A requirement that something is unique among all sites.
 *
 * <p>Sites are not kept, so all that is remembered of a site is some texts and their places. A rule
 * that wants the same within a site is a {@link SiteRule} as well.
 */
public non-sealed interface RepositoryRule extends Rule {

  /**
   * The texts that no two sites may share, each at its place; what is not given is passed over, and
   * so is a text that this site has already.
   */
  List<Setting<String>> keys(Site site);

  /**
   * The form of a text that no two sites may share. By default it is the text itself. A rule to
   * which "Bay 1" and "bay 1" are the same returns one form for both, and gives only one of them as
   * a key of a site that has both.
   */
  default String compared(String key) {
    return key;
  }

  /** How severe a text is that two sites share; a policy can make it milder. */
  default Level level() {
    return Level.ERROR;
  }

  /** The message at the second site with a key. */
  Message clash(String key, String firstFile, String file);

  /** The message at the first site with a key, as a related location. */
  String firstUse(String key);
}
