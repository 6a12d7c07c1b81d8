package org.headhouse.linter;

import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.function.Consumer;
import org.headhouse.linter.check.ExaminedFile;
import org.headhouse.linter.check.SiteCheck;
import org.headhouse.linter.figures.SiteFigures;
import org.headhouse.linter.report.sheet.IndexPage;
import org.headhouse.linter.report.sheet.IndexRow;
import org.headhouse.linter.report.sheet.PageNames;
import org.headhouse.linter.report.sheet.SheetSettings;
import org.headhouse.linter.report.sheet.SiteFacts;
import org.headhouse.linter.report.sheet.SitePage;
import org.headhouse.linter.report.sheet.ZonesCsv;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.Sha256;
import org.jspecify.annotations.Nullable;

/** Makes the sheets of one run: pages by several threads, names and index in the order of files. */
final class SheetRun {
  private static final int REVISION_DIGITS = 12;

  private final SiteCheck check;
  private final SheetSettings settings;
  private final SiteDrawings drawings;
  private final GuardedClashes clashes;
  private final Consumer<SiteSheet> taker;
  private final PageNames names = new PageNames();
  private final List<IndexRow> rows = new ArrayList<>();
  private final List<Notification> notifications = new ArrayList<>();
  private int sites;

  SheetRun(
      SiteCheck check,
      SheetSettings settings,
      SiteDrawings drawings,
      GuardedClashes clashes,
      Consumer<SiteSheet> taker) {
    this.check = check;
    this.settings = settings;
    this.drawings = drawings;
    this.clashes = clashes;
    this.taker = taker;
  }

  /** A file with the page that it has unless other files are in its way. */
  record Draft(SiteInput input, SingleFile.Attempt<Content> attempt) {}

  /** What a file came to; the sheets are null where it could not be read as a site. */
  record Content(ExaminedFile file, @Nullable Made sheets) {}

  /** The sheets of a site, for a page with the name that it wants. */
  @SuppressWarnings("ArrayRecordComponent") // Never compared.
  record Made(SiteFacts facts, byte[] html, byte[] zones, SiteFigures figures) {}

  /** Safe for several threads. */
  Draft draft(SiteInput input, Limits limits) {
    return new Draft(input, SingleFile.attempt(input, limits, this::content));
  }

  private Content content(String path, byte[] bytes) {
    ExaminedFile file = check.examine(path, bytes, settings.date());
    ExaminedFile.ReadSite read = file.site();
    if (read == null) {
      return new Content(file, null);
    }
    List<Result> results = file.outcome().results();
    SiteFacts facts =
        new SiteFacts(
            read.site(),
            read.figures(),
            results,
            revision(bytes),
            drawings.of(read.site(), read.figures(), results));
    return new Content(
        file,
        new Made(
            facts,
            SitePage.html(facts, PageNames.wanted(read.site()), settings),
            ZonesCsv.of(read.site()),
            SiteFigures.of(read.site(), read.figures())));
  }

  /** Enough of the SHA-256 of the content to tell it from any other. */
  private static String revision(byte[] bytes) {
    return HexFormat.of().formatHex(Sha256.of(bytes)).substring(0, REVISION_DIGITS);
  }

  void take(Draft draft) {
    Notification trouble = draft.attempt().trouble();
    Content content = draft.attempt().outcome();
    if (trouble != null || content == null) {
      unread(draft.input().path(), trouble == null ? "" : trouble.text(), List.of());
      if (trouble != null) {
        notifications.add(trouble);
      }
      return;
    }
    notifications.addAll(content.file().outcome().notifications());
    List<Result> further = clashes.of(content.file().outcome(), notifications);
    if (content.sheets() == null) {
      unread(draft.input().path(), "", content.file().outcome().results());
      notifications.add(
          new Notification(
              Level.WARNING,
              "it has no figures and no sheets: the index tells why",
              draft.input().path(),
              null));
    } else {
      take(content.sheets(), further);
    }
  }

  private void unread(String path, String trouble, List<Result> results) {
    rows.add(IndexRow.unread(path, "not readable", trouble, results));
  }

  /** Makes the page anew where another file has its name, or is what a result is about. */
  private void take(Made made, List<Result> further) {
    SiteFacts draft = made.facts();
    String wanted = PageNames.wanted(draft.site());
    String name = names.take(wanted);
    List<Result> results = new ArrayList<>(draft.results());
    results.addAll(further);
    results.sort(Result.ORDER);
    SiteFacts facts =
        new SiteFacts(
            draft.site(),
            draft.figures(),
            results,
            draft.revision(),
            further.isEmpty()
                ? draft.drawings()
                : drawings.of(draft.site(), draft.figures(), results));
    boolean asDrafted = name.equals(wanted) && further.isEmpty();
    rows.add(IndexRow.of(facts, name));
    sites++;
    taker.accept(
        new SiteSheet(
            PageNames.page(name),
            asDrafted ? made.html() : SitePage.html(facts, name, settings),
            PageNames.zones(name),
            made.zones(),
            made.figures()));
  }

  SheetReport report(List<Result> settingsResults) {
    return new SheetReport(IndexPage.html(rows, settingsResults, settings), notifications, sites);
  }
}
