package org.headhouse.linter.growth;

import java.util.HashMap;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteText;

/** What there can be many of, each with the work that so many of it make. */
enum Growing {
  UNITS("units", Budget.THINGS, 60, n -> Work.check(units(n))),
  SHEETS("units, on sheets", Budget.THINGS, 60, n -> Work.sheets(units(n))),
  EQUAL_ADDRESSES("units with one address", Budget.THINGS, 60, n -> Work.check(equal(n))),
  RESERVED_ADDRESSES(
      "units with a reserved address", Budget.THINGS, 60, n -> Work.check(addressed(n, 250))),
  UNITS_BEYOND("units beyond what a line has", Budget.THINGS, 1000, n -> Work.check(units(n))),
  EQUAL_BEYOND(
      "units beyond that, with one address", Budget.THINGS, 1000, n -> Work.check(equal(n))),
  EQUAL_NAMES(
      "units with one name",
      Budget.THINGS,
      60,
      n -> Work.check(units(n).replaceAll("Bay \\d+", "Bay"))),
  LOOKALIKES("units with names that look alike", Budget.THINGS, 60, n -> Work.check(alike(n))),
  ALIASES("aliases of one faulty value", Budget.THINGS, 60, n -> Work.check(aliased(n))),
  MERGES("merge keys of one faulty mapping", Budget.THINGS, 60, n -> Work.check(merged(n))),
  FIX_ADDRESSES("units with one address, fixed", Budget.FIXES, 60, n -> Work.fix(equal(n))),
  FIX_KEYS("misspelt keys, fixed", Budget.FIXES, 250, n -> Work.fix(misspelt(n))),
  FIX_UNITS("units with misspelt keys, fixed", Budget.FIXES, 30, n -> Work.fix(misspeltUnits(n))),
  FIX_ZONES(
      "zones listed twice, fixed", Budget.FIXES, 250, n -> Work.fix(zones(n, i -> "Propagation"))),
  FIX_SOURCES("wrong sources of readings, fixed", Budget.FIXES, 60, n -> Work.fix(wrongSources(n))),
  FLOW("units on one line, with faults", Budget.THINGS, 60, n -> Work.check(onOneLine(n))),
  FIX_FLOW("units on one line, fixed", Budget.FIXES, 60, n -> Work.fix(onOneLine(n))),
  UNKNOWN_KEYS(
      "unknown keys of one mapping",
      Budget.THINGS,
      500,
      n -> Work.check(Example.SITE + lines(n, "    key-%d: 1\n"))),
  MISSPELT_KEYS("misspelt keys of one mapping", Budget.THINGS, 500, n -> Work.check(misspelt(n))),
  MISSPELT_UNITS("units with misspelt keys", Budget.THINGS, 60, n -> Work.check(misspeltUnits(n))),
  REPEATED_KEYS(
      "one key again and again",
      Budget.THINGS,
      500,
      n -> Work.check(Example.SITE + lines(n, "stage: planned\n"))),
  AMBIGUOUS(
      "ambiguous scalars",
      Budget.THINGS,
      500,
      n -> Work.check(Example.SITE + "more: [" + lines(n, "NO, ") + "]\n")),
  COMMENTS(
      "comments", Budget.THINGS, 5000, n -> Work.check(lines(n, "# comment %d\n") + Example.SITE)),
  MERGE_MARKS(
      "marks of merges",
      Budget.THINGS,
      500,
      n -> Work.check(Example.SITE + lines(n, "<<<<<<< %d\n=======\n>>>>>>> a\n"))),
  DOCUMENTS(
      "documents", Budget.THINGS, 500, n -> Work.check(Example.SITE + lines(n, "---\na: %d\n"))),
  UNKNOWN_ALIASES(
      "aliases without an anchor",
      Budget.THINGS,
      500,
      n -> Work.check(lines(n, "a%1$d: &anchor%1$d x\n") + lines(n, "b%1$d: *anchr%1$d\n"))),
  ANCHORS(
      "anchors",
      Budget.THINGS,
      500,
      n ->
          Work.check(
              Example.SITE
                  + lines(n, "a%1$d: &anchor%1$d x\n")
                  + lines(n, "b%1$d: *anchor%1$d\n"))),
  SUPPRESSIONS(
      "suppressions of as many results", Budget.THINGS, 60, n -> Work.check(suppressed(n))),
  UNUSED_SUPPRESSIONS(
      "suppressions that are not used",
      Budget.THINGS,
      500,
      n ->
          Work.check(
              Example.SITE
                  + "suppressions:\n"
                  + lines(
                      n,
                      "  - {rule: cable.unshielded, unit: Bay %d, justification: It is so.}\n"))),
  UNKNOWN_SUPPRESSIONS(
      "suppressions of unknown rules",
      Budget.THINGS,
      500,
      n ->
          Work.check(
              Example.SITE
                  + "suppressions:\n"
                  + lines(n, "  - {rule: cable.unshielde%d, justification: It is so.}\n"))),
  MANY_SUPPRESSIONS(
      "suppressions, each looked at for many results",
      Budget.THINGS,
      1000,
      n -> Work.check(manySuppressed(n))),
  ZONES(
      "zones that are no unit",
      Budget.THINGS,
      500,
      n -> Work.check(zones(n, i -> "Propagatoin " + i))),
  ZONES_TWICE(
      "zones listed twice", Budget.THINGS, 500, n -> Work.check(zones(n, i -> "Propagation"))),
  BIAS("bias points", Budget.THINGS, 500, n -> Work.check(bias(n))),
  MEASURED(
      "places measured",
      Budget.THINGS,
      500,
      n ->
          Work.check(
              commissioned(
                  "measured: {elsewhere: ["
                      + lines(n, "{at: Seedling North, pair-resistance: 5%d ohm}, ")
                      + "]}"))),
  RENEWALS(
      "renewals of a record",
      Budget.THINGS,
      500,
      n ->
          Work.check(
              commissioned(
                  "renewed: ["
                      + lines(
                          n,
                          "{date: 2026-03-15, by: R.O., reason: exchange %d, outdoor-readings-seen: [Seedling North]}, ")
                      + "]"))),
  SEEN(
      "units seen",
      Budget.THINGS,
      500,
      n ->
          Work.check(
              commissioned("outdoor-readings-seen: [" + lines(n, "Seedling Nort %d, ") + "]"))),
  STORMS(
      "responses seen",
      Budget.THINGS,
      500,
      n ->
          Work.check(
              commissioned(
                  "storm-response-seen: ["
                      + lines(n, "{unit: Seedling Nort %d, limit: 12 m/s, closed-in: 85 s}, ")
                      + "]"))),
  EQUIPMENT("pieces of equipment", Budget.THINGS, 60, n -> Work.check(equipment(n))),
  REPEATERS("repeaters", Budget.THINGS, 60, n -> Work.check(repeaters(n))),
  LONG_NAME(
      "letters of a name",
      Budget.LETTERS,
      5000,
      n -> Work.check(Example.with("Hardening Bay", "x".repeat(n)))),
  LONG_NAMES(
      "letters of a name that many places have",
      Budget.LETTERS,
      1000,
      n -> Work.check(zones(200, i -> "y".repeat(n) + i))),
  LONG_KEY(
      "letters of a key over many faults",
      Budget.LETTERS,
      5000,
      n -> Work.check(Example.SITE + "? " + "x".repeat(n) + "\n: [" + "NO, ".repeat(500) + "]\n")),
  LONG_UNIT(
      "letters of a name that many faults have",
      Budget.LETTERS,
      5000,
      n ->
          Work.check(
              Example.with("Hardening Bay", "x".repeat(n))
                  + "    more: ["
                  + "NO, ".repeat(500)
                  + "]\n")),
  LONG_HEAD(
      "letters of the head unit's name",
      Budget.LETTERS,
      5000,
      n -> Work.check(wrongSources(240).replace("Head House", "x".repeat(n)))),
  LONG_ZONE(
      "letters of a zone that is listed often",
      Budget.LETTERS,
      1000,
      n -> Work.check(zones(200, i -> "x".repeat(n) + " y"))),
  LONG_ANCHOR(
      "letters of an anchor with many aliases",
      Budget.LETTERS,
      500,
      n ->
          Work.check(
              aliased(240).replace("&o", "&" + "x".repeat(n)).replace("*o", "*" + "x".repeat(n)))),
  LONG_ALIAS(
      "letters of an anchor over many faults", Budget.LETTERS, 5000, n -> Work.check(longAlias(n))),
  LONG_JUSTIFICATION(
      "letters of a reason for many results",
      Budget.LETTERS,
      5000,
      n ->
          Work.check(
              equal(240)
                  + "suppressions: [{rule: address.duplicate, justification: "
                  + "x".repeat(n)
                  + "}]\n")),
  LONG_SITE_ID(
      "letters of an id that sites share", Budget.LETTERS, 2000, n -> Work.repository(longIds(n))),
  LONG_TYPE(
      "letters of a type's name",
      Budget.LETTERS,
      1000,
      n ->
          Work.types(
              types(3).replace("type-1", "x".repeat(n)),
              units(240).replaceAll("device-type: plain", "device-type: " + "x".repeat(n) + "z"))),
  LONG_LINE(
      "letters of a line with many faults",
      Budget.LETTERS,
      5000,
      n ->
          Work.check(Example.SITE + "more: [" + "NO, ".repeat(500) + "'" + "x".repeat(n) + "']\n")),
  PATTERNS(
      "patterns",
      Budget.THINGS,
      10,
      n ->
          Work.policy(
              "rules: {name.pattern: {parameters: {pattern: ["
                  + lines(n, "'([a-z]{1,9}){1,2}%d', ")
                  + "]}}}\n",
              units(60))),
  MANY_PATTERNS(
      "patterns beyond the limit",
      Budget.THINGS,
      500,
      n ->
          Work.policy(
              "rules: {name.pattern: {parameters: {pattern: ["
                  + lines(n, "'([a-z]{1,9}){1,2}%d', ")
                  + "]}}}\n",
              units(60))),
  RANGES(
      "ranges that are kept free",
      Budget.THINGS,
      500,
      n ->
          Work.policy(
              "rules: {address.kept-free: {parameters: {ranges: [" + lines(n, "3-9, ") + "]}}}\n",
              units(60))),
  MANY_RANGES(
      "ranges beyond the limit",
      Budget.THINGS,
      5000,
      n ->
          Work.policy(
              "rules: {address.kept-free: {parameters: {ranges: [" + lines(n, "3-9, ") + "]}}}\n",
              units(60))),
  FAULTY_RANGES(
      "ranges that are none",
      Budget.THINGS,
      400,
      n ->
          Work.policy(
              "rules: {address.kept-free: {parameters: {ranges: ["
                  + lines(n, "3-9-%d, ")
                  + "]}}}\n",
              Example.SITE)),
  UNKNOWN_RULES(
      "rules that are not known",
      Budget.THINGS,
      500,
      n ->
          Work.policy("rules:\n" + lines(n, "  cable.unshielde%d: {level: note}\n"), Example.SITE)),
  TYPES("device types", Budget.THINGS, 200, n -> Work.types(types(n), Example.SITE)),
  UNKNOWN_TYPES(
      "units of unknown types",
      Budget.THINGS,
      60,
      n -> Work.types(types(60), units(n).replaceAll("device-type: plain", "device-type: type-x"))),
  ROWS(
      "rows of a list",
      Budget.THINGS,
      60,
      n -> Work.draft("unit,length (m)\n" + lines(n, "Bay %1$d,%1$d\n"))),
  FAULTY_ROWS(
      "faulty rows of a list",
      Budget.THINGS,
      500,
      n -> Work.draft("unit,length (m),type\n" + lines(n, "Bay,x%d,y\n"))),
  VISIT_ROWS(
      "rows of a list from a visit",
      Budget.THINGS,
      60,
      n ->
          Work.visit(
              units(n),
              IntStream.rangeClosed(2, n)
                  .mapToObj(
                      i ->
                          "outdoor readings seen (yes),Bay %d,,yes,R.O.,2026-03-14,\n".formatted(i))
                  .collect(Collectors.joining()))),
  FAULTY_VISIT_ROWS(
      "faulty rows of a list from a visit",
      Budget.THINGS,
      500,
      n -> Work.visit(units(3), lines(n, "idle voltage (V),Bay,,x%d,,y,\n"))),
  MANY_SITES("sites", Budget.THINGS, 60, n -> Work.repository(sites(n, i -> units(3)))),
  BASELINE("lines of a baseline", Budget.THINGS, 2000, n -> Work.baseline(entries(n), equal(60))),
  EQUAL_SITES("sites with one id", Budget.THINGS, 60, n -> Work.repository(equalSites(n))),
  CHANGED_UNITS(
      "units that get another address",
      Budget.THINGS,
      60,
      n -> Work.changes(Map.of("example.yaml", units(n)), Map.of("example.yaml", readdressed(n)))),
  RENAMED_UNITS(
      "units that get another name",
      Budget.THINGS,
      60,
      n ->
          Work.changes(
              Map.of("example.yaml", units(n)),
              Map.of("example.yaml", units(n).replace("Bay ", "House ")))),
  TURNED_UNITS(
      "units in the other order",
      Budget.THINGS,
      60,
      n -> Work.changes(Map.of("example.yaml", units(n)), Map.of("example.yaml", turned(n)))),
  CHANGED_SITES(
      "sites that differ",
      Budget.THINGS,
      20,
      n -> Work.changes(sites(n, i -> units(3)), sites(n, i -> units(4)))),
  MOVED_SITES(
      "sites with another file",
      Budget.THINGS,
      20,
      n -> Work.changes(sites(n, i -> units(3)), moved(n)));

