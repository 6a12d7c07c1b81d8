package org.headhouse.linter.check;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
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
  private final @Nullable String site;

  Identities(Node.Valued root, TreeSearch search) {
    this.root = root;
    this.search = search;
    Cursor id = new Cursor(root, null).get("site");
    this.site = id != null && id.node() instanceof Scalar scalar ? writable(scalar.text()) : null;
  }

  /** The id of the site, or null where the file does not say. */
  @Nullable String site() {
    return site;
  }

  /** The path of keys and names that leads to a place. */
  String pathOf(Place place) {
    return String.join("/", NodePath.of(root, search, place).steps());
  }

  /** The identities of a finding: of each case that it puts together, or of its place. */
  List<Identity> of(Finding finding) {
    NodePath path = NodePath.of(root, search, finding.place());
    if (finding.cases().isEmpty()) {
      return List.of(of(path, finding.unit(), finding.level()));
    }
    List<Identity> identities = new ArrayList<>(finding.cases().size());
    for (Finding.Case one : finding.cases()) {
      identities.add(
          one.unit() == null
              ? detailed(of(path, finding.unit(), finding.level()), one.detail())
              : of(path, one.unit(), finding.level(), one.detail()));
    }
    return identities;
  }

  /** The identity of what is at a place. */
  Identity of(Place place) {
    return of(NodePath.of(root, search, place), null, null);
  }

  /**
   * @param unit the unit that the finding names as concerned, or null
   * @param graded the level, where the rule gives one to this result, or null
   */
  private Identity of(NodePath path, @Nullable String unit, @Nullable Level graded) {
    // A list that several units share changes when other units come and go.
    String value = WrittenValue.of(path.end(), unit == null);
    return new Identity(site, at(path.steps()), writable(unit), writable(value), graded, null);
  }

  /**
   * One of several units: where the finding points depends on the others, so only its part counts.
   */
  private Identity of(NodePath path, String unit, @Nullable Level graded, @Nullable String detail) {
    List<String> part = path.steps().subList(0, Math.min(1, path.steps().size()));
    return new Identity(site, at(part), writable(unit), null, graded, writable(detail));
  }

  private static Identity detailed(Identity whole, @Nullable String detail) {
    return new Identity(
        whole.site(), whole.at(), whole.unit(), whole.value(), whole.graded(), writable(detail));
  }

  private static String at(List<String> steps) {
    return Objects.requireNonNull(writable(String.join("/", steps)));
  }

  /** Without half surrogate pairs, which an escape in YAML can leave: they have no UTF-8. */
  private static @Nullable String writable(@Nullable String text) {
    return text == null ? null : new String(text.getBytes(UTF_8), UTF_8);
  }
}
