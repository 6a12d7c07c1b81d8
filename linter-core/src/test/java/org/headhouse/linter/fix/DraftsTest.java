package org.headhouse.linter.fix;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Sequence;
import org.headhouse.linter.yaml.YamlReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What rules mean, at places given by their path, as replacements in a text. */
class DraftsTest {
  private final List<Finding> findings = new ArrayList<>();

  private static Node.Valued root(String text) {
    Node.Valued root = new YamlReader(Limits.DEFAULT).read(new SourceText("a.yaml", text)).root();
    if (root == null) {
      throw new AssertionError("no YAML: " + text);
    }
    return root;
  }

  /** The place of what a path of keys and numbers leads to, aliases followed. */
  private static Place place(String text, String path) {
    Cursor at = new Cursor(root(text), null);
    for (String step : path.isEmpty() ? new String[0] : path.split("/", -1)) {
      at = inside(at, step);
    }
    return at.place();
  }

  private static Cursor inside(Cursor at, String step) {
    if (at.node() instanceof Sequence list) {
      return at.inside(list.items().get(Integer.parseInt(step)));
    }
    for (Mapping.Entry entry : ((Mapping) at.node()).entries()) {
      if (entry.key().text().equals(step)) {
        return at.valueOf(entry);
      }
    }
    throw new AssertionError("no " + step);
  }

  private Finding finding(String rule, Edit... edits) {
    Finding finding =
        Finding.of(rule, Region.START_OF_FILE, new Message("fact", "reason", "remedy"))
            .fixedBy(FixDraft.inFile("Mend it", edits));
    findings.add(finding);
    return finding;
  }

  /** The text once a finding is mended; - where there is no fix. */
  private String mended(String text, Finding finding) {
    Fix fix = new Fixes(new SourceText("a.yaml", text), root(text), findings).of(finding);
    return fix == null
        ? "-"
        : new String(Splice.apply(text.getBytes(UTF_8), fix.replacements()), UTF_8);
  }

  private static Place key(String text, String path, String key) {
    for (Mapping.Entry entry :
        ((Mapping) inside(new Cursor(root(text), null), path).node()).entries()) {
      if (entry.key().text().equals(key)) {
        return Place.at(entry.key().region());
      }
    }
    throw new AssertionError("no " + key);
  }

  private static Edit keyBehind(String text, String path, String after, String key) {
    return Edit.addKey(place(text, path), after, key, "9");
  }

  @Test
  void insertionsAtOnePlaceAreOne() {
    String text = "m: {a: 1, b: 2}\n";
    Finding both = finding("r", keyBehind(text, "m", "a", "v"), keyBehind(text, "m", "a", "w"));
    assertThat(mended(text, both)).isEqualTo("m: {a: 1, v: 9, w: 9, b: 2}\n");
    Finding apart = finding("r", keyBehind(text, "m", "b", "w"), keyBehind(text, "m", "a", "v"));
    assertThat(mended(text, apart)).isEqualTo("m: {a: 1, v: 9, b: 2, w: 9}\n");
    Finding twice = finding("r", keyBehind(text, "m", "a", "v"), keyBehind(text, "m", "a", "v"));
    assertThat(mended(text, twice)).isEqualTo("m: {a: 1, v: 9, b: 2}\n");
  }

  /** What stands under a misspelt key counts, and not what a rule would add for the lack of it. */
  @Test
  void noKeyIsAddedBesideItsMisspelling() {
    String text = "m: {a: 1, vv: 2}\n";
    Finding added = finding("r", keyBehind(text, "m", "a", "v"));
    assertThat(mended(text, added)).isEqualTo("m: {a: 1, v: 9, vv: 2}\n");
    finding("s", Edit.write(key(text, "m", "vv"), "v"));
    assertThat(mended(text, added)).isEqualTo("-");
    assertThat(mended(text, finding("r", keyBehind(text, "m", "a", "w"))))
        .isEqualTo("m: {a: 1, w: 9, vv: 2}\n");
  }

  @Test
  void editsInTheWayOfEachOtherAreNone() {
    String text = "m: {a: 1, b: 2}\n";
    Place a = place(text, "m/a");
    assertThat(mended(text, finding("r", Edit.write(a, "8"), Edit.plain(a, "7")))).isEqualTo("-");
    assertThat(mended(text, finding("r", Edit.plain(a, 8), keyBehind(text, "m", "a", "v"))))
        .isEqualTo("-");
    assertThat(mended(text, finding("r", Edit.plain(a, 8), Edit.plain(place(text, "m/b"), 7))))
        .isEqualTo("m: {a: 8, b: 7}\n");
    assertThat(mended(text, finding("r"))).isEqualTo("-");
  }

  /** The kinds of edit, each at something that is not of its kind, or that cannot be written. */
  @Test
  void whatCannotBeWrittenIsNoFix() {
    String text = "m: {a: 1}\nl: [a]\nt: |\n  x\ne: {a}\nb: []\n";
    List<Edit> impossible =
        List.of(
            Edit.write(place(text, "m"), "x"),
            Edit.write(place(text, "t"), "x"),
            Edit.addKey(place(text, "l"), "", "v", "9"),
            Edit.addKey(place(text, "e"), "", "v", "9"),
            new Edit.AddItems(place(text, "m"), 0, List.of("v")),
            new Edit.RemoveItem(place(text, "m/a")),
            new Edit.RemoveItem(place(text, "l/0")));
    for (Edit edit : impossible) {
      assertThat(mended(text, finding("r", edit))).as("%s", edit).isEqualTo("-");
    }
    Finding without =
        Finding.of("r", Region.START_OF_FILE, new Message("fact", "reason", "remedy"));
    assertThat(mended(text, without)).isEqualTo("-");
    Finding some = finding("r", Edit.plain(place(text, "m/a"), 2));
    assertThat(new Fixes(new SourceText("a.yaml", ""), null, findings).of(some)).isNull();
  }