  /** What the work may take. */
  enum Budget {
    /** For each thing that a person has to be told of, some kilobytes. */
    THINGS(60, 20_000_000),
    /** A file is checked many times while it is fixed. */
    FIXES(100, 600_000_000),
    /** More letters of a text are read, and nothing else. */
    LETTERS(3, 40_000_000);

    final int timesClean;
    final long most;

    /**
     * @param timesClean of what is allocated for a byte of a clean site
     * @param most bytes that are allocated whatever the size
     */
    Budget(int timesClean, long most) {
      this.timesClean = timesClean;
      this.most = most;
    }
  }

  private final String what;
  private final Budget budget;
  private final int few;

  @SuppressWarnings("ImmutableEnumChecker") // generators keep nothing
  private final IntFunction<Work> work;

  Growing(String what, Budget budget, int few, IntFunction<Work> work) {
    this.what = what;
    this.budget = budget;
    this.few = few;
    this.work = work;
  }

  String what() {
    return what;
  }

  Budget budget() {
    return budget;
  }

  /** As many as the build begins with. */
  int few() {
    return few;
  }

  Work work(int number) {
    return work.apply(number);
  }

  private static String lines(int number, String line) {
    return IntStream.range(0, number)
        .mapToObj(i -> String.format(line, i))
        .collect(Collectors.joining());
  }

