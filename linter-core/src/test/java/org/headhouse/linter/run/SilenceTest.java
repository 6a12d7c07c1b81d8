package org.headhouse.linter.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SilenceTable;
import org.headhouse.linter.SilenceTable.Cell;
import org.headhouse.linter.SilenceTable.Check;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.files.SiteNames;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Site;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What can silence a result, and what never can: each cell of the table in the page is tried. */
class SilenceTest {
  private static final Path PAGE = Path.of("docs/silence.md");
  private static final byte[] KEY = new byte[32];
  private static final String A = SilencedRun.A;
  private static final String B = "sites/second.yaml";

  /** Two units without a module, a terminator too many, and a cable without a shield. */
  private static final String ABSENT_2 = "Bay 2.comm-module = absent";

  private static final String ABSENT_3 = "Bay 3.comm-module = absent";
  private static final String MID_LINE = "Bay 2.termination = 120 ohm";
  private static final String BARE =
      "line.cable = {gauge: 24 AWG, shielded: false, impedance: 120 ohm}";
  private static final String CUSTOMER = "site.customer = ours";
  private static final String SHARED_IP = "Bay 4.network = {ip: 192.168.40.4/24}";

  @TempDir private static Path folder = Path.of("");

  private static final List<Cell> CELLS = new ArrayList<>();

  private static void silences(String by, String what, Check check) {
    CELLS.add(new Cell(by, true, what, check));
  }

  private static void never(String by, String what, Check check) {
    CELLS.add(new Cell(by, false, what, check));
  }

  static {
    levelNone();
    ruleSet();
    parameters();
    suppressions();
    baseline();
    keptOutcomes();
    yielding();
    aliases();
    budgets();
    earlierState();
    levelsOfTheRun();
    excludes();
  }

  private static void levelNone() {
    String by = "`level: none` in the policy";
    silences(
        by,
        "results of that rule",
        on ->
            SilencedRun.of(ABSENT_2)
                .policy(on, "module.absent: {level: none}")
                .tells("module.absent"));
    never(
        by,
        "results of other rules",
        on ->
            SilencedRun.of(ABSENT_2)
                .policy(on, "cable.unshielded: {level: none}")
                .tells("module.absent"));
    never(
        by,
        "a fault that silences rules that yield to that one, which then reports it as a note",
        on ->
            SilencedRun.of("Bay 2.address = 3")
                .policy(on, "address.duplicate: {level: none}")
                .tells("address.duplicate"));
    never(
        by,
        "what other rules depend on, such as a value that is not understood",
        on ->
            SilencedRun.of("Bay 2.role = folower")
                .policy(on, "schema.bad-value: {level: none}")
                .tells("schema.bad-value"));
    never(
        by,
        "what is wrong in the policy or the device types",
        on ->
            SilencedRun.of()
                .types(SilencedRun.TYPES + "  - {id: other, tittle: Other}\n")
                .policy(on, "schema.unknown-key: {level: none}")
                .tells("schema.unknown-key"));
  }

  /** A rule of a later rule set. */
  private static final class LaterRule implements SiteRule {
    @Override
    public RuleDescriptor descriptor() {
      return new RuleDescriptor(
          "house.later", "Nothing is so.", Level.ERROR, 2, List.of(), false, List.of());
    }

    @Override
    public void check(Site site, RuleContext context) {
      context.report(site.id().place(), new Message("it is so", "it is", "change it"));
    }
  }

  private static void ruleSet() {
    String by = "`rule-set` in the policy";
    silences(
        by,
        "results of rules that a later rule set brought",
        on -> {
          SilencedRun run = SilencedRun.of().policy(true, on ? "" : "house.later: {level: error}");
          return run.builder().rule(new LaterRule()).build().check(run.inputs()).results().stream()
              .anyMatch(result -> result.rule().equals("house.later"));
        });
    never(
        by,
        "results of rules that its number has",
        on -> SilencedRun.of(ABSENT_2).policy(on, "").tells("module.absent"));
  }

  private static void parameters() {
    String by = "a parameter in the policy";
    silences(
        by,
        "what it allows",
        on ->
            SilencedRun.of("Bay 4.termination = 160 ohm")
                .policy(on, "termination.mismatch: {parameters: {most: 40 %}}")
                .tells("termination.mismatch"));
    never(
        by,
        "anything, if its value is out of range",
        on ->
            SilencedRun.of("Bay 4.termination = 220 ohm")
                .policy(on, "termination.mismatch: {parameters: {most: 900 %}}")
                .tells("termination.mismatch"));
  }

