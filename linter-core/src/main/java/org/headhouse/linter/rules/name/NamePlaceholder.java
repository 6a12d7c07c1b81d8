package org.headhouse.linter.rules.name;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/** {@code name.placeholder}. */
public final class NamePlaceholder implements SiteRule {
  private static final Pattern PLACEHOLDER =
      Pattern.compile(
          "(?:new|test|tests|testing|tbd|todo|xxx+|unnamed|untitled|none|name|dummy|temp|tmp"
              + "|(?:new |test )?(?:unit|controller|device|follower|head|node|slot)(?: ?[-#]? ?[0-9]+)?)");

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of("name.placeholder", "A name says where its unit is.", Level.WARNING);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Matcher placeholder = PLACEHOLDER.matcher("");
    for (Unit unit : site.units()) {
      String name = unit.name().orNull();
      if (name != null && placeholder.reset(Folded.of(name)).matches()) {
        context.report(
            unit.name().place(),
            new Message(
                "the name " + unit.called() + " says nothing",
                "nobody finds the unit by it",
                "name it after the house or bay that it controls"));
      }
    }
  }
}
