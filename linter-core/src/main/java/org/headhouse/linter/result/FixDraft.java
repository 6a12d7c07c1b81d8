package org.headhouse.linter.result;

import java.util.List;
import java.util.Objects;

/**
 * A fix as a rule means it, before it is known how it is written in the file.
 *
 * @param kind whether it follows from the rules or needs a look
 * @param description an imperative sentence without a full stop
 * @param edits made all together or not at all
 * @param onSite whether somebody has to carry it out at the line too, where that is in operation
 */
public record FixDraft(FixKind kind, String description, List<Edit> edits, boolean onSite) {

  public FixDraft {
    Objects.requireNonNull(kind, "a fix without a kind");
    Objects.requireNonNull(description, "a fix without a description");
    edits = List.copyOf(edits);
  }

  /** A fix that concerns the file only. */
  public FixDraft(FixKind kind, String description, List<Edit> edits) {
    this(kind, description, edits, false);
  }

  /** A fix that concerns the file only. */
  public static FixDraft inFile(String description, Edit... edits) {
    return new FixDraft(FixKind.SAFE, description, List.of(edits));
  }

  /**
   * A fix that follows from the rules, and that somebody has to carry out where the line stands: it
   * is only proposed where the line is or may be in operation.
   */
  public static FixDraft onSite(String description, Edit... edits) {
    return new FixDraft(FixKind.SAFE, description, List.of(edits), true);
  }

  /** The same fix for a line that is in operation: what takes work there needs a look. */
  public FixDraft whileLive() {
    return onSite ? new FixDraft(FixKind.PROPOSED, description, edits, true) : this;
  }

  /** A fix that needs a look in any case. */
  public static FixDraft proposed(String description, Edit... edits) {
    return new FixDraft(FixKind.PROPOSED, description, List.of(edits));
  }
}
