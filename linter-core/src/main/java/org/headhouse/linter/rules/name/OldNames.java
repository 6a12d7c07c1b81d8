package org.headhouse.linter.rules.name;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.headhouse.linter.change.Renamings;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.EarlierState;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.jspecify.annotations.Nullable;

/** What is known of names that no item has any more. Nothing is looked for until one is met. */
public final class OldNames {
  private final Site site;
  private final RuleContext context;
  private @Nullable Renamings renamings;

  public OldNames(Site site, RuleContext context) {
    this.site = site;
    this.context = context;
  }

  /** Whether an item had a name in the earlier state: then the name is old, and not misspelt. */
  public boolean has(String name) {
    EarlierState earlier = context.earlier();
    return earlier != null
        && earlier.site().items().stream().anyMatch(item -> item.name().is(name));
  }

  /** What an item is called now that had a name in the earlier state, or null. */
  public Renamings.@Nullable Renaming renaming(String name) {
    EarlierState earlier = context.earlier();
    if (earlier == null) {
      return null;
    }
    Renamings known = renamings;
    if (known == null) {
      known = Renamings.between(earlier.site(), site);
      renamings = known;
    }
    return known.of(name);
  }

  /** What an item is certain to be called now that had a name in the earlier state. */
  public Optional<String> nowCalled(String name) {
    Renamings.Renaming one = renaming(name);
    return one != null && one.certain() ? Optional.of(one.to()) : Optional.empty();
  }

  /**
   * What to report of a reference by an old name, or null where no item is known to have had it.
   * One fix follows the new name wherever the old one is.
   *
   * @param why what comes of it
   * @param otherwise what to do where it is not the same item
   */
  public @Nullable Finding finding(Setting<String> reference, String why, String otherwise) {
    Renamings.Renaming one = renaming(reference.or(""));
    EarlierState earlier = context.earlier();
    if (one == null || earlier == null || NameUnreadable.isUnreadable(one.to())) {
      return null;
    }
    String from = "\"" + one.from() + "\"";
    String to = "\"" + one.to() + "\"";
    String fact =
        one.certain()
            ? to + " was called " + from + " in " + earlier.name()
            : "nothing is called " + from + " any more; its name may now be " + to;
    String remedy =
        one.certain()
            ? "write " + to + " here and wherever else the old name is used"
            : "if it is the same " + one.item().kind().word() + ", write " + to + "; " + otherwise;
    return context
        .finding(reference.place(), new Message(fact, why, remedy))
        .related(one.item().name().place().region(), to + " is on the chain here")
        .fixedBy(fix(one));
  }

  private FixDraft fix(Renamings.Renaming one) {
    List<Edit> edits = new ArrayList<>();
    site.references(one.from()).forEach(place -> edits.add(Edit.write(place, one.to())));
    return new FixDraft(
        one.certain() ? FixKind.SAFE : FixKind.PROPOSED,
        "Write the new name \"" + one.to() + "\" wherever \"" + one.from() + "\" is referred to",
        edits);
  }
}
