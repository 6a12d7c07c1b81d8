package org.headhouse.linter.rules.name;

import java.util.HashMap;
import java.util.Map;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Site;

/** {@code name.duplicate}: names are compared as people read them. */
public final class NameDuplicate implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "name.duplicate",
          "No two units share a name; differences in case, spaces and letter width do not count.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Map<String, ChainItem> first = new HashMap<>();
    for (ChainItem item : site.items()) {
      String name = item.name().orNull();
      ChainItem other = name == null ? null : first.putIfAbsent(Folded.of(name), item);
      if (name != null && other != null) {
        context.report(
            context
                .finding(
                    item.name().place(),
                    new Message(
                        "the name \"" + name + "\" is used twice",
                        "nobody can tell which of the two is meant",
                        "give one of the two another name"))
                .related(other.name().place().region(), other.called() + " is first used here"));
      }
    }
  }
}
