package org.headhouse.linter.sheets;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.headhouse.linter.batch.FileTask;
import org.headhouse.linter.batch.OrderedExecutor;
import org.headhouse.linter.check.ExaminedFile;
import org.headhouse.linter.check.UniquenessCheck;
import org.headhouse.linter.figures.SiteFigures;
import org.headhouse.linter.materials.BillOfMaterials;
import org.headhouse.linter.proof.WholeLineProof;
import org.headhouse.linter.report.ResultCounts;
import org.headhouse.linter.report.SheetFile;
import org.headhouse.linter.report.SheetReport;
import org.headhouse.linter.report.SheetRequest;
import org.headhouse.linter.report.SiteMaterials;
import org.headhouse.linter.report.SiteSheet;
import org.headhouse.linter.report.sheet.IndexFacts;
import org.headhouse.linter.report.sheet.IndexPage;
import org.headhouse.linter.report.sheet.IndexRow;
import org.headhouse.linter.report.sheet.PageNames;
import org.headhouse.linter.report.sheet.Provenance;
import org.headhouse.linter.report.sheet.SheetSettings;
import org.headhouse.linter.report.sheet.SiteFacts;
import org.headhouse.linter.report.sheet.SitePage;
import org.headhouse.linter.report.sheet.UnitInventory;
import org.headhouse.linter.report.sheet.ZonesCsv;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rules.commissioning.CommissioningRetestDue;
import org.headhouse.linter.settings.LinterContext;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;
import org.headhouse.linter.source.InputFile;
import org.headhouse.linter.source.Sha256;
import org.jspecify.annotations.Nullable;

/** Makes the sheets of one run: pages by several threads, names and index in the order of files. */
public final class SheetRun {
  private final LinterContext context;
  private final SheetSettings settings;
  private final SiteDrawings drawings;
  private final ProofHistories histories;
  private final BypassPlanner bypasses;
  private final SeveralSites several;
  private final @Nullable Bundles bundles;
  private final UniquenessCheck uniqueness;
  private final Consumer<SiteSheet> taker;
  private final PageNames names = new PageNames();
  private final IndexFacts index;
  private final List<Notification> notifications = new ArrayList<>();
  private final ResultCounts counts = new ResultCounts();
  private int sites;
  private int files;
  private int units;

  /**
   * @param taker gets the sheets in the order of the files
   */
  public SheetRun(LinterContext context, SheetRequest request, Consumer<SiteSheet> taker) {
    this.context = context;
    this.settings = settings(request, context);
    this.index = new IndexFacts(settings);
    this.drawings = new SiteDrawings(request.measure(), request.paper(), context.sitePolicy());
    this.histories =
        new ProofHistories(
            request.history(), context.types(), context.rules(), context.settings().limits());
    this.bypasses =
        new BypassPlanner(
            context.check(), context.sitePolicy().groundAtEveryUnit(), settings.date());
    this.several = new SeveralSites(settings);
    this.uniqueness = new UniquenessCheck(context.rules(), context.policy());
    this.bundles = request.bundles() ? new Bundles(context, settings) : null;
    this.taker = taker;
  }

  private static SheetSettings settings(SheetRequest request, LinterContext context) {
    return new SheetSettings(
        request.measure(),
        request.paper(),
        context.today(),
        context.policy().ruleSet(),
        context.rules().descriptors().stream()
            .collect(Collectors.toMap(RuleDescriptor::id, RuleDescriptor::requirement)),
        context.rules().descriptors().stream()
            .filter(rule -> isNotApplied(rule, context.policy().level(rule)))
            .map(RuleDescriptor::requirement)
            .toList(),
        context.sitePolicy(),
        context.policy().value(CommissioningRetestDue.DESCRIPTOR, CommissioningRetestDue.EVERY),
        request.slack());
  }

  /** Whether a certificate has to say that a rule is off, or that its errors count as less. */
  private static boolean isNotApplied(RuleDescriptor rule, Level level) {
    return rule.level() == Level.ERROR
        ? level != Level.ERROR
        : level == Level.NONE && rule.subject().equals("commissioning");
  }

  /** The outcome of a file; the sheets are null where it could not be read as a site. */
  private record Content(ExaminedFile file, @Nullable Made sheets) {}

  /** The sheets of a site, for a page with the name that it wants. */
  @SuppressWarnings("ArrayRecordComponent") // Never compared.
  private record Made(
      SiteFacts facts,
      byte[] source,
      byte[] html,
      byte[] zones,
      List<SheetFile> papers,
      SiteFigures figures) {}

