package org.headhouse.linter.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.bind.Bound;
import org.headhouse.linter.bind.SiteBinder;
import org.headhouse.linter.diagnosis.SiteDiagnoser;
import org.headhouse.linter.diagnosis.SiteDiagnosis;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.figures.SiteFigures;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Location;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.rule.ChangeRule;
import org.headhouse.linter.rule.EarlierState;
import org.headhouse.linter.rule.RepositoryRule;
import org.headhouse.linter.rule.Rule;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.FoundReading;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.yaml.Document;
import org.headhouse.linter.yaml.Node;
import org.jspecify.annotations.Nullable;

/** Checks site files one by one. Safe for use by several threads. */
public final class SiteCheck {
  private final CheckSettings setup;
  private final ParameterValues parameters;
  private final LevelAssigner levels;
  private final List<SiteRule> rules;
  private final List<ChangeRule> changeRules;
  private final List<RepositoryRule> repositoryRules;
  private final EarlierSites earlier;
  private final LazySchema schema = new LazySchema();

  /**
   * @param earlier what rules on changes compare with
   */
  public SiteCheck(CheckSettings setup, EarlierSites earlier) {
    this.earlier = earlier;
    this.setup = setup;
    this.parameters = new ParameterValues(setup.rules(), setup.policy());
    this.levels = new LevelAssigner(setup.rules(), setup.policy(), true);
    this.rules = on(setup.rules().siteRules());
    this.changeRules = on(setup.rules().changeRules());
    this.repositoryRules = on(setup.rules().repositoryRules());
  }

  private <R extends Rule> List<R> on(List<R> all) {
    return all.stream()
        .filter(rule -> setup.policy().level(setup.rules().of(rule)) != Level.NONE)
        .toList();
  }

  /**
   * Checks one file.
   *
   * @param today the day of the check
   */
  public FileOutcome check(String path, byte[] bytes, LocalDate today) {
    return examine(path, bytes, today, earlier).outcome();
  }

  /**
   * Checks one file again that is an earlier one under another id.
   *
   * @param today the day of the check
   * @param unfound says which
   */
  public FileOutcome check(
      String path, byte[] bytes, LocalDate today, EarlierSites.Unfound unfound) {
    EarlierSites found = later -> unfound.renamed().get(path);
    return examine(path, bytes, today, found).outcome();
  }

  /** The results of sites that are gone, each where its file was. */
  public List<Result> gone(EarlierSites.Unfound unfound) {
    List<Result> results = new ArrayList<>();
    for (Site site : unfound.gone()) {
      for (ChangeRule rule : changeRules) {
        Message message = rule.gone(site);
        if (message != null) {
          results.add(gone(site, setup.rules().of(rule), message));
        }
      }
    }
    return results;
  }

  private Result gone(Site site, RuleDescriptor rule, Message message) {
    return new Result(
        rule.id(),
        setup.policy().level(rule),
        message,
        new Location(site.source().path(), Region.START_OF_FILE, ""),
        "",
        null,
        List.of(),
        null);
  }

  /**
   * Checks one file, and returns the site that was read with the outcome.
   *
   * @param today the day of the check
   */
  public ExaminedFile examine(String path, byte[] bytes, LocalDate today) {
    return examine(path, bytes, today, earlier);
  }

  private ExaminedFile examine(String path, byte[] bytes, LocalDate today, EarlierSites compared) {
    Document document = SiteDocument.read(path, bytes, setup.limits());
    List<Finding> findings = new ArrayList<>(document.findings());
    var root = document.root();
    if (root == null) {
      return new ExaminedFile(
          new FileOutcome(results(document, findings), List.of(), List.of(), 0), null);
    }
    Bound<Site> bound = SiteBinder.bind(document.source(), root, setup.deviceTypes());
    List<Finding> faults = new ArrayList<>(bound.findings());
    if (bound.needsSchemaCheck()) {
      faults.addAll(TerminalWords.in(schema.get().explain(root), bound.model()));
    }
    findings.addAll(AmbiguousScalars.addTo(faults, document));
    findings.addAll(CommentCuts.of(document));
    Site site =
        isErrorForCertain(faults, bound.model())
            ? SiteBinder.withMisspelt(document.source(), root, setup.deviceTypes())
            : bound.model();
    Site before = compared.of(site);
    // A site that is found under another id is of the same state as the others.
    EarlierState state = before == null ? null : new EarlierState(before, earlier.name());
    Notification trouble = before == null ? compared.trouble(site) : null;
    boolean known = trouble == null && MainParts.areKnown(root, document.findings(), faults);
    RuleRun run =
        new RuleRun(
            site,
            known,
            state,
            () -> mayHaveBeenLive(before, site, compared),
            setup,
            parameters,
            today);
    for (SiteRule rule : rules) {
      run.run(rule);
    }
    if (before != null) {
      Site proved = proved(before, site, compared);
      changeRules.forEach(rule -> run.run(rule, rule.asksForProofs() ? proved : before));
    }
    findings.addAll(run.findings());
    findings.addAll(OpenPoints.of(document, site));
    Suppressions suppressions = new Suppressions(site, setup.rules(), today, before != null);
    List<FileOutcome.Key> keys = keys(site, root, run, suppressions);
    List<Notification> notifications = new ArrayList<>(run.notifications());
    if (trouble != null) {
      notifications.add(trouble);
    }
    if (bound.needsSchemaCheck() && faults.isEmpty()) {
      notifications.add(
          new Notification(
              Level.ERROR, "a value was not understood, and the schema accepts it", path, null));
    }
    return new ExaminedFile(
        new FileOutcome(
            suppressed(document, findings, suppressions),
            notifications,
            keys,
            site.units().size(),
            site.id().orNull(),
            compared != EarlierSites.NONE && before == null),
        new ExaminedFile.ReadSite(site, run.figures()));
  }