  private static final String WHY = "justification: Accepted";

  private static void suppressions() {
    String whole = "a suppression without a unit";
    silences(
        whole,
        "results of that rule in the site, later ones included",
        on ->
            SilencedRun.of(ABSENT_2, ABSENT_3)
                .suppressed(on, "rule: module.absent, " + WHY)
                .tells("module.absent"));
    never(
        whole,
        "results of another rule",
        on ->
            SilencedRun.of(ABSENT_2, BARE)
                .suppressed(on, "rule: cable.unshielded, " + WHY)
                .tells("module.absent"));
    never(
        whole,
        "results of another site",
        on ->
            SilencedRun.of()
                .file(B, "second", ABSENT_2)
                .suppressed(on, "rule: module.absent, " + WHY)
                .tells("module.absent"));
    never(
        whole,
        "a clash with this site that another one reports",
        on ->
            SilencedRun.of(CUSTOMER, SHARED_IP)
                .file(B, "second", CUSTOMER, SHARED_IP)
                .suppressed(on, "rule: network.duplicate-ip, " + WHY)
                .tells("network.duplicate-ip"));
    never(
        whole,
        "what other rules depend on",
        on ->
            SilencedRun.of("Bay 2.role = folower")
                .suppressed(on, "rule: schema.bad-value, " + WHY)
                .tells("schema.bad-value"));
    never(
        whole,
        "anything without a justification",
        on ->
            SilencedRun.of(ABSENT_2)
                .suppressed(on, "rule: module.absent, justification: ''")
                .tells("module.absent"));
    never(
        whole,
        "that another suppression has nothing to suppress",
        on ->
            SilencedRun.of()
                .suppressed(
                    true,
                    on
                        ? "rule: suppression.unused, " + WHY + "}, {rule: module.absent, " + WHY
                        : "rule: module.absent, " + WHY)
                .tells("suppression.unused"));

    String unit = "a suppression with a unit";
    silences(
        unit,
        "results of that rule at that unit, later ones included",
        on ->
            SilencedRun.of(ABSENT_2)
                .suppressed(on, "rule: module.absent, unit: Bay 2, " + WHY)
                .tells("module.absent"));
    silences(
        unit,
        "a result of several units, if each of them has one",
        on ->
            SilencedRun.of("Bay 2.cable-to-next = -", "Head House.cable-to-next = -")
                .suppressed(
                    on,
                    "rule: cable.length-unknown, unit: Bay 2, " + WHY,
                    "rule: cable.length-unknown, unit: Head House, " + WHY)
                .tells("cable.length-unknown"));
    never(
        unit,
        "results at another unit",
        on ->
            SilencedRun.of(ABSENT_2, ABSENT_3)
                .suppressed(on, "rule: module.absent, unit: Bay 2, " + WHY)
                .tells("module.absent"));
    never(
        unit,
        "a result that also names a unit without one",
        on ->
            SilencedRun.of("Bay 2.cable-to-next = -", "Head House.cable-to-next = -")
                .suppressed(on, "rule: cable.length-unknown, unit: Head House, " + WHY)
                .tells("cable.length-unknown"));
    never(
        unit,
        "results of the line",
        on ->
            SilencedRun.of(BARE)
                .suppressed(on, "rule: cable.unshielded, unit: Head House, " + WHY)
                .tells("cable.unshielded"));

    never(
        "a suppression that has expired",
        "any result",
        on ->
            SilencedRun.of(ABSENT_2)
                .suppressed(on, "rule: module.absent, until: 2026-05-31, " + WHY)
                .tells("module.absent"));
  }

