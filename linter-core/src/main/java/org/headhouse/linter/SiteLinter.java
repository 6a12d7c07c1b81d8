package org.headhouse.linter;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.headhouse.linter.baseline.BaselineSelection;
import org.headhouse.linter.batch.CheckRun;
import org.headhouse.linter.batch.DiagnosisRun;
import org.headhouse.linter.batch.FiguresRun;
import org.headhouse.linter.batch.FixRun;
import org.headhouse.linter.change.SiteChange;
import org.headhouse.linter.check.CleanFiles;
import org.headhouse.linter.check.EarlierSites;
import org.headhouse.linter.check.ExaminedFile;
import org.headhouse.linter.check.FileOutcome;
import org.headhouse.linter.check.LibraryTrial;
import org.headhouse.linter.check.ReadingsText;
import org.headhouse.linter.diagnosis.SiteDiagnosis;
import org.headhouse.linter.draft.Draft;
import org.headhouse.linter.draft.DraftSettings;
import org.headhouse.linter.draft.SiteUpdate;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.SiteFigures;
import org.headhouse.linter.materials.Slack;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.report.SheetReport;
import org.headhouse.linter.report.SheetRequest;
import org.headhouse.linter.report.SiteHistory;
import org.headhouse.linter.report.SiteSheet;
import org.headhouse.linter.repository.AllEarlierSites;
import org.headhouse.linter.repository.NamedEarlierSites;
import org.headhouse.linter.repository.SiteChanges;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.FixedSite;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.rule.Rule;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rules.RulePages;
import org.headhouse.linter.schema.FileKind;
import org.headhouse.linter.schema.PublishedSchemas;
import org.headhouse.linter.settings.LinterContext;
import org.headhouse.linter.settings.LinterSettings;
import org.headhouse.linter.sheets.SheetRun;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * Checks site definitions.
 *
 * <pre>{@code
 * SiteLinter linter = SiteLinter.builder().deviceTypes(Path.of("device-types.yaml")).build();
 * CheckReport report = linter.checkFiles(List.of(Path.of("sites/alder-brook.yaml")));
 * report.at(Level.WARNING).forEach(result -> System.out.println(result.message()));
 * boolean passed = report.passes(Level.ERROR);
 * }</pre>
 *
 * <p>A linter is immutable and safe for use by several threads. It prints nothing, keeps no sites,
 * and gives the same report whatever the number of threads.
 */
public final class SiteLinter {
  private final LinterContext context;

  private SiteLinter(LinterContext context) {
    this.context = context;
  }

  /** Starts the settings of a linter. */
  public static Builder builder() {
    return new Builder();
  }

  /** The rules that this linter knows. */
  public List<RuleDescriptor> rules() {
    return context.rules().descriptors();
  }

  /** The page of one of the rules, in Markdown; empty where it has none. */
  public Optional<String> page(String ruleId) {
    Rule rule = context.rules().rule(ruleId);
    return rule == null
        ? Optional.empty()
        : RulePages.text(ruleId).or(() -> RulePages.beside(rule.getClass(), ruleId));
  }

  /** The file of the baseline, given to the builder or named by the policy, or empty. */
  public Optional<Path> baselineFile() {
    return Optional.ofNullable(context.baselineFile());
  }

  /** The types of device that are known. */
  @Internal
  public DeviceTypes deviceTypes() {
    return context.types();
  }

  /**
   * Reads one file or text without checking it.
   *
   * @return null where it cannot be read as YAML
   * @throws IOException where it cannot be read at all
   */
  @Internal
  public ExaminedFile.@Nullable ReadSite read(SiteInput input) throws IOException {
    return context.check().read(input.path(), input.bytes(context.settings().limits()));
  }

  /**
   * Reads the site of one file or text without checking it. Each value has its place; one that is
   * missing or not understood is missing.
   *
   * @return empty where it cannot be read as YAML
   * @throws IOException where it cannot be read at all
   */
  public Optional<Site> site(SiteInput input) throws IOException {
    return Optional.ofNullable(read(input)).map(ExaminedFile.ReadSite::site);
  }

  /**
   * The published JSON Schemas, by the names of their files: those of a site, of the device types
   * and of the policy.
   */
  public static Map<String, String> schemas() {
    Map<String, String> schemas = new TreeMap<>();
    for (FileKind kind : FileKind.values()) {
      schemas.put(kind.schemaFile(), PublishedSchemas.text(kind));
    }
    return schemas;
  }

  /** Checks one text. */
  public CheckReport checkText(String name, String text) {
    return check(Stream.of(SiteInput.text(name, text)));
  }

  /** Checks files. */
  public CheckReport checkFiles(List<Path> files) {
    return check(files.stream().map(SiteInput::file));
  }

