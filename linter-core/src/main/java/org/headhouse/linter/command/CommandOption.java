package org.headhouse.linter.command;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.headhouse.linter.goal.DraftOptions;
import org.headhouse.linter.run.SlackParameter;

/** What can be asked of the command; options are called as the parameters of the goals. */
enum CommandOption {
  SITES(
      "sites",
      "<folder>",
      "the folder of the sites, or one file; by default sites",
      "check diagnose fix report changes draft"),
  INCLUDES(
      "includes",
      "<patterns>",
      "which files of the folder are sites; by default **/*.yaml,**/*.yml",
      "check diagnose fix report changes"),
  EXCLUDES(
      "excludes",
      "<patterns>",
      "which files of the folder are not sites",
      "check diagnose fix report changes"),
  POLICY(
      "policy",
      "<file>",
      "the policy; by default linter.yaml beside the folder of sites, if there is one",
      "check diagnose fix report changes draft lsp"),
  DEVICE_TYPES(
      "deviceTypes",
      "<file>",
      "the device types; by default device-types.yaml beside the folder of sites, if there is"
          + " one",
      "check diagnose fix report changes draft lsp"),
  BASELINE(
      "baseline",
      "<file>",
      "old results, which fail nothing; by default the file that the policy names",
      "check"),
  SINCE(
      "since",
      "<revision>",
      "the revision of the git repository that rules on changes compare with; by default none",
      "check fix changes"),
  BEFORE(
      "before",
      "<folder>",
      "the folder of sites to compare with, or one file; in place of --since",
      "changes"),
  LIST("list", "<file>", "the list of units: comma-separated values, with headings", "draft"),
  VISIT(
      "visit",
      "<file>",
      "a list that was filled in on a visit, in place of --list: what was found is added to the"
          + " record of its site",
      "draft"),
  SITE(
      "site",
      "<id>",
      "the id of the site; not needed with --visit if the list names its site",
      "draft"),
  OUTPUT(
      "output",
      "<file>",
      "the file of the site; by default named after the site, in the folder of sites, or site.yaml"
          + " in a folder of its name",
      "draft"),
  FIXES(
      "fixes",
      "<kind>",
      "safe for fixes that follow from the rules alone, proposed for those that need a look too; by"
          + " default safe",
      "fix"),
  WRITE("write", "", "writes the changes; without it, they are only shown", "fix draft"),
  TITLE("title", "<text>", "for a new site: its name as people say it", "draft"),
  READINGS(
      "readings",
      "<words>",
      "for a new site: what the weather station measures; by default " + DraftOptions.READINGS,
      "draft"),
  BAUD(
      "baud",
      "<number>",
      "for a new site: the rate of the line in bit/s; by default " + DraftOptions.BAUD,
      "draft"),
  PARITY(
      "parity",
      "<parity>",
      "for a new site: even, odd, or none, which goes with 2 stop bits; by default "
          + DraftOptions.PARITY,
      "draft"),
  GAUGE(
      "gauge",
      "<gauge>",
      "for a new site: the conductors, in AWG or mm2; by default 24AWG",
      "draft"),
  SHIELDED(
      "shielded",
      "<answer>",
      "for a new site: whether the cable has a shield, true or false; by default true",
      "draft"),
  IMPEDANCE(
      "impedance",
      "<value>",
      "for a new site: the impedance of the cable, and of the terminators at its ends; by default"
          + " 120ohm",
      "draft"),
  BIAS_SUPPLY(
      "biasSupply",
      "<value>",
      "for a new site: the supply for bias resistors at the head unit, such as 5V; without it, the"
          + " resistors are only proposed in a comment",
      "draft"),
  FAIL_LEVEL(
      "failLevel",
      "<level>",
      "the mildest level that fails: error, warning, note or none; by default error",
      "check"),
  PRINT_LEVEL(
      "printLevel",
      "<level>",
      "the mildest level that is printed: error, warning, note or none; by default note",
      "check"),
  UNITS(
      "units",
      "<units>",
      "what lengths and temperatures are shown in: metric or us; by default metric",
      "report"),
  PAPER(
      "paper", "<paper>", "what the sheets are printed on: A4 or Letter; by default A4", "report"),
  SLACK(
      "slack",
      "<percent>",
      "the extra cable to order, in percent of the measured lengths; by default "
          + SlackParameter.USUAL,
      "report changes"),
  BUNDLE(
      "bundle",
      "",
      "puts the papers of each customer, and of nobody else, into a ZIP file too",
      "report"),
  OUTPUT_DIRECTORY(
      "outputDirectory",
      "<folder>",
      "the folder for results.sarif and results-junit.xml; by default they are not written",
      "check diagnose report changes schema"),
  FORMAT(
      "format",
      "<format>",
      "what is printed: text, github (text and annotations), gitlab (its code quality report) or json"
          + " (lines); by default text",
      "check"),
  OPEN_RESULTS(
      "openResults",
      "",
      "writes results-open.sarif too, without results that are accepted, known or gone",
      "check"),
  AS_FOUND(
      "asFound",
      "<readings>",
      "readings of the one site named, in the form of as-found; by default those of each file",
      "diagnose"),
  NAME(
      "name",
      "<file>",
      "with - only: the file that the text from the standard input is for",
      "check"),
  THREADS(
      "threads",
      "<number>",
      "how many files to check at a time; by default one per core",
      "check diagnose fix report changes"),
  ALLOW_EMPTY(
      "allowEmpty", "", "allows a run without any site", "check diagnose fix report changes"),
  RULE(
      "rule",
      "<id>",
      "shows the page of a rule: what it requires, why, and an example",
      "check rules"),
  HELP("help", "", "shows this help", ""),
  VERSION("version", "", "shows the version", "");

  private final String word;
  private final String value;
  private final String meaning;
  private final String goals;

  /**
   * @param goals that take it, separated by spaces; none where all do
   */
  CommandOption(String word, String value, String meaning, String goals) {
    this.word = word;
    this.value = value;
    this.meaning = meaning;
    this.goals = goals;
  }

  static Optional<CommandOption> of(String word) {
    return Arrays.stream(values()).filter(option -> option.word.equals(word)).findFirst();
  }

  /** The name after the two hyphens. */
  String word() {
    return word;
  }

  /** How it is written. */
  String form() {
    return "--" + word + (takesValue() ? "=" + value : "");
  }

  /** How it is written with a value. */
  String form(String given) {
    return "--" + word + "=" + given;
  }

  /** What its value is, as a word in angle brackets; empty where it has none. */
  String value() {
    return value;
  }

  String meaning() {
    return meaning;
  }

  boolean takesValue() {
    return !value.isEmpty();
  }

  /** Whether a goal takes it. */
  boolean goesWith(String goal) {
    return goals.isEmpty() || goals().contains(goal);
  }

  /** The goals that take it; none where all do. */
  List<String> goals() {
    return goals.isEmpty() ? List.of() : List.of(goals.split(" "));
  }

  /** Whether it may be given several times, with all of its values used. */
  boolean adds() {
    return this == INCLUDES || this == EXCLUDES;
  }
}