  private static void baseline() {
    String by = "the baseline";
    silences(
        by,
        "results that were there, wherever they are in their file now",
        on ->
            SilencedRun.of(ABSENT_2)
                .text(A, "# moved\n" + SilencedRun.of(ABSENT_2).text(A))
                .knowing(on, SilencedRun.of(ABSENT_2))
                .tells("module.absent"));
    never(
        by,
        "the same at another unit",
        on ->
            SilencedRun.of(ABSENT_3).knowing(on, SilencedRun.of(ABSENT_2)).tells("module.absent"));
    never(
        by,
        "another value at the same place",
        on ->
            SilencedRun.of("Bay 2.termination = 150 ohm")
                .knowing(on, SilencedRun.of(MID_LINE))
                .tells("termination.mid-line"));
    never(
        by,
        "a result that names one unit more",
        on ->
            SilencedRun.of("Bay 2.cable-to-next = -", "Head House.cable-to-next = -")
                .knowing(on, SilencedRun.of("Bay 2.cable-to-next = -"))
                .tells("cable.length-unknown"));
    never(
        by,
        "a result that names one reading more",
        on ->
            SilencedRun.of("Bay 2.outdoor = {humidity: none}")
                .knowing(on, SilencedRun.of("Bay 2.outdoor = {light: head}"))
                .tells("outdoor.not-from-head"));
    never(
        by,
        "a result that names the other side of a repeater",
        on ->
            SilencedRun.of("Boiler Room.termination = {out: 120 ohm}")
                .knowing(on, SilencedRun.of("Boiler Room.termination = {in: 120 ohm}"))
                .tells("termination.undeclared"));
    never(
        by,
        "the same in a site that was copied",
        on ->
            SilencedRun.of()
                .file(B, "second", ABSENT_2)
                .knowing(on, SilencedRun.of(ABSENT_2))
                .tells("module.absent"));
    never(
        by,
        "a clash with another site than before",
        on ->
            SilencedRun.of(CUSTOMER)
                .file("sites/alder.yaml", "alder", CUSTOMER, SHARED_IP)
                .file(B, "second", CUSTOMER, SHARED_IP)
                .knowing(
                    on, SilencedRun.of(CUSTOMER, SHARED_IP).file(B, "second", CUSTOMER, SHARED_IP))
                .tells("network.duplicate-ip"));
    never(
        by,
        "a zone that another site of the customer has got too",
        on -> {
          String zones =
              "site.supervision = {link: serial, zones: [Head House, Bay 2, Bay 3, Bay 4]}";
          return SilencedRun.of(CUSTOMER)
              .file("sites/alder.yaml", "alder", CUSTOMER, zones)
              .file(B, "second", CUSTOMER, zones)
              .knowing(on, SilencedRun.of(CUSTOMER, zones).file(B, "second", CUSTOMER, zones))
              .tells("supervision.zone-duplicate");
        });
    never(
        by,
        "a unit that the record has come to lack",
        on -> {
          String live = "site.stage = commissioned";
          String none =
              "site.commissioning = {date: 2026-03-14, by: R.O., outdoor-readings-seen: [Bay 4]}";
          String one =
              "site.commissioning = {date: 2026-03-14, by: R.O., outdoor-readings-seen: [Bay 3, Bay 4]}";
          return SilencedRun.of(live, none)
              .knowing(on, SilencedRun.of(live, one))
              .tells("commissioning.unit-unseen");
        });
    never(
        by,
        "a unit that has come to have vents, which nobody has seen shut",
        on -> {
          String live = "site.stage = commissioned";
          String record = "site.commissioning = {date: 2026-03-14, by: R.O.}";
          String none = "Head House.vents = none";
          return SilencedRun.of(live, record, none)
              .knowing(on, SilencedRun.of(live, record, none, "Bay 2.vents = none"))
              .tells("commissioning.response-unseen");
        });
    never(
        by,
        "a result that became more severe",
        on ->
            SilencedRun.of("Bay 3.device-type = needing")
                .knowing(on, SilencedRun.of("Bay 3.device-type = box"))
                .tells("bias.missing"));
    never(
        by,
        "what other rules depend on",
        on ->
            SilencedRun.of("Bay 2.role = folower")
                .knowing(on, SilencedRun.of("Bay 2.role = folower"))
                .tells("schema.bad-value"));
    never(
        by,
        "what is suppressed now, once it no longer is",
        on ->
            SilencedRun.of(ABSENT_2)
                .knowing(
                    on, SilencedRun.of(ABSENT_2).suppressed(true, "rule: module.absent, " + WHY))
                .tells("module.absent"));
  }

  /** The rules that a second run tells after a first one kept its outcomes. */
  private static List<String> afterwards(SilencedRun first, SilencedRun second, boolean kept)
      throws IOException {
    Path cache = Files.createTempDirectory(folder, "kept");
    for (SilencedRun run : List.of(first, second)) {
      SiteLinter.Builder builder = run.builder();
      CleanSitesFile clean = new CleanSitesFile(cache, KEY, "version 1\n");
      if (kept) {
        builder.cleanFiles(clean::open);
      }
      List<Result> results = builder.build().check(run.inputs()).results();
      clean.save();
      if (run == second) {
        return results.stream().map(Result::rule).toList();
      }
    }
    throw new AssertionError();
  }