  /**
   * Checks a stream of files or texts. They are read as their turn comes; a file that cannot be
   * read is a notification, and the others are checked. The stream is left open.
   *
   * @throws IllegalStateException where the thread is interrupted, which it then still is
   */
  public CheckReport check(Stream<SiteInput> inputs) {
    return check(inputs, files -> {});
  }

  /**
   * Checks a stream of files or texts, and reports how far it is.
   *
   * @param progress gets the number of files that are checked, on the calling thread
   * @throws IllegalStateException where the thread is interrupted, which it then still is
   */
  public CheckReport check(Stream<SiteInput> inputs, IntConsumer progress) {
    return checkAll(inputs, (files, outcome) -> progress.accept(files));
  }

  /**
   * Checks a stream of files or texts, and hands on what is found in each as soon as it is checked.
   * The results of policy and device types are in the report at the end, as is what comes of
   * comparing sites with each other, with a baseline, and with an earlier state: it alone says
   * whether the whole passes.
   *
   * @param taker gets the path of each input and the report on it alone, in the order of the
   *     inputs, on the calling thread
   * @throws IllegalStateException where the thread is interrupted, which it then still is
   */
  public CheckReport checkEach(Stream<SiteInput> inputs, BiConsumer<String, CheckReport> taker) {
    return checkAll(
        inputs, (files, outcome) -> taker.accept(outcome.path(), CheckReport.of(context, outcome)));
  }

  private CheckReport checkAll(Stream<SiteInput> inputs, CheckRun.Progress progress) {
    LocalDate today = context.today();
    CleanFiles clean = context.cleanFiles(today);
    return CheckReport.of(
        context,
        new CheckRun(context)
            .over(
                inputs.iterator(), (path, bytes) -> outcome(path, bytes, today, clean), progress));
  }

  private FileOutcome outcome(
      String path, byte[] bytes, LocalDate today, @Nullable CleanFiles clean) {
    Supplier<FileOutcome> check = () -> context.check().check(path, bytes, today);
    return clean == null ? check.get() : clean.outcome(path, bytes, check);
  }

  /**
   * Checks a part of the files, for {@link #join}, which may happen in another process.
   *
   * @throws IllegalStateException where this linter compares sites with an earlier state, which
   *     needs all of them; or where the thread is interrupted, which it then still is
   */
  public ReportPart checkPart(Stream<SiteInput> inputs) {
    return ReportPart.of(context, inputs);
  }

  /**
   * Puts parts together: the very report of one check of all files in the order of the parts, rules
   * over all sites and the baseline of this linter included. A part that is lost on the way is not
   * noticed: {@link #join(List, int)} does that.
   *
   * @throws IllegalArgumentException where a part was checked by a linter of another version, or
   *     with other rules, policy, device types or limits than this one, or on another day
   * @throws IllegalStateException where this linter compares sites with an earlier state, which the
   *     parts were not
   */
  public CheckReport join(List<ReportPart> parts) {
    return CheckReport.of(context, ReportPart.joined(context, parts));
  }

  /**
   * Puts parts together, and checks that they have each site exactly once; if not, the report has a
   * failure and does not pass.
   *
   * @param files how many sites were divided into parts
   * @throws IllegalArgumentException as {@link #join(List)}
   * @throws IllegalStateException as {@link #join(List)}
   */
  public CheckReport join(List<ReportPart> parts, int files) {
    return join(parts).with(ReportPart.lost(parts, files));
  }

  /**
   * Computes the figures of a stream of files or texts, without checking them. What is missing in a
   * site or not understood leaves out the figures that need it; a file that cannot be read as YAML
   * has none at all.
   *
   * @param taker gets the figures in the order of the files
   * @return what kept files from having figures
   * @throws IllegalStateException where the thread is interrupted, which it then still is
   */
  public List<Notification> figures(Stream<SiteInput> inputs, Consumer<SiteFigures> taker) {
    return new FiguresRun(context).over(inputs.iterator(), taker);
  }

  /**
   * Compares the readings of a stream of files or texts with what each single fault would make a
   * meter show: those as found, else those of the latest record. The files are not checked.
   *
   * @param taker gets the diagnoses in the order of the files, of sites without readings as well
   * @return what kept files from having one
   * @throws IllegalStateException where the thread is interrupted, which it then still is
   */
  public List<Notification> diagnose(Stream<SiteInput> inputs, Consumer<SiteDiagnosis> taker) {
    return new DiagnosisRun(context, null).over(inputs.iterator(), taker);
  }

