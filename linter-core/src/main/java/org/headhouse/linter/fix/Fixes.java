package org.headhouse.linter.fix;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Replacement;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Alias;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.jspecify.annotations.Nullable;

/**
 * The fixes of one file: what rules mean, as replacements in its text.
 *
 * <p>A value that several places share through an anchor is changed only if all of them have the
 * same result with the same remedy; otherwise there is no fix.
 */
public final class Fixes {
  /** Of all fixes of a file; every value of a site of 247 units is about a third of it. */
  private static final int MOST_REPLACEMENTS = 20_000;

  private final SourceText source;
  private final Node.@Nullable Valued root;
  private final List<Finding> findings;
  private final Map<Draft, Optional<Fix>> made = new HashMap<>();
  private int replacementsLeft = MOST_REPLACEMENTS;
  private @Nullable Parts parts;

  /** What the findings of a rule propose; they may propose the same, and share one fix. */
  private record Draft(String rule, FixDraft draft) {}

  /** What is needed once there is a fix at all. */
  private record Parts(NodeIndex written, EditWriter writer, ProposedEdits proposed) {
    @Nullable Target target(Edit edit) {
      return Target.of(edit, written, writer);
    }
  }

  /** An edit as it is written. */
  private record Step(Replacement replacement, Set<String> anchors) {}

  /**
   * @param findings all of the file: a fix depends on what else was found
   */
  public Fixes(SourceText source, Node.@Nullable Valued root, List<Finding> findings) {
    this.source = source;
    this.root = root;
    this.findings = List.copyOf(findings);
  }

  /**
   * The fix of a finding, or null where there is none. Findings of one rule that propose the same
   * have the same fix, one object.
   */
  public @Nullable Fix of(Finding finding) {
    FixDraft draft = finding.fix();
    if (draft == null || root == null) {
      return null;
    }
    Draft asked = new Draft(finding.rule(), draft);
    Optional<Fix> known = made.get(asked);
    if (known == null) {
      known = Optional.ofNullable(affordable(make(finding, draft, root)));
      made.put(asked, known);
    }
    return known.orElse(null);
  }

  /** A fix within the budget of the file, which what is left out does not use up. */
  private @Nullable Fix affordable(@Nullable Fix fix) {
    if (fix == null || fix.replacements().size() > replacementsLeft) {
      return null;
    }
    replacementsLeft -= fix.replacements().size();
    return fix;
  }

  private @Nullable Fix make(Finding finding, FixDraft draft, Node.Valued whole) {
    Parts known = parts;
    if (known == null) {
      known =
          new Parts(
              new NodeIndex(whole),
              new EditWriter(new TextLines(source)),
              new ProposedEdits(findings));
      parts = known;
    }
    Set<Replacement> replacements = new LinkedHashSet<>();
    Set<String> anchors = new TreeSet<>();
    for (Edit edit : draft.edits()) {
      if (edit instanceof Edit.AddKeys keys && isThereMisspelt(keys, known)) {
        return null;
      }
      Step step = step(edit, finding, known);
      if (step == null) {
        return null;
      }
      replacements.add(step.replacement());
      anchors.addAll(step.anchors());
    }
    List<Replacement> merged = merged(replacements);
    return merged.isEmpty()
        ? null
        : new Fix(draft.kind(), draft.description() + shared(anchors), merged);
  }

  private static String shared(Set<String> anchors) {
    if (anchors.contains("")) {
      return ", in the defaults for all units that take it from there";
    }
    return anchors.isEmpty()
        ? ""
        : ", at the anchor &" + String.join(" and &", anchors) + " for all that use it";
  }

  private @Nullable Step step(Edit edit, Finding finding, Parts known) {
    Target target = known.target(edit);
    if (target == null) {
      return null;
    }
    Set<Region> users = new HashSet<>(known.written().users(target.region()));
    boolean isDefault = known.written().isDefault(target.region());
    if (isDefault && !target.user().equals(target.region())) {
      users.remove(target.region()); // where it is written, nobody uses it
    }
    if (users.equals(Set.of(target.user()))
        || (isDefault && target.user().equals(target.region()))) {
      return target.replacement() == null ? null : new Step(target.replacement(), Set.of());
    }
    ProposedEdits.Users agreeing =
        known.proposed().users(finding.rule(), edit, target.region(), known::target);
    if (agreeing.regions().containsAll(users)) {
      return target.replacement() == null
          ? null
          : new Step(target.replacement(), agreeing.anchors());
    }
    return insteadOfAlias(edit, target, known);
  }

  /** Whether a key to be added is there, misspelt: its value is the one that was meant. */
  private static boolean isThereMisspelt(Edit.AddKeys added, Parts known) {
    Mapping mapping = known.written().mapping(added.at());
    return mapping != null
        && mapping.entries().stream()
            .anyMatch(entry -> known.proposed().hasOneOf(added.keys(), entry.key().region()));
  }

  /** An alias that is the whole value is replaced by the new value; the anchor stays. */
  private static @Nullable Step insteadOfAlias(Edit edit, Target target, Parts known) {
    Alias alias = known.written().alias(edit.at().region());
    boolean direct =
        alias != null
            && alias.target().region().equals(target.region())
            && known.written().users(alias.region()).equals(Set.of(alias.region()));
    return direct && edit instanceof Edit.Write write
        ? new Step(EditWriter.insteadOfAlias(edit.at().region(), write), Set.of())
        : null;
  }

  /** In the order of the file, insertions at one place as one; none where two are in conflict. */
  private List<Replacement> merged(Set<Replacement> replacements) {
    List<Replacement> sorted = new ArrayList<>(replacements);
    sorted.sort(Comparator.comparing(Replacement::region));
    List<Replacement> merged = new ArrayList<>();
    for (Replacement next : sorted) {
      Replacement last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
      if (last != null && last.region().equals(next.region()) && isInsertion(next)) {
        merged.set(merged.size() - 1, new Replacement(last.region(), last.text() + next.text()));
      } else if (last != null && Splice.touch(last.region(), next.region())) {
        return List.of();
      } else {
        merged.add(next);
      }
    }
    return merged;
  }

  private static boolean isInsertion(Replacement replacement) {
    Region region = replacement.region();
    return region.startLine() == region.endLine() && region.startColumn() == region.endColumn();
  }
}