  private static void keptOutcomes() {
    String by = "kept outcomes (`clean-sites.cache`)";
    never(
        by,
        "a result of a file that changed",
        on -> afterwards(SilencedRun.of(), SilencedRun.of(ABSENT_2), on).contains("module.absent"));
    never(
        by,
        "a result that another policy brings",
        on ->
            afterwards(
                    SilencedRun.of(),
                    SilencedRun.of().policy(true, "name.pattern: {parameters: {pattern: House}}"),
                    on)
                .contains("name.pattern"));
    never(
        by,
        "a result that other device types bring",
        on ->
            afterwards(
                    SilencedRun.of(),
                    SilencedRun.of().types(SilencedRun.TYPES.replace("1/8", "30")),
                    on)
                .contains("segment.overloaded"));
    never(
        by,
        "a result that another day brings",
        on -> {
          String record = "site.commissioning = {date: 2026-06-01, by: R.O.}";
          return afterwards(SilencedRun.of(record), SilencedRun.of(record).on("2026-05-31"), on)
              .contains("commissioning.date");
        });
    never(
        by,
        "a clash of two sites that are clean by themselves",
        on -> {
          SilencedRun both =
              SilencedRun.of(CUSTOMER, SHARED_IP).file(B, "second", CUSTOMER, SHARED_IP);
          return afterwards(SilencedRun.of(CUSTOMER, SHARED_IP), both, on)
                  .contains("network.duplicate-ip")
              && afterwards(both, both, on).contains("network.duplicate-ip");
        });
    never(
        by,
        "a zone that two clean sites of one customer have",
        on -> {
          String zones =
              "site.supervision = {link: serial, zones: [Head House, Bay 2, Bay 3, Bay 4]}";
          SilencedRun both = SilencedRun.of(CUSTOMER, zones).file(B, "second", CUSTOMER, zones);
          return afterwards(both, both, on).contains("supervision.zone-duplicate");
        });
    never(
        by,
        "a result that is only accepted, once it no longer is",
        on ->
            afterwards(
                    SilencedRun.of(ABSENT_2).suppressed(true, "rule: module.absent, " + WHY),
                    SilencedRun.of(ABSENT_2),
                    on)
                .contains("module.absent"));
  }

  private static void yielding() {
    String by = "a rule to which another yields";
    silences(
        by,
        "what the other rule would report of the same cause, even if the cause is accepted or known",
        on ->
            SilencedRun.of(on ? "Bay 2.address = 3" : "Bay 4.address = 5")
                .suppressed(true, "rule: address.duplicate, " + WHY)
                .tells("address.gap"));
    never(
        by,
        "what has another cause",
        on ->
            SilencedRun.of("Head House.address = " + (on ? "9" : "1"), ABSENT_2)
                .tells("module.absent"));
    never(
        by,
        "addresses out of order far from a missing head unit",
        on ->
            SilencedRun.of(
                    "Bay 3.address = 4",
                    "Bay 4.address = 3",
                    "Head House.role = " + (on ? "follower" : "head"))
                .tells("address.order"));
    never(
        by,
        "a known length that alone is too long, if another is missing",
        on ->
            SilencedRun.of(
                    "Bay 3.cable-to-next = 1300 m",
                    on ? "Boiler Room.cable-to-next = -" : "Boiler Room.cable-to-next = 5 m")
                .tells("cable.too-long"));
  }