  /**
   * The same with readings that are not in the files.
   *
   * @param readings as a file has them under {@code as-found}: a list in either form of YAML
   * @throws IllegalArgumentException where the readings are not understood
   */
  public List<Notification> diagnose(
      Stream<SiteInput> inputs, String readings, Consumer<SiteDiagnosis> taker) {
    return new DiagnosisRun(context, ReadingsText.readings(readings))
        .over(inputs.iterator(), taker);
  }

  /**
   * Fixes a stream of files or texts as far as possible: with fixes of a kind and those that are
   * safer, until nothing more can be fixed, and so that no new result is left. Nothing is written.
   *
   * @param taker gets the outcome in the order of the files
   * @return what kept files from being looked at
   * @throws IllegalStateException where the thread is interrupted, which it then still is
   */
  public List<Notification> fix(
      Stream<SiteInput> inputs, FixKind asked, Consumer<FixedSite> taker) {
    return new FixRun(context, asked).over(inputs.iterator(), taker);
  }

  /**
   * Makes the text of a site of a list of units: comma-separated values in UTF-8, with a heading
   * row and then one row for each unit, head unit first.
   *
   * @throws IOException where the list cannot be read; what is wrong inside it is in the draft
   */
  public Draft draft(SiteInput list, DraftSettings settings) throws IOException {
    return context.drafting(settings).draft(list.path(), list.bytes(context.settings().limits()));
  }

  /**
   * Brings a site up to date with a list of its units: what the list says otherwise is changed
   * where it is written, items join, leave and move, and all else stays. Nothing is written.
   *
   * @throws IOException where one of the two cannot be read; what is wrong inside them is in the
   *     result
   */
  public SiteUpdate update(SiteInput list, SiteInput site) throws IOException {
    Limits limits = context.settings().limits();
    return context
        .updating()
        .update(list.path(), list.bytes(limits), site.path(), site.bytes(limits));
  }

  /**
   * Adds what was found on visits to the record of a site: a list as the goal report writes it,
   * filled in, in UTF-8 or UTF-16. A blank is nothing that was seen. All else of the site stays,
   * and nothing is written.
   *
   * @throws IOException where one of the two cannot be read; what is wrong inside them is in the
   *     result
   */
  public SiteUpdate visit(SiteInput visit, SiteInput site) throws IOException {
    Limits limits = context.settings().limits();
    return context
        .recording()
        .record(visit.path(), visit.bytes(limits), site.path(), site.bytes(limits));
  }

  /** The id of the site that such a list is of, or the path of its file; empty if it says none. */
  public Optional<String> siteOfVisit(SiteInput visit) throws IOException {
    return Optional.ofNullable(
        context.recording().site(visit.path(), visit.bytes(context.settings().limits())));
  }

  /**
   * Compares two states of a repository. A site is found again by its id, even in another file,
   * then by its file. No step of the field work uses an address that the policy keeps free, not
   * even for a moment.
   *
   * @return the changes in the order of the later state, then what is gone
   */
  public List<SiteChange> changes(SiteState before, SiteState after) {
    return new SiteChanges(before, after, context.sitePolicy().keptFree()).all();
  }

  /**
   * Checks a stream of files or texts, and makes the sheets that people take to each site.
   *
   * @param measure the units that lengths are shown in
   * @param paper what the sheets are printed on
   * @param taker gets the sheets in the order of the files; none is kept
   * @return the page over all sites, and what the tool itself could not do
   * @throws IllegalStateException where the thread is interrupted, which it then still is
   */
  public SheetReport sheets(
      Stream<SiteInput> inputs, Measure measure, Paper paper, Consumer<SiteSheet> taker) {
    return sheets(inputs, measure, paper, Slack.USUAL, taker);
  }

  /**
   * The same with another slack of cable.
   *
   * @param slack the cable that is ordered beyond the measured lengths
   */
  public SheetReport sheets(
      Stream<SiteInput> inputs,
      Measure measure,
      Paper paper,
      Slack slack,
      Consumer<SiteSheet> taker) {
    return sheets(inputs, new SheetRequest(measure, paper, slack, SiteHistory.NONE, false), taker);
  }

  /** The same with what the history of the files says, and with bundles where they are wanted. */
  @Internal
  public SheetReport sheets(
      Stream<SiteInput> inputs, SheetRequest request, Consumer<SiteSheet> taker) {
    return new SheetRun(context, request, taker).over(inputs.iterator());
  }

  /** The settings of a linter; each has a default. */
  public static final class Builder {
    /** More threads than a machine has processors. */
    private static final int MOST_THREADS = 1024;