  private static String units(int number) {
    return new SiteText()
        .unit("120 ohm", "3 m")
        .units(number - 2, "3 m")
        .unit("120 ohm", "")
        .toString();
  }

  private static String addressed(int number, int address) {
    return units(number).replaceAll("(?m)^    address: .*", "    address: " + address);
  }

  private static String equal(int number) {
    return addressed(number, 1);
  }

  private static String readdressed(int number) {
    String text = units(number);
    for (int i = 2; i <= number; i++) {
      text = text.replace("address: " + i + "\n", "address:  " + (i == number ? 2 : i + 1) + "\n");
    }
    return text;
  }

  private static String turned(int number) {
    String text = units(number);
    for (int i = 2; i <= number; i++) {
      text = text.replace("unit: Bay " + i + "\n", "unit: Bay  " + (number + 2 - i) + "\n");
    }
    return text.replace("Bay  ", "Bay ");
  }

  private static String alike(int number) {
    String text = units(number);
    for (int i = 2; i <= number; i++) {
      String name = Integer.toBinaryString(i).replace('0', 'O').replace('1', 'l');
      text = text.replace("unit: Bay " + i + "\n", "unit: B" + name.replaceFirst("l", "I") + "\n");
    }
    return text;
  }

  private static String aliased(int number) {
    return units(number)
        .replaceFirst("outdoor: \\{light: head\\}", "outdoor: &o {light: local}")
        .replace("outdoor: {light: head}", "outdoor: *o");
  }