  private static void aliases() {
    String by = "anchors, aliases and merge keys";
    String anchored = "Bay 2.outdoor = &here {light: local, temperature: head}";
    never(
        by,
        "a fault at a unit that an alias brings it to",
        on ->
            SilencedRun.of(
                        anchored,
                        on
                            ? "Bay 3.outdoor = *here"
                            : "Bay 3.outdoor = {light: local, temperature: head}")
                    .count("outdoor.not-from-head")
                == 2);
    never(
        by,
        "a fault that comes to one unit more, from the baseline",
        on ->
            SilencedRun.of(anchored, "Bay 3.outdoor = *here")
                .knowing(on, SilencedRun.of(anchored))
                .tells("outdoor.not-from-head"));
    never(
        by,
        "a fault at another unit, from a suppression with a unit",
        on ->
            SilencedRun.of(anchored, "Bay 3.outdoor = *here")
                .suppressed(on, "rule: outdoor.not-from-head, unit: Bay 2, " + WHY)
                .tells("outdoor.not-from-head"));
    String given = "`defaults`";
    String[] absent = {
      "site.defaults = {follower: {comm-module: absent}}",
      "Bay 2.comm-module = -",
      "Bay 3.comm-module = -"
    };
    String[] one = {absent[0], absent[1]};
    never(
        given,
        "a fault that comes to one unit more, from the baseline",
        on -> SilencedRun.of(absent).knowing(on, SilencedRun.of(one)).tells("module.absent"));
    never(
        given,
        "a fault at another unit, from a suppression with a unit",
        on ->
            SilencedRun.of(absent)
                .suppressed(on, "rule: module.absent, unit: Bay 2, " + WHY)
                .tells("module.absent"));
  }

  /** Unknown keys, each a fault. */
  private static String keys(int number) {
    StringBuilder keys = new StringBuilder();
    for (int i = 0; i < number; i++) {
      keys.append("key").append(i).append(": 1\n");
    }
    return keys.toString();
  }

  private static void budgets() {
    String by = "the budgets of a file";
    silences(
        by,
        "the faults after the first 5000 of a file",
        on ->
            SilencedRun.of(ABSENT_2)
                .text(A, (on ? keys(5001) : "") + SilencedRun.of(ABSENT_2).text(A))
                .tells("module.absent"));
    never(
        by,
        "that there are more, which is an error",
        on ->
            SilencedRun.of()
                .text(A, keys(on ? 6000 : 5001) + SilencedRun.of().text(A))
                .tells("file.too-large"));
    never(
        by,
        "that a file is too large to be read, which is an error",
        on ->
            SilencedRun.of()
                .text(
                    A,
                    SilencedRun.of().text(A) + "# " + "x".repeat(on ? 3_000_000 : 2_000_000) + "\n")
                .tells("file.too-large"));
    never(
        by,
        "faults of other files",
        on ->
            SilencedRun.of()
                .text(A, on ? keys(6000) : SilencedRun.of().text(A))
                .file(B, "second", ABSENT_2)
                .tells("module.absent"));
  }

  private static void earlierState() {
    String by = "no revision to compare with (`linter.since`)";
    String live = "site.stage = commissioned";
    SilencedRun before = SilencedRun.of(live);
    silences(
        by,
        "results of rules on changes",
        on ->
            SilencedRun.of(live, "Bay 2.address = 3", "Bay 3.address = 2")
                .since(!on, before)
                .tells("change.commissioned-readdressed"));
    never(
        by,
        "results of other rules",
        on -> SilencedRun.of(ABSENT_2).since(!on, before).tells("module.absent"));
    String with = "a revision to compare with (`linter.since`)";
    silences(
        with,
        "that addresses out of order are a warning: they are a note if the line was in operation"
            + " then",
        on ->
            SilencedRun.of("Bay 2.address = 3", "Bay 3.address = 2")
                .since(on, before)
                .report()
                .at(Level.WARNING)
                .stream()
                .anyMatch(result -> result.rule().equals("address.order")));
    never(
        with,
        "a gap in the addresses of such a line",
        on -> SilencedRun.of("Bay 3.address = 7").since(on, before).tells("address.gap"));
    never(
        with,
        "a change of a site whose file and id are both new",
        on -> {
          String[] edits = {live, "Bay 2.address = 3", "Bay 3.address = 2"};
          return (on ? new SilencedRun().file(B, "second", edits) : SilencedRun.of(edits))
              .since(true, before)
              .tells("change.commissioned-readdressed");
        });
    never(
        with,
        "that a commissioned site is gone",
        on ->
            new SilencedRun()
                .text(B, "format: 1\nsite: second\nstage: planned\nchain: []\n")
                .text(
                    on ? B : "sites/third.yaml",
                    "format: 1\nsite: second\nstage: planned\nchain: []\n")
                .since(true, before)
                .tells("change.commissioned-removed"));
  }