    private @Nullable SiteInput policy;
    private @Nullable SiteInput deviceTypes;
    private int threads = 1;
    private Limits limits = Limits.DEFAULT;
    private Clock clock = Clock.system(ZoneId.systemDefault());
    private @Nullable ClassLoader otherJars;
    private final List<Rule> extraRules = new ArrayList<>();
    private BaselineSelection baseline = BaselineSelection.NAMED_BY_POLICY;
    private EarlierSites earlier = EarlierSites.NONE;
    private @Nullable Function<String, CleanFiles> cleanFiles;
    private @Nullable Predicate<String> withoutLines;
    private boolean trying = true;

    private Builder() {}

    /** The policy; without one, every rule has its own level. */
    public Builder policy(Path file) {
      return policy(SiteInput.file(file));
    }

    /** The policy, from anywhere. */
    public Builder policy(SiteInput input) {
      this.policy = input;
      return this;
    }

    /** The types of device; without them, rules that need them stay silent. */
    public Builder deviceTypes(Path file) {
      return deviceTypes(SiteInput.file(file));
    }

    /** The types of device, from anywhere. */
    public Builder deviceTypes(SiteInput input) {
      this.deviceTypes = input;
      return this;
    }

    /**
     * The baseline, instead of the one that the policy names; a check then says which results are
     * new.
     */
    public Builder baseline(Path file) {
      this.baseline = baseline.in(file);
      return this;
    }

    /** Uses no baseline, whatever the policy names: all results are new. */
    public Builder withoutBaseline() {
      this.baseline = baseline.none();
      return this;
    }

    /** The folder that the paths of inputs start at; the current one by default. */
    public Builder shownFrom(Path folder) {
      this.baseline = baseline.shownFrom(folder);
      return this;
    }

    /** What rules on changes compare with; without it, they stay silent. */
    public Builder before(SiteState state) {
      this.earlier = new NamedEarlierSites(state);
      return this;
    }

    /**
     * The same where every site of the later state is checked: one whose id and file are both new
     * is then found again by what it has in common, and one that is gone is reported.
     */
    public Builder beforeAll(SiteState state) {
      this.earlier = new AllEarlierSites(state);
      return this;
    }

    /**
     * Where nobody looks at earlier states, any line may have been in operation: no fix that needs
     * work on site is safe.
     */
    @Internal
    public Builder perhapsLive() {
      this.earlier = EarlierSites.PERHAPS_LIVE;
      return this;
    }

    /**
     * What a check knows of files that an earlier one found clean, by all else that an outcome
     * depends on but the code. Not used with rules besides those that are built in, nor where the
     * linter compares with an earlier state.
     */
    @Internal
    public Builder cleanFiles(Function<String, CleanFiles> byValidity) {
      this.cleanFiles = byValidity;
      return this;
    }

    /** The files of which no result has a line of text, as they are called in results. */
    @Internal
    public Builder withoutLinesOf(Predicate<String> files) {
      this.withoutLines = files;
      return this;
    }

    /**
     * Leaves out the trial of the libraries, for a program whose jar has all of them in it: a check
     * that finds nothing then does not load the schema's validator.
     */
    @Internal
    public Builder withoutTrial() {
      this.trying = false;
      return this;
    }

    /** How many files are worked on at a time; 1 by default, and never more than is of use. */
    public Builder threads(int number) {
      if (number < 1) {
        throw new IllegalArgumentException("the number of threads must be at least 1");
      }
      this.threads = Math.min(number, MOST_THREADS);
      return this;
    }

    /** Budgets for one file. */
    public Builder limits(Limits budgets) {
      this.limits = budgets;
      return this;
    }

    /** The clock that gives the day of a check. */
    public Builder clock(Clock source) {
      this.clock = source;
      return this;
    }

    /** A rule in addition to the built-in ones. */
    public Builder rule(Rule rule) {
      extraRules.add(rule);
      return this;
    }

    /** Takes the rules that other jars offer through {@link java.util.ServiceLoader}. */
    public Builder rulesFrom(ClassLoader loader) {
      this.otherJars = loader;
      return this;
    }

    /**
     * The linter. The first call in a program tries its libraries, which takes as long as the check
     * of the first faulty file.
     *
     * @throws IOException where the policy, the device types or the baseline cannot be read; what
     *     is wrong inside the first two is a result of every check, and what is wrong inside a
     *     baseline is a {@link org.headhouse.linter.baseline.UnusableBaseline}
     * @throws IllegalArgumentException where two rules have one id, or a rule of another jar cannot
     *     be used
     * @throws IllegalStateException where a check does not work with the libraries of the program
     */
    public SiteLinter build() throws IOException {
      if (trying) {
        LibraryTrial.require();
      }
      return new SiteLinter(
          LinterContext.of(
              new LinterSettings(
                  policy,
                  deviceTypes,
                  threads,
                  limits,
                  clock,
                  otherJars,
                  extraRules,
                  baseline,
                  earlier,
                  cleanFiles,
                  withoutLines)));
    }
  }
}
