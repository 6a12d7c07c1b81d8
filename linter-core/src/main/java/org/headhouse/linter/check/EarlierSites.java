package org.headhouse.linter.check;

import java.util.List;
import java.util.Map;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.InputFile;
import org.jspecify.annotations.Nullable;

/** The sites of an earlier state of the repository. Safe for use by several threads. */
@FunctionalInterface
public interface EarlierSites {
  /** No earlier state is known. */
  EarlierSites NONE = later -> null;

  /** No earlier state is known, and any line may have been in operation. */
  EarlierSites PERHAPS_LIVE =
      new EarlierSites() {
        @Override
        public @Nullable Site of(Site later) {
          return null;
        }

        @Override
        public boolean mayHaveBeenLive(Site site) {
          return true;
        }
      };

  /** The earlier state of a site, or null where it was not there or cannot be read. */
  @Nullable Site of(Site later);

  /**
   * Why a site may have an earlier state although {@link #of} does not find one, or null where it
   * is new. Without this, rules on changes would be silent as they are about a new site.
   */
  default @Nullable Notification trouble(Site later) {
    return null;
  }

  /**
   * The state of a site that was proved last, at the earlier state or before it; null where none is
   * known. The earlier state itself may be one that was planned for a change.
   *
   * @param earlier what the site was in the earlier state, perhaps in another file
   */
  default @Nullable Site proved(Site earlier) {
    return null;
  }

  /**
   * Whether the line of a site may have been in operation at any time, though neither the file nor
   * its earlier state says so: somebody may have deleted the record long ago.
   *
   * @param site as it is, or as it was in the earlier state, perhaps in another file
   */
  default boolean mayHaveBeenLive(Site site) {
    return false;
  }

  /** What the user calls the earlier state, such as a revision. */
  default String name() {
    return "the earlier state";
  }

  /**
   * What became of the sites that no later one has the id or the file of. Nothing where not all
   * sites of the later state are looked at.
   */
  default Unfound unfound(LaterSites later) {
    return Unfound.NOTHING;
  }

  /**
   * The sites of the later state, all of them.
   *
   * @param ids of all files by their paths; empty where none can be read
   * @param strangers those that have neither the id nor the file of an earlier one
   */
  record LaterSites(Map<String, String> ids, List<InputFile> strangers) {}

  /**
   * Earlier sites of which neither the id nor the file is there any more.
   *
   * @param renamed those that are found again under another id in another file, by that file
   * @param gone the others
   * @param troubles why some of the others cannot be read
   */
  record Unfound(Map<String, Site> renamed, List<Site> gone, List<Notification> troubles) {
    /** Nothing is known. */
    public static final Unfound NOTHING = new Unfound(Map.of(), List.of(), List.of());
  }
}
