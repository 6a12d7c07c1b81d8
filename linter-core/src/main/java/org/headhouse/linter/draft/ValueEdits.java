package org.headhouse.linter.draft;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.headhouse.linter.fix.Fixes;
import org.headhouse.linter.fix.Splice;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.Replacement;
import org.headhouse.linter.source.SourceText;
import org.jspecify.annotations.Nullable;

/**
 * Carries out edits of one text in the style around them, round by round: what touches another edit
 * waits for the next round.
 */
final class ValueEdits {
  /** Two edits touch at most in the same item, so that few rounds are needed. */
  private static final int MOST_ROUNDS = 20;

  private static final Message MESSAGE =
      new Message("the list says otherwise", "the site follows it", "take the difference");

  private ValueEdits() {}

  /**
   * What a text shall have.
   *
   * @param what for people, such as {@code vents of "Palms"}
   */
  record Wanted(String what, List<Edit> edits) {}

  /**
   * A text after its edits.
   *
   * @param left what could not be written
   */
  record Edited(SiteFile file, List<Wanted> left) {}

  /**
   * Edits a text until nothing is wanted.
   *
   * @param wanted what is still wanted of a text
   * @param reader reads a text that was edited; null where it cannot be read any more
   */
  static Edited of(
      SiteFile file,
      Function<SiteFile, List<Wanted>> wanted,
      Function<SourceText, @Nullable SiteFile> reader) {
    SiteFile now = file;
    List<Wanted> open = wanted.apply(now);
    for (int round = 0; round < MOST_ROUNDS && !open.isEmpty(); round++) {
      List<Replacement> replacements = replacements(now, open);
      SiteFile next = replacements.isEmpty() ? null : reader.apply(spliced(now, replacements));
      if (next == null) {
        break;
      }
      now = next;
      open = wanted.apply(now);
    }
    return new Edited(now, open);
  }

  private static SourceText spliced(SiteFile file, List<Replacement> replacements) {
    byte[] bytes = Splice.apply(file.source().text().getBytes(UTF_8), replacements);
    return new SourceText(file.source().path(), new String(bytes, UTF_8));
  }

  private static List<Replacement> replacements(SiteFile file, List<Wanted> open) {
    List<Finding> findings =
        open.stream()
            .map(
                one ->
                    Finding.of("list", one.edits().get(0).at(), MESSAGE)
                        .fixedBy(new FixDraft(FixKind.PROPOSED, one.what(), one.edits())))
            .toList();
    Fixes fixes = new Fixes(file.source(), file.root(), findings);
    List<Replacement> accepted = new ArrayList<>();
    for (Finding finding : findings) {
      Fix fix = fixes.of(finding);
      if (fix != null && isApart(fix, accepted)) {
        accepted.addAll(fix.replacements());
      }
    }
    return accepted;
  }

  private static boolean isApart(Fix fix, List<Replacement> accepted) {
    return fix.replacements().stream()
        .noneMatch(
            one -> accepted.stream().anyMatch(other -> Splice.touch(one.region(), other.region())));
  }

  /** One thing that a text shall have, where there is an edit for it. */
  static List<Wanted> wanted(String what, List<Edit> edits) {
    return edits.isEmpty() ? List.of() : List.of(new Wanted(what, edits));
  }
}
