package org.headhouse.linter.rules.name;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.InvisibleCharacters;
import org.jspecify.annotations.Nullable;

/** {@code name.unreadable}. */
public final class NameUnreadable implements SiteRule {
  private static final String FORMULA_SIGNS = "=+-@";

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "name.unreadable",
          "A name can be read and said: at least one letter, no control or invisible characters, no space at either end, and no sign in front that a spreadsheet takes for a formula.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    for (ChainItem item : site.items()) {
      String name = item.name().orNull();
      String fault = name == null ? null : fault(name);
      if (name != null && fault != null) {
        context.report(
            context
                .finding(
                    item.name().place(),
                    new Message(
                        "the name " + item.called() + " " + fault,
                        isFormula(name)
                            ? "a spreadsheet that opens a list of the units runs it as a formula"
                            : "people on site cannot read it out or search for it",
                        isFormula(name)
                            ? "start the name with a letter"
                            : "use visible characters, and no space at either end"))
                .fixedBy(withoutSpaces(item, name, site)));
      }
    }
  }

  /** The name without spaces around it, wherever the file has it; null where it needs more. */
  private static @Nullable FixDraft withoutSpaces(ChainItem item, String name, Site site) {
    int from = 0;
    int to = name.length();
    while (from < to && isSpace(name.charAt(from))) {
      from++;
    }
    while (from < to && isSpace(name.charAt(to - 1))) {
      to--;
    }
    String bare = name.substring(from, to);
    if (bare.isEmpty() || bare.equals(name) || fault(bare) != null) {
      return null;
    }
    List<Edit> edits = new ArrayList<>();
    edits.add(Edit.write(item.name().place(), bare));
    site.references(name).forEach(place -> edits.add(Edit.write(place, bare)));
    return FixDraft.onSite(
        "Write the name \"" + bare + "\" without spaces around it", edits.toArray(Edit[]::new));
  }

  /** Whether this rule reports a name; then no other rule judges it or proposes it. */
  public static boolean isUnreadable(String name) {
    return fault(name) != null;
  }

  /** What makes a name unreadable, or null. */
  static @Nullable String fault(String name) {
    if (isPlain(name)) {
      return null;
    }
    if (name.codePoints().anyMatch(InvisibleCharacters::is)) {
      return "has a control or invisible character";
    }
    int first = name.codePointAt(0);
    int last = name.codePointBefore(name.length());
    if (isSpace(first) || isSpace(last)) {
      return "starts or ends with a space";
    }
    if (name.codePoints().noneMatch(Character::isLetter)) {
      return "has only digits or punctuation";
    }
    return isFormula(name) ? "starts with " + name.charAt(0) : null;
  }

  private static boolean isFormula(String name) {
    return !name.isEmpty() && FORMULA_SIGNS.indexOf(name.charAt(0)) >= 0;
  }

  /** Most names are of ASCII alone, start with a letter and end with no space. */
  private static boolean isPlain(String name) {
    for (int i = 0; i < name.length(); i++) {
      if (name.charAt(i) < ' ' || name.charAt(i) > '~') {
        return false;
      }
    }
    return Character.isLetter(name.charAt(0)) && name.charAt(name.length() - 1) != ' ';
  }

  private static boolean isSpace(int c) {
    return Character.isWhitespace(c) || Character.isSpaceChar(c);
  }
}
