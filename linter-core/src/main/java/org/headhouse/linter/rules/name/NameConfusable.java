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

/** {@code name.confusable}. */
public final class NameConfusable implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of("name.confusable", "No two names look alike.", Level.WARNING)
          .yieldingTo("name.duplicate");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Map<String, ChainItem> first = new HashMap<>();
    for (ChainItem item : site.items()) {
      String name = item.name().orNull();
      ChainItem other =
          name == null ? null : first.putIfAbsent(LookAlikes.shape(Folded.keepingCase(name)), item);
      if (name != null && other != null && !isSame(name, other)) {
        context.report(
            context
                .finding(
                    item.name().place(),
                    new Message(
                        "the name \"" + name + "\" looks like " + other.called(),
                        "0 and O, or 1, l and I, are easily confused on a display",
                        "rename one of the two so that they look different"))
                .related(
                    other.name().place().region(), "it looks like " + other.called() + " here"));
      }
    }
  }

  private static boolean isSame(String name, ChainItem other) {
    return Folded.of(name).equals(Folded.of(other.name().or("")));
  }
}