  private static String longAlias(int letters) {
    String anchor = "x".repeat(letters);
    return "more: &"
        + anchor
        + " {"
        + lines(500, "key-%d: 1, ")
        + "}\n"
        + Example.with("outdoor: {light: head, temperature: head}", "outdoor: *" + anchor + " ");
  }

  private static String merged(int number) {
    return units(number)
        .replaceFirst(
            "    outdoor: \\{light: head\\}", "    <<: &m {outdoor: {light: local}, firmwar: 3}")
        .replace("    outdoor: {light: head}", "    <<: *m");
  }

  private static String wrongSources(int number) {
    return units(number).replace("{light: head}", "{light: local}");
  }

  private static String onOneLine(int number) {
    return Example.SITE.substring(0, Example.SITE.indexOf("chain:"))
        + "chain: ["
        + lines(
            number,
            "{unit: Bay %d, role: follower, adress: 1, termination: none, outdoor: {light: local}}, ")
        + "]\n";
  }

  private static String misspelt(int number) {
    return Example.SITE + lines(number, "    adress%d: 1\n");
  }

  private static String misspeltUnits(int number) {
    return Example.SITE
        + lines(
            number,
            """
              - unit: Bay %1$d
                rolle: follower
                adress: %1$d
                comm-modul: fitted
                terminaton: none
                conductor: [A, B]
            """);
  }