  /**
   * Makes the sheets of files.
   *
   * @return the page over all sites, and what the tool itself has to say
   */
  public SheetReport over(Iterator<? extends InputFile> inputs) {
    try (OrderedExecutor executor = new OrderedExecutor(context.settings().threads())) {
      executor.run(
          inputs,
          (InputFile input) ->
              FileTask.run(
                  input, context.settings().limits(), (path, bytes) -> content(input, path, bytes)),
          this::take);
    }
    List<SheetFile> papers = several.files(names);
    counts.add(context.settingsResults());
    return new SheetReport(
        IndexPage.html(index, context.settingsResults(), settings),
        papers,
        bundles == null ? List.of() : bundles.all(several.covers()),
        notifications,
        sites,
        counts,
        files,
        units);
  }

  /** The page that a file has unless other files are in its way. Safe for several threads. */
  private Content content(InputFile input, String path, byte[] bytes) {
    ExaminedFile file = context.check().examine(path, bytes, settings.date());
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
            new Provenance(
                Sha256.hex(bytes),
                file.outcome().notifications().isEmpty(),
                histories.of(input, bytes, read.site())),
            bypasses.of(read.site()),
            drawings.of(read.site(), read.figures(), results),
            BillOfMaterials.of(read.site()),
            WholeLineProof.of(read.site(), settings.proofEvery()));
    String name = PageNames.wanted(read.site());
    return new Content(
        file,
        new Made(
            facts,
            bytes,
            SitePage.html(facts, name, settings),
            ZonesCsv.of(read.site()),
            SitePage.papers(facts, name, settings),
            SiteFigures.of(read.site(), read.figures())));
  }

  private void take(FileTask.Outcome<Content> draft) {
    files++;
    Notification notification = draft.notification();
    Content content = draft.value();
    if (notification != null || content == null) {
      unread(draft.path(), notification == null ? "" : notification.text(), List.of());
      if (notification != null) {
        notifications.add(notification);
      }
      return;
    }
    notifications.addAll(content.file().outcome().notifications());
    List<Result> further = uniqueness.add(content.file().outcome(), notifications);
    counts.add(content.file().outcome().results());
    counts.add(further);
    units += content.file().outcome().units();
    if (content.sheets() == null) {
      unread(draft.path(), "", content.file().outcome().results());
      notifications.add(
          new Notification(
              Level.WARNING,
              "it has no figures and no sheets: the index says why",
              draft.path(),
              null));
    } else {
      take(content.sheets(), further);
    }
  }

  /**
   * Sheets go to the site: they say that another file has the same, and not whose it is. The check
   * of all files names it.
   */
  private Result withoutOtherFile(Result clash) {
    return new Result(
        clash.rule(),
        clash.level(),
        new Message(
            "the file and another one of this run break a rule on all files",
            settings.requirements().getOrDefault(clash.rule(), clash.rule()),
            "run the check of all files: it names the other one"),
        clash.location(),
        clash.logical(),
        clash.unit(),
        List.of(),
        clash.suppression(),
        clash.identities(),
        clash.state(),
        clash.fix());
  }

  private void unread(String path, String reason, List<Result> results) {
    index.add(IndexRow.unread(path, "not readable", reason, results));
  }

  /**
   * Makes the page again where another file has its name, or one of its results is about another
   * file.
   */
  private void take(Made made, List<Result> further) {
    SiteFacts draft = made.facts();
    String wanted = PageNames.wanted(draft.site());
    String name = names.take(wanted);
    List<Result> results = new ArrayList<>(draft.results());
    further.forEach(clash -> results.add(withoutOtherFile(clash)));
    results.sort(Result.ORDER);
    SiteFacts facts =
        further.isEmpty()
            ? draft
            : draft.with(results, drawings.of(draft.site(), draft.figures(), results));
    boolean isAsDrafted = name.equals(wanted) && further.isEmpty();
    index.add(facts, name);
    several.add(facts, name);
    sites++;
    Site site = facts.site();
    SiteSheet sheet =
        new SiteSheet(
            PageNames.page(name),
            isAsDrafted ? made.html() : SitePage.html(facts, name, settings),
            PageNames.zones(name),
            made.zones(),
            isAsDrafted ? made.papers() : SitePage.papers(facts, name, settings),
            made.figures(),
            UnitInventory.of(facts, settings),
            new SiteMaterials(
                site.customer().or(""),
                site.id().or(site.source().path()),
                site.stage().optional().map(Stage::word).orElse(""),
                facts.materials()));
    if (bundles != null) {
      bundles.add(facts, name, sheet, made.source());
    }
    taker.accept(sheet);
  }
}
