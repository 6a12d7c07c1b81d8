package org.headhouse.linter.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.headhouse.linter.ContractExample;
import org.headhouse.linter.Example;
import org.headhouse.linter.rules.BuiltInRules;
import org.headhouse.linter.rules.RulePages;

/** What the fuzzer starts from: the examples that there are already, by the kind of text. */
final class Seeds {
  /** The longest input in bytes. */
  static final int LONGEST = 4096;

  private static final Path SAMPLES = Path.of("..", "sample-sites");
  private static final Pattern BLOCK =
      Pattern.compile("```(yaml|csv|json)[^\n]*\n(.*?)```", Pattern.DOTALL);

  private Seeds() {}

  static List<byte[]> of(Subject.Food food) throws IOException {
    return switch (food) {
      case SITES -> sites();
      case PIECES -> bytes(pieces());
      case DEVICE_TYPES -> bytes(texts(ContractExample.TYPES, "device-types.yaml"));
      case POLICIES -> bytes(policies());
      case LISTS -> bytes(lists());
      case VISITS -> bytes(visits());
      case BASELINES -> bytes(baselines());
      case CHOICES -> choices();
    };
  }

  private static List<byte[]> bytes(List<String> texts) {
    return texts.stream().map(text -> text.getBytes(UTF_8)).toList();
  }

  private static List<byte[]> sites() throws IOException {
    List<String> examples = new ArrayList<>(List.of(Example.SITE, ContractExample.SITE));
    BuiltInRules.all().forEach(rule -> examples.addAll(examples(rule.descriptor().id())));
    List<byte[]> sites = new ArrayList<>(bytes(examples));
    for (Path file : smallSites()) {
      sites.add(Files.readAllBytes(file)); // some are faulty on purpose, and no UTF-8
    }
    return sites;
  }

  private static List<Path> smallSites() throws IOException {
    try (Stream<Path> files = Files.walk(SAMPLES)) {
      return files.filter(Seeds::isSmallSite).sorted().toList();
    }
  }

  private static List<String> examples(String rule) {
    List<String> blocks = new ArrayList<>();
    Matcher matcher = BLOCK.matcher(RulePages.text(rule).orElse(""));
    while (matcher.find()) {
      blocks.add(matcher.group(2));
    }
    return blocks;
  }

  private static boolean isSmallSite(Path file) {
    return file.toString().endsWith(".yaml")
        && file.toString().contains("sites")
        && file.toFile().length() < LONGEST;
  }

  private static List<String> texts(String example, String sample) throws IOException {
    return List.of(example, Files.readString(SAMPLES.resolve(sample)));
  }

  /** A beginning, a piece that is repeated, and an end. */
  private static List<String> pieces() {
    String unit = Example.SITE.substring(Example.SITE.lastIndexOf("  - unit"));
    return List.of(
        Example.SITE + "\0" + unit + "\0",
        "a: &a [x]\nb:\n\0  - *a\n\0c: *a\n",
        "\0[\0]",
        "\0{a: \0}",
        "a: \"\0\\n\0\"\n",
        "a: |\n\0  text # no comment\n\0# comment\n",
        "\0k: 010\n\0",
        Example.SITE + "suppressions:\n\0  - {rule: address.gap, justification: Agreed.}\n\0",
        Example.SITE + "supervision: {link: serial, zones: [\0Propagation, \0]}\n");
  }

  private static List<String> policies() throws IOException {
    List<String> policies = new ArrayList<>(texts(ContractExample.POLICY, "linter.yaml"));
    BuiltInRules.all().stream()
        .map(rule -> rule.descriptor())
        .filter(rule -> !rule.parameters().isEmpty())
        .forEach(
            rule -> {
              StringBuilder policy = new StringBuilder("format: 1\nrule-set: 1\nrules:\n  ");
              policy.append(rule.id()).append(":\n    level: note\n    parameters:\n");
              rule.parameters()
                  .forEach(
                      one -> policy.append("      " + one.name() + ": " + one.fallback() + "\n"));
              policies.add(policy.toString());
            });
    return policies;
  }

  private static List<String> lists() {
    return List.of(
        "name,cable-to-next (m),device-type\nPropagation,42,eight-way\nHardening Bay,,\n",
        "Unit;Length;Type\r\n\"Bay \"\"A\"\"; x\";36,5 m;\r\nBay B;120 ft;eight-way\r\nBay C;;\r\n",
        """
        sep=;
        role;name;address;vents;termination (ohm);stub;cable (feet)
        head;A;1;roof;120;;4,5
        repeater;R;;;120 / none;;7
        equipment;M;9;;;;3
        follower;B;4;-;none;0.5 m;
        """);
  }

  private static List<String> visits() {
    return List.of(
        """
        \uFEFFwhat,where,acceptable,found,by,date,remark\r
        site,elm-row,,,,,\r
        outdoor readings seen (yes),Seedling North,,yes,R.O.,2026-03-14,display flickers\r
        storm response: vents shut in (s),Seedling North,at most 90 s,85,R.O.,2026-03-14,\r
        storm response: wind limit (m/s),Seedling North,,12,R.O.,2026-03-14,set back\r
        vents shut without readings (yes),Hardening Bay,,no,R.O.,2026-03-14,vent frozen\r
        pair resistance (ohm),Propagation,,62,Kim Ash,15 March 2026,\r
        """,
        """
        what;where;acceptable;found;by;date;remark
        site;elm-row;;;;;second visit
        idle voltage (V);East Boiler Room, side out;;260 mV;K. A.;14.03.2026;
        pair resistance (ohm);Hardening Bay;;61,5;K. A.;14.03.2026;"a ""word"" of it"
        """);
  }

  private static List<String> baselines() {
    return List.of(
        "{\"baseline-format\":1}\n",
        """
        {"baseline-format":1}
        {"file":"sites/a.yaml","site":"a","at":"line/cable/shielded","rule":"cable.unshielded","value":"false"}
        {"file":"sites/a.yaml","at":"chain/Bay/address","rule":"address.gap","unit":"Bay","level":"warning","times":2}
        """);
  }

  private static List<byte[]> choices() {
    Random random = new Random(1);
    List<byte[]> choices = new ArrayList<>();
    for (int length = 8; length <= 256; length *= 2) {
      byte[] bytes = new byte[length];
      random.nextBytes(bytes);
      choices.add(bytes);
    }
    return choices;
  }
}
