package org.headhouse.linter.rules.name;

import java.util.Set;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/** {@code name.placeholder}. */
public final class NamePlaceholder implements SiteRule {
  private static final Set<String> NO_NAMES =
      Set.of(
          "new",
          "test",
          "tests",
          "testing",
          "tbd",
          "todo",
          "unnamed",
          "untitled",
          "none",
          "name",
          "dummy",
          "temp",
          "tmp");

  private static final Set<String> KINDS =
      Set.of("unit", "controller", "device", "follower", "head", "node", "slot");

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of("name.placeholder", "A name says where its unit is.", Level.WARNING);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    for (Unit unit : site.units()) {
      String name = unit.name().orNull();
      if (name != null && isPlaceholder(Folded.of(name))) {
        context.report(
            unit.name().place(),
            new Message(
                "the name " + unit.called() + " says nothing",
                "nobody can find the unit by it",
                "name it after the house or bay that it controls"));
      }
    }
  }

  private static boolean isPlaceholder(String name) {
    return NO_NAMES.contains(name) || isCrosses(name) || KINDS.contains(withoutNumber(name));
  }

  private static boolean isCrosses(String name) {
    int at = 0;
    while (at < name.length() && name.charAt(at) == 'x') {
      at++;
    }
    return at == name.length() && at >= 3;
  }

  /** The kind of thing in a name such as {@code new unit #3}. */
  private static String withoutNumber(String name) {
    int start = name.startsWith("new ") ? "new ".length() : 0;
    start = name.startsWith("test ") ? "test ".length() : start;
    int end = name.length();
    while (end > start && name.charAt(end - 1) >= '0' && name.charAt(end - 1) <= '9') {
      end--;
    }
    if (end < name.length()) {
      end = before(' ', ' ', start, name, end);
      end = before('-', '#', start, name, end);
      end = before(' ', ' ', start, name, end);
    }
    return name.substring(start, end);
  }

  private static int before(char one, char other, int start, String name, int end) {
    boolean either = end > start && (name.charAt(end - 1) == one || name.charAt(end - 1) == other);
    return either ? end - 1 : end;
  }
}
