package org.headhouse.linter.rules.name;

import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/** {@code name.too-long}. */
public final class NameTooLong implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of("name.too-long", "A name fits on the display of its unit.", Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    for (Unit unit : site.units()) {
      String name = unit.name().orNull();
      int length = name == null ? 0 : name.codePointCount(0, name.length());
      if (unit.type().isKnown()
          && !unit.type().nameLimitSetting().isFaulty()
          && length > unit.type().nameLimit()) {
        context.report(
            unit.name().place(),
            new Message(
                unit.called() + " has " + length + " characters",
                "the display of its type shows " + unit.type().nameLimit(),
                "shorten the name to " + unit.type().nameLimit() + " characters"));
      }
    }
  }
}