  private static final String SHARED = "x: &s {k: 1, l: [a, b]}\ny: *s\nz: {k: &v 1}\nw: {k: *v}\n";

  /** Rules that write 2 at places; what the first of them gets. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "r x/k         | -",
        "r x/k, r y/k  | x: &s {k: 2, l: [a, b]}",
        "r y/k, r x/k  | x: &s {k: 2, l: [a, b]}",
        // Another rule is no agreement, nor is the same rule elsewhere.
        "r x/k, q y/k  | -",
        "r x/k, r z/k  | -",
        "r y/k         | -",
        // An alias for the value alone gives way.
        "r w/k         | w: {k: 2}",
        "r z/k         | -",
        "r z/k, r w/k  | z: {k: &v 2}",
      })
  void whatSeveralUse(String where, String line) {
    for (String one : where.split(", ", -1)) {
      String[] part = one.split(" ", -1);
      finding(part[0], Edit.plain(place(SHARED, part[1]), 2));
    }
    Finding first = findings.get(0);
    if (line.equals("-")) {
      assertThat(mended(SHARED, first)).isEqualTo("-");
    } else {
      assertThat(mended(SHARED, first).lines()).contains(line).hasSize(4);
    }
  }

  /** The same place, but other values. */
  @Test
  void thoseWhoWantSomethingElseDoNotAgree() {
    Finding one = finding("r", Edit.plain(place(SHARED, "x/k"), 2));
    finding("r", Edit.plain(place(SHARED, "y/k"), 3));
    assertThat(mended(SHARED, one)).isEqualTo("-");
  }

  @Test
  void itemsThatSeveralUse() {
    Finding one = finding("r", new Edit.RemoveItem(place(SHARED, "x/l/1")));
    assertThat(mended(SHARED, one)).isEqualTo("-");
    finding("r", new Edit.RemoveItem(place(SHARED, "y/l/1")));
    assertThat(mended(SHARED, one)).startsWith("x: &s {k: 1, l: [a]}\n");
  }

  /** An alias in what an alias stands for: the outermost is who uses it. */
  @Test
  void aliasesInAliases() {
    String text = "v: &v 1\nx: &s {k: *v}\ny: *s\nz: *s\n";
    Finding only = finding("r", Edit.plain(place(text, "y/k"), 2));
    assertThat(mended(text, only)).isEqualTo("-");
    finding("r", Edit.plain(place(text, "x/k"), 2));
    finding("r", Edit.plain(place(text, "z/k"), 2));
    assertThat(mended(text, only)).isEqualTo("-");
    finding("r", Edit.plain(place(text, "v"), 2));
    assertThat(mended(text, only)).startsWith("v: &v 2\n");
  }

  @Test
  void theFixSaysForWhomItIs() {
    Finding alone = finding("r", Edit.plain(place(SHARED, "w/k"), 2));
    assertThat(fix(SHARED, alone).description()).isEqualTo("Mend it");
    Finding both = finding("q", Edit.plain(place(SHARED, "x/k"), 2));
    finding("q", Edit.plain(place(SHARED, "y/k"), 2));
    assertThat(fix(SHARED, both).description())
        .isEqualTo("Mend it, at the anchor &s for all that use it");
  }

  private Fix fix(String text, Finding finding) {
    return requireNonNull(
        new Fixes(new SourceText("a.yaml", text), root(text), findings).of(finding));
  }

  @Test
  void replacementsAreInTheOrderOfTheFile() {
    String text = "m: {a: 1, b: 2}\n";
    Finding finding =
        finding("r", Edit.plain(place(text, "m/b"), 8), Edit.plain(place(text, "m/a"), 9));
    assertThat(fix(text, finding).replacements()).extracting("text").containsExactly("9", "8");
  }

  /** All agree, and it cannot be written all the same. */
  @Test
  void aBlockThatSeveralUse() {
    String text = "x: &s\n  k: |\n    a\ny: *s\n";
    Finding one = finding("r", Edit.write(place(text, "x/k"), "b"));
    finding("r", Edit.write(place(text, "y/k"), "b"));
    assertThat(mended(text, one)).isEqualTo("-");
  }

  @Test
  void anAliasAsAnItem() {
    String text = "v: &v 1\nl: [a, *v]\n";
    assertThat(mended(text, finding("r", new Edit.RemoveItem(place(text, "l/1")))))
        .isEqualTo("v: &v 1\nl: [a]\n");
  }

  /** A key is shared as its value is. */
  @Test
  void aKeyThatSeveralUse() {
    String text = "x: &s {k: 1}\ny: *s\n";
    Mapping first = (Mapping) ((Mapping) root(text)).entries().get(0).value();
    Finding key = finding("r", Edit.write(first.entries().get(0).key().region(), "v"));
    assertThat(mended(text, key)).isEqualTo("-");
  }

  /** The alias is written once, and two read it. */
  @Test
  void anAliasThatSeveralUseDoesNotGiveWay() {
    String text = "v: &v 1\nx: &s {k: *v}\ny: *s\n";
    assertThat(mended(text, finding("r", Edit.plain(place(text, "x/k"), 2)))).isEqualTo("-");
    String once = "v: &v 1\nx: {k: *v}\n";
    assertThat(mended(once, finding("q", Edit.plain(place(once, "x/k"), 2))))
        .isEqualTo("v: &v 1\nx: {k: 2}\n");
  }
}