  /** How a run of a warning ends: whether it fails, is printed, and is in the files. */
  private record Ended(boolean fails, boolean isPrinted, boolean isWritten) {
    static Ended of(SilencedRun run, Level failing, Level printed) throws Exception {
      Path out = Files.createTempDirectory(folder, "out");
      RecordingConsole console = new RecordingConsole();
      Outcome outcome =
          new CheckOutput(failing, printed, out)
              .write(run.report(), console, new BaseFolder(folder));
      return new Ended(
          !outcome.failed().isEmpty(),
          console.lines().stream().anyMatch(line -> line.contains("warning: ")),
          Files.readString(out.resolve("results.sarif"))
              .matches("(?s).*\"ruleId\" ?: ?\"cable.unshielded\".*"));
    }
  }

  private static void levelsOfTheRun() {
    String fail = "`failLevel`";
    silences(
        fail,
        "that milder results fail the run",
        on -> Ended.of(SilencedRun.of(BARE), on ? Level.ERROR : Level.WARNING, Level.NOTE).fails());
    never(
        fail,
        "what is printed",
        on ->
            Ended.of(SilencedRun.of(BARE), on ? Level.NONE : Level.WARNING, Level.NOTE)
                .isPrinted());
    never(
        fail,
        "what is in `results.sarif`",
        on ->
            Ended.of(SilencedRun.of(BARE), on ? Level.NONE : Level.WARNING, Level.NOTE)
                .isWritten());
    never(
        fail,
        "that the tool could not do its work",
        on -> {
          SilencedRun run = SilencedRun.of();
          CheckReport report =
              run.builder()
                  .build()
                  .check(
                      Stream.of(
                          new SiteInput(
                              A,
                              most -> {
                                throw new IOException("it is gone");
                              })));
          return !report.passes(on ? Level.NONE : Level.ERROR);
        });
    String print = "`printLevel`";
    silences(
        print,
        "milder results on the console",
        on ->
            Ended.of(SilencedRun.of(BARE), Level.ERROR, on ? Level.ERROR : Level.NOTE).isPrinted());
    never(
        print,
        "that results fail the run",
        on -> Ended.of(SilencedRun.of(BARE), Level.WARNING, on ? Level.NONE : Level.NOTE).fails());
    never(
        print,
        "what is in `results.sarif`",
        on ->
            Ended.of(SilencedRun.of(BARE), Level.ERROR, on ? Level.NONE : Level.NOTE).isWritten());
  }

  /** A folder with sites, and what a run over it reports of its names. */
  private static List<String> found(String file, String... excludes) throws Exception {
    Path home = Files.createTempDirectory(folder, "home");
    Files.createDirectory(home.resolve("sites"));
    Files.writeString(home.resolve(A), SilencedRun.of(ABSENT_2).text(A));
    Files.writeString(home.resolve(file), SilencedRun.of(ABSENT_2).text(A));
    SiteRun run =
        new SitesRequest(
                new SettingsRequest(
                    home.resolve("sites"),
                    null,
                    null,
                    new BaseFolder(home),
                    name -> "linter." + name),
                SiteNames.USUAL,
                List.of(excludes),
                true,
                1)
            .find();
    RecordingConsole console = new RecordingConsole();
    run.reportSettings(console);
    List<String> lines = new ArrayList<>(console.lines());
    run.check(run.builder().build(), console)
        .results()
        .forEach(result -> lines.add(result.location().file() + " " + result.rule()));
    return lines;
  }

  private static void excludes() {
    String by = "`includes` and `excludes`";
    silences(
        by,
        "all results of files that they leave out",
        on ->
            found(A, on ? new String[] {"example.yaml"} : new String[0])
                .contains(A + " module.absent"));
    never(
        by,
        "results of other files",
        on ->
            found(B, on ? new String[] {"example.yaml"} : new String[0])
                .contains(B + " module.absent"));
    never(
        by,
        "that a file which looks like a site is not read",
        on ->
            found(on ? "sites/SECOND.YAML" : "sites/second.yaml.txt").stream()
                .anyMatch(line -> line.contains("is not read as a site: name it ")));
  }

  static List<Cell> cells() {
    return CELLS;
  }

  @ParameterizedTest
  @MethodSource("cells")
  void everyCellIsSo(Cell cell) throws Exception {
    SilenceTable.check(cell);
  }

  @Test
  void thePageHasTheCells() throws IOException {
    assertThat(CELLS).doesNotHaveDuplicates();
    SilenceTable.compare(PAGE, "## In every run", CELLS);
  }
}
