package org.headhouse.linter.check;

import static java.nio.charset.StandardCharsets.UTF_8;

import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Identity;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Scalar;
import org.jspecify.annotations.Nullable;

/** Gives results in one tree an identity that outlives a rewritten file. */
final class Identities {
  private final Node.Valued root;
  private final TreeSearch search;
  private final ShortTexts texts = new ShortTexts();
  private final @Nullable String site;

  Identities(Node.Valued root, TreeSearch search) {
    this.root = root;
    this.search = search;
    Cursor id = new Cursor(root, null).get("site");
    this.site = id != null && id.node() instanceof Scalar scalar ? scalar.text() : null;
  }

  /** The path of keys and names that leads to a place. */
  String pathOf(Place place) {
    return String.join("/", NodePath.of(root, search, place).steps());
  }

  Identity of(Finding finding) {
    return of(finding.place(), finding.unit(), finding.level());
  }

  /**
   * The identity of what is found at a place.
   *
   * @param unit the unit that the finding names as concerned, or null
   * @param graded the level, where the rule gives one to this result, or null
   */
  Identity of(Place place, @Nullable String unit, @Nullable Level graded) {
    NodePath path = NodePath.of(root, search, place);
    // A list that several units share changes when other units come and go.
    String value = WrittenValue.of(path.end(), unit == null);
    return new Identity(
        site == null ? null : writable(site),
        writable(String.join("/", path.steps().stream().map(texts::of).toList())),
        unit == null ? null : writable(unit),
        value == null ? null : writable(value),
        graded);
  }

  /** Without half surrogate pairs, which an escape in YAML can leave: they have no UTF-8. */
  private String writable(String text) {
    return new String(texts.of(text).getBytes(UTF_8), UTF_8);
  }
}
