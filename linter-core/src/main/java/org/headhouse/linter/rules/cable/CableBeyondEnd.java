package org.headhouse.linter.rules.cable;

import java.util.List;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.Site;

/** {@code cable.beyond-end}. */
public final class CableBeyondEnd implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "cable.beyond-end", "No cable leaves the last item of the chain.", Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    List<ChainItem> items = site.items();
    ChainItem last = items.isEmpty() ? null : items.get(items.size() - 1);
    Length length = last == null ? null : last.cableToNext().orNull();
    if (last != null && length != null) {
      context.report(
          context
              .finding(
                  last.cableToNext().place(),
                  new Message(
                      length.written()
                          + " of cable leave "
                          + last.called()
                          + ", the last item of the chain",
                      "an open cable end reflects the signal, and an item may be missing from"
                          + " the file",
                      "add the item that it leads to, or isolate the supply, remove the cable, and"
                          + " set cable-to-next: none"))
              .fixedBy(
                  FixDraft.proposed(
                      "Remove the cable after " + last.called(),
                      Edit.write(last.cableToNext().place(), "none"))));
    }
  }
}