  private static String zones(int number, IntFunction<String> zone) {
    return Example.SITE
        + "supervision: {link: ethernet, zones: ["
        + IntStream.range(0, number).mapToObj(zone).collect(Collectors.joining(", "))
        + "]}\n";
  }

  private static String suppressed(int number) {
    return equal(number)
        + "suppressions:\n"
        + lines(number, "  - {rule: address.duplicate, unit: Bay %d, justification: It is so.}\n");
  }

  private static String manySuppressed(int number) {
    return wrongSources(240)
        + "suppressions:\n"
        + lines(
            number, "  - {rule: outdoor.not-from-head, unit: Bay 2%d, justification: It is so.}\n");
  }

  private static String bias(int number) {
    return Example.with(
        "bias: [",
        "bias: [" + lines(number, "{at: Propagation, resistors: 510 ohm, supply: 5 V}, "));
  }

  private static String commissioned(String more) {
    return Example.with("stage: planned", "stage: commissioned")
        + "commissioning: {date: 2026-03-14, by: R.O., "
        + more
        + "}\n";
  }

  private static String equipment(int number) {
    SiteText site = new SiteText().unit("120 ohm", "3 m");
    for (int i = 0; i < number; i++) {
      site.equipment("Rig " + i, "", "3 m");
    }
    return site.unit("120 ohm", "").toString().replaceAll("address: [123]\\d\\d", "address: 2");
  }

  private static String repeaters(int number) {
    SiteText site = new SiteText().unit("120 ohm", "3 m");
    for (int i = 0; i < number; i++) {
      site.repeater("Repeater " + i, "120 ohm", "3 m");
    }
    return site.unit("120 ohm", "").toString();
  }

  private static String types(int number) {
    return "format: 1\ndevice-types:\n" + lines(number, "  - {id: type-%1$d, title: Type %1$d}\n");
  }

  private static String entries(int number) {
    return "{\"baseline-format\":1}\n"
        + lines(
            number,
            "{\"file\":\"s%1$d.yaml\",\"site\":\"s%1$d\",\"at\":\"chain/Bay %1$d/address\","
                + "\"rule\":\"address.duplicate\",\"unit\":\"Bay %1$d\",\"value\":\"1\"}\n");
  }

  private static Map<String, String> sites(int number, IntFunction<String> text) {
    Map<String, String> sites = new HashMap<>();
    for (int i = 0; i < number; i++) {
      sites.put("s" + i + ".yaml", text.apply(i).replace("site: example", "site: s" + i));
    }
    return sites;
  }

  private static Map<String, String> equalSites(int number) {
    Map<String, String> sites = new HashMap<>();
    sites(number, i -> units(3))
        .forEach((name, text) -> sites.put(name, text.replaceAll("site: s\\d+", "site: s")));
    return sites;
  }

  private static Map<String, String> longIds(int letters) {
    Map<String, String> sites = new HashMap<>();
    sites(60, i -> units(3))
        .forEach(
            (name, text) ->
                sites.put(name, text.replaceAll("site: s\\d+", "site: " + "s".repeat(letters))));
    return sites;
  }

  private static Map<String, String> moved(int number) {
    Map<String, String> sites = new HashMap<>();
    sites(number, i -> units(3)).forEach((name, text) -> sites.put("moved/" + name, text));
    return sites;
  }
}
