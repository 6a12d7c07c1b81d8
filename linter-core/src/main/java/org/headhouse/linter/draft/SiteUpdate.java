package org.headhouse.linter.draft;

import java.util.List;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.stability.Internal;

/** What a list, of units or from a visit, changes in a site that is there. */
public sealed interface SiteUpdate {

  /**
   * Something to know before the difference is taken.
   *
   * @param level a warning for what has to be looked at on site, or done by hand
   * @param text a sentence without a full stop
   */
  record Remark(Level level, String text) {}

  /**
   * The list was understood; nothing is written.
   *
   * @param site the id of the site, or the path of its file where it has none
   * @param path how the file of the site is called in results
   * @param before the bytes as they were read
   * @param after the bytes as they could be written
   */
  @SuppressWarnings("ArrayRecordComponent") // Written to a file, and never compared.
  record Made(String site, String path, byte[] before, byte[] after, List<Remark> remarks)
      implements SiteUpdate {
    @Internal
    public Made {
      remarks = List.copyOf(remarks);
    }
  }

  /**
   * The list or the site has faults, and nothing is made of them.
   *
   * @param faults at least one
   */
  record Refused(List<ListFault> faults) implements SiteUpdate {
    public Refused {
      faults = List.copyOf(faults);
      if (faults.isEmpty()) {
        throw new IllegalArgumentException("a list is not refused without a fault");
      }
    }
  }
}
