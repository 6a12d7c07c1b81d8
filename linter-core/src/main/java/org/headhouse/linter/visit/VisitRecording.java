package org.headhouse.linter.visit;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.draft.Faults;
import org.headhouse.linter.draft.ListBytes;
import org.headhouse.linter.draft.SiteUpdate;
import org.headhouse.linter.fix.Splice;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.source.Utf8;
import org.jspecify.annotations.Nullable;

/**
 * Adds what was found on visits to the record of a site: the oldest visit begins the record where
 * there is none, and each other one renews it. All else of the site stays as it is.
 */
public final class VisitRecording {
  /** What renews a record where nobody says why. */
  private static final String REASON = "visit";

  private final DeviceTypes types;
  private final Limits limits;

  public VisitRecording(DeviceTypes types, Limits limits) {
    this.types = types;
    this.limits = limits;
  }

  /** The id of the site that a list is of, or the path of its file; null where it says none. */
  public @Nullable String site(String listPath, byte[] list) {
    ListBytes.Read read = ListBytes.read(listPath, Utf16.inUtf8(list), limits);
    return read.refused() == null
        ? VisitReader.site(read.source(), new Faults(read.source()))
        : null;
  }

  /**
   * What a list adds to a site; whatever the bytes, this returns.
   *
   * @param listPath how the list is called in faults
   * @param sitePath how the site is called in faults
   */
  public SiteUpdate record(String listPath, byte[] list, String sitePath, byte[] bytes) {
    ListBytes.Read read = ListBytes.read(listPath, Utf16.inUtf8(list), limits);
    if (read.refused() != null) {
      return new SiteUpdate.Refused(read.refused().faults());
    }
    VisitedSite site = site(sitePath, bytes, bytes.length);
    if (site == null || site.site().items().isEmpty()) {
      Faults ofList = new Faults(read.source());
      VisitReader.site(read.source(), ofList);
      if (!ofList.isEmpty()) {
        return refused(ofList);
      }
      Faults faults = new Faults(new SourceText(sitePath, ""));
      faults.add(
          Region.START_OF_FILE,
          "the site cannot be read",
          "nobody can tell what the list adds to it",
          "check it first, and correct what the check reports");
      return refused(faults);
    }
    Faults faults = new Faults(read.source());
    VisitList rows = VisitReader.read(read.source(), site.site(), faults);
    List<NewRecord> records = new ArrayList<>();
    for (Visit visit : Visit.of(rows.rows(), faults)) {
      RecordComments comments = RecordComments.of(visit, site);
      records.add(NewRecord.of(visit, site, comments::have, faults));
    }
    return faults.isEmpty() ? record(rows, records, site, bytes) : refused(faults);
  }

  private @Nullable VisitedSite site(String path, byte[] bytes, int length) {
    return length <= limits.bytes() && Utf8.decode(path, bytes) instanceof Utf8.Decoded.Text decoded
        ? VisitedSite.of(decoded.text(), types, limits)
        : null;
  }

  private static SiteUpdate refused(Faults faults) {
    return new SiteUpdate.Refused(faults.refused().faults());
  }

  private SiteUpdate record(
      VisitList list, List<NewRecord> records, VisitedSite site, byte[] before) {
    List<RecordText> texts = texts(list, records, site);
    List<String> open =
        records.stream()
            .filter(record -> !record.isWritten())
            .flatMap(record -> record.open().stream())
            .toList();
    byte[] after = before.clone();
    if (!texts.isEmpty() || !open.isEmpty()) {
      Faults faults = new Faults(site.source());
      RecordPlace place = RecordPlace.of(site, faults);
      if (place == null) {
        return refused(faults);
      }
      after = Splice.apply(before, List.of(place.insertion(open, texts)));
      VisitedSite added = site(site.source().path(), after, before.length);
      if (added == null || !PlainTree.ofMapping(added.root()).equals(place.content(texts))) {
        faults.add(
            Region.START_OF_FILE,
            "the record cannot be added to this file",
            "the lines around its place would mean something else",
            "write the record by hand, and report the file");
        return refused(faults);
      }
    }
    return new SiteUpdate.Made(
        list.site(),
        site.source().path(),
        before.clone(),
        after,
        VisitRemarks.of(list, records, site));
  }

  private static List<RecordText> texts(VisitList list, List<NewRecord> records, VisitedSite site) {
    List<RecordText> texts = new ArrayList<>();
    boolean begins = site.record() == null;
    for (NewRecord record : records) {
      if (record.isWritten() && begins) {
        List<String> notes = list.reason().isEmpty() ? List.of() : List.of(list.reason());
        texts.add(RecordText.first(record, notes, site.site().head()));
        begins = false;
      } else if (record.isWritten()) {
        String reason = list.reason().isEmpty() ? REASON : list.reason();
        texts.add(RecordText.renewed(record, reason, site.site().head()));
      }
    }
    return texts;
  }
}
