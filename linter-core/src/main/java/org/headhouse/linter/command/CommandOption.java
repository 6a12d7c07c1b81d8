package org.headhouse.linter.command;

import java.util.Arrays;
import java.util.Optional;

/** What can be asked of the command; options are called as the parameters of the goal check. */
enum CommandOption {
  SITES("sites", "<folder>", "the folder of the sites, or one file; by default sites"),
  INCLUDES(
      "includes",
      "<patterns>",
      "which files of the folder are sites; by default **/*.yaml,**/*.yml"),
  EXCLUDES("excludes", "<patterns>", "which files of the folder are not sites"),
  POLICY(
      "policy",
      "<file>",
      "the policy; by default linter.yaml beside the folder of sites, if there is one"),
  DEVICE_TYPES(
      "deviceTypes",
      "<file>",
      "the device types; by default device-types.yaml beside the folder of sites, if there is"
          + " one"),
  BASELINE(
      "baseline",
      "<file>",
      "old results, which fail nothing; by default the file that the policy names"),
  SINCE(
      "since",
      "<revision>",
      "the revision of the git repository that rules on changes compare with; by default none"),
  FAIL_LEVEL(
      "failLevel",
      "<level>",
      "the mildest level that fails: error, warning, note or none; by default error"),
  PRINT_LEVEL(
      "printLevel",
      "<level>",
      "the mildest level that is printed: error, warning, note or none; by default note"),
  OUTPUT_DIRECTORY(
      "outputDirectory",
      "<folder>",
      "the folder for results.sarif and results-junit.xml, or for diagnosis.json; by default they are"
          + " not written"),
  FORMAT(
      "format",
      "<format>",
      "what is printed: text, github (text and annotations), gitlab (its code quality report) or json"
          + " (lines); by default text"),
  OPEN_RESULTS(
      "openResults",
      "",
      "writes results-open.sarif too, without results that are accepted, known or gone"),
  AS_FOUND(
      "asFound",
      "<readings>",
      "diagnose only: readings of the one site named, in the form of as-found; by default those of"
          + " each file"),
  NAME("name", "<file>", "with - only: the file that the text from the standard input is for"),
  THREADS("threads", "<number>", "how many files to check at a time; by default one per core"),
  ALLOW_EMPTY("allowEmpty", "", "allows a run without any site"),
  RULE("rule", "<id>", "shows the page of a rule: what it requires, why, and an example"),
  HELP("help", "", "shows this help"),
  VERSION("version", "", "shows the version");

  private final String word;
  private final String value;
  private final String meaning;

  CommandOption(String word, String value, String meaning) {
    this.word = word;
    this.value = value;
    this.meaning = meaning;
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

  String meaning() {
    return meaning;
  }

  boolean takesValue() {
    return !value.isEmpty();
  }

  /** Whether it may be given several times, with all of its values used. */
  boolean adds() {
    return this == INCLUDES || this == EXCLUDES;
  }
}
