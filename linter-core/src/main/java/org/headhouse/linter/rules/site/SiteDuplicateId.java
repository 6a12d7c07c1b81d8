package org.headhouse.linter.rules.site;

import java.util.List;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RepositoryRule;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;

/** {@code site.duplicate-id}: looks at all sites of a run. */
public final class SiteDuplicateId implements RepositoryRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of("site.duplicate-id", "No two files define the same site.", Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public List<Setting<String>> keys(Site site) {
    return List.of(site.id());
  }

  @Override
  public Message clash(String key, String firstFile, String file) {
    return new Message(
        "the site \"" + key + "\" is defined a second time",
        "nobody can tell which of the two files is valid",
        "delete the file that is out of date, or give one of the two another id");
  }

  @Override
  public String firstUse(String key) {
    return "\"" + key + "\" is first defined here";
  }
}
