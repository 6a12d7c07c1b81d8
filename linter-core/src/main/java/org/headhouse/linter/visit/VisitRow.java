package org.headhouse.linter.visit;

import java.time.LocalDate;
import org.headhouse.linter.draft.Cell;
import org.headhouse.linter.proof.VisitEntry;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.OpenMark;
import org.headhouse.linter.site.Side;
import org.jspecify.annotations.Nullable;

/**
 * A row that somebody filled in.
 *
 * @param item at which it was
 * @param side of a repeater; else null
 * @param signature who signed; null where a remark alone has no signature
 * @param remark one line; empty for none
 * @param cell what it is asked about by: what was found, or else the remark
 */
record VisitRow(
    VisitEntry entry,
    ChainItem item,
    @Nullable Side side,
    Found found,
    @Nullable Signed signature,
    String remark,
    Cell cell) {

  /** A day, and who was there. */
  record Signed(LocalDate day, String by) {}

  /** Whether a record is made of it; a wind limit goes with the vents that shut. */
  boolean proves() {
    return entry != VisitEntry.WIND_LIMIT
        && (found == Found.Seen.YES || found instanceof Found.Value);
  }

  String name() {
    return item.name().or("");
  }

  /** The value as a site has it; null where none was measured. */
  @Nullable String value() {
    return found instanceof Found.Value value ? value.written() : null;
  }

  /** The row for people: {@code idle voltage, East Boiler Room, side out}. */
  String called() {
    return entry.words() + ", " + VisitEntry.where(name(), side);
  }

  /** What was not seen, as a comment that the check reports until somebody has dealt with it. */
  String openPoint(Signed signature) {
    return VisitReader.inOneLine(
        OpenMark.notSeen(called(), signature.day(), signature.by(), remark));
  }

  /** The row as a comment, where no record is made of it. */
  String note() {
    String value = value();
    String said = value == null ? (found == Found.Seen.NO ? "not seen" : "") : value;
    String between = said.isEmpty() || remark.isEmpty() ? "" : "; ";
    return called() + ": " + said + between + remark;
  }
}
