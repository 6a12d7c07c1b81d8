package org.headhouse.linter.draft;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.headhouse.linter.result.Location;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.stability.Internal;

/** Collects the faults of one list. For one thread. */
@Internal
public final class Faults {
  /** More of them have one cause, such as a file that is no list. */
  private static final int MOST = 1000;

  private static final int LONGEST_LINE = 400;
  private static final Comparator<ListFault> IN_READING_ORDER =
      Comparator.comparing(fault -> fault.location().region());

  private final SourceText source;
  private final List<ListFault> faults = new ArrayList<>();

  public Faults(SourceText source) {
    this.source = source;
  }

  /** A fault in a cell. */
  public void add(Cell cell, String fact, String reason, String remedy) {
    // Regions are counted from the start of their line, which may be very long.
    if (faults.size() < MOST) {
      Region start = source.at(cell.start());
      Region end = source.at(cell.end());
      add(
          new Region(start.startLine(), start.startColumn(), end.startLine(), end.startColumn()),
          fact,
          reason,
          remedy);
    }
  }

  /** A fault somewhere in the file. */
  public void add(Region region, String fact, String reason, String remedy) {
    if (faults.size() < MOST) {
      String line = source.line(region.startLine(), LONGEST_LINE);
      faults.add(
          new ListFault(
              new Location(source.path(), region, line), new Message(fact, reason, remedy)));
    }
  }

  public boolean isEmpty() {
    return faults.isEmpty();
  }

  /** In the order of the list. */
  public Draft.Refused refused() {
    return new Draft.Refused(faults.stream().sorted(IN_READING_ORDER).toList());
  }
}