  /**
   * What a commissioned site was when it was proved last: the earlier state, or one before that
   * where it was planned for the change that is done now.
   */
  private static Site proved(Site before, Site site, EarlierSites compared) {
    Site proved =
        !before.stage().is(Stage.COMMISSIONED) && site.stage().is(Stage.COMMISSIONED)
            ? compared.proved(before)
            : null;
    return proved == null ? before : proved;
  }

  /** The history of a file that somebody moves ends where it was: no revision has the new place. */
  private static boolean mayHaveBeenLive(@Nullable Site before, Site site, EarlierSites compared) {
    return compared.mayHaveBeenLive(site) || (before != null && compared.mayHaveBeenLive(before));
  }

  /** Whether keys are not known, and that fails whatever the site accepts. */
  private boolean isErrorForCertain(List<Finding> faults, Site site) {
    RuleDescriptor rule = setup.rules().get(LevelAssigner.UNKNOWN_KEY);
    return rule != null
        && faults.stream().anyMatch(fault -> fault.rule().equals(rule.id()) && fault.fix() != null)
        && setup.policy().level(rule) == Level.ERROR
        && site.suppressions().stream().noneMatch(entry -> entry.rule().is(rule.id()));
  }

  /**
   * What the rules find in a site that is put together rather than read, such as a line with a unit
   * taken off. Places are those of the site that it was made of.
   *
   * @param today the day of the check
   */
  public List<Finding> findings(Site site, LocalDate today) {
    RuleRun run = new RuleRun(site, true, null, () -> false, setup, parameters, today);
    rules.forEach(run::run);
    return List.copyOf(run.findings());
  }

  /** The site in one file with its figures, or null where the file cannot be read as YAML. */
  public ExaminedFile.@Nullable ReadSite read(String path, byte[] bytes) {
    Site site = site(path, bytes);
    return site == null
        ? null
        : new ExaminedFile.ReadSite(site, new LineFigures(site, setup.sitePolicy()));
  }

  /** The figures of the site in one file, or null where the file cannot be read as YAML. */
  public @Nullable SiteFigures figures(String path, byte[] bytes) {
    Site site = site(path, bytes);
    return site == null ? null : SiteFigures.of(site, setup.sitePolicy());
  }

  /**
   * What readings say of the site in one file, or null where the file cannot be read as YAML.
   *
   * @param readings that count in place of those of the file; null for those of the file
   */
  public @Nullable SiteDiagnosis diagnosis(
      String path, byte[] bytes, @Nullable List<FoundReading> readings) {
    Site site = site(path, bytes);
    return site == null ? null : SiteDiagnoser.diagnose(site, setup.sitePolicy(), readings);
  }

  private @Nullable Site site(String path, byte[] bytes) {
    return new SiteReader(setup.deviceTypes(), setup.limits()).read(path, bytes);
  }

  private List<Result> suppressed(
      Document document, List<Finding> findings, Suppressions suppressions) {
    if (findings.isEmpty() && suppressions.isEmpty()) {
      return List.of();
    }
    List<Result> results = results(document, findings);
    if (suppressions.isEmpty()) {
      return results;
    }
    results.replaceAll(suppressions::apply);
    results.addAll(results(document, List.copyOf(suppressions.findings())));
    results.sort(Result.ORDER);
    return results;
  }

  private List<Result> results(Document document, List<Finding> findings) {
    Locations locations = new Locations(document.source(), document.root(), findings);
    return levels.results(findings, locations);
  }

  private List<FileOutcome.Key> keys(
      Site site, Node.Valued root, RuleRun run, Suppressions suppressions) {
    TreeSearch search = new TreeSearch();
    Identities identities = new Identities(root, search);
    LogicalPaths paths = new LogicalPaths(root, search);
    List<FileOutcome.Key> keys = new ArrayList<>();
    for (RepositoryRule rule : repositoryRules) {
      String id = setup.rules().of(rule).id();
      // Keys of one line, such as zones, share its text.
      Location last = null;
      for (Map.Entry<String, Place> key : run.keys(rule).entrySet()) {
        Region region = key.getValue().region();
        last =
            last != null && last.region().startLine() == region.startLine()
                ? new Location(last.file(), region, last.line())
                : Locations.location(site.source(), region);
        keys.add(
            new FileOutcome.Key(
                id,
                key.getKey(),
                last,
                identities.site(),
                suppressions.isEmpty() ? null : suppressions.of(id, paths.of(region).unit()),
                () -> identities.of(key.getValue())));
      }
    }
    return keys;
  }
}
