package org.headhouse.linter.editor;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MarkupKind;
import org.eclipse.lsp4j.Position;
import org.headhouse.linter.check.ExaminedFile;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.source.Region;
import org.jspecify.annotations.Nullable;

/** What an editor shows of one place: what is computed there, what a key means, a rule's page. */
final class Hovers {
  private static final int MOST_PAGES = 3;

  /** Headings of a page that are about examples. */
  private static final Set<String> EXAMPLES =
      Set.of("## Breaks the rule", "## Keeps the rule", "## Message");

  private final Workspace workspace;
  private final OpenText text;
  private final ClientAbilities abilities;

  Hovers(Workspace workspace, OpenText text, ClientAbilities abilities) {
    this.workspace = workspace;
    this.text = text;
    this.abilities = abilities;
  }

  /** What is to be said of a place, or null where nothing is. */
  @Nullable Hover of(Position asked) throws UserError {
    Positions positions = text.positions();
    Region place = positions.region(asked);
    Workspace.Checked checked = workspace.check(text);
    YamlPath path = YamlPath.at(YamlPath.tree(positions.source()), place);
    List<String> parts = new ArrayList<>();
    if (path != null) {
      figures(path, checked, parts);
      meaning(path, parts);
    }
    Set<String> rules = new LinkedHashSet<>();
    for (Result result : checked.own(workspace.base())) {
      if (result.location().region().contains(place)) {
        rules.add(result.rule());
      }
    }
    if (path != null && path.text() != null && isRule(path)) {
      rules.add(path.text());
    }
    rules.stream()
        .limit(MOST_PAGES)
        .forEach(rule -> checked.found().linter().page(rule).ifPresent(it -> parts.add(told(it))));
    if (parts.isEmpty()) {
      return null;
    }
    String kind = abilities.markdown() ? MarkupKind.MARKDOWN : MarkupKind.PLAINTEXT;
    return new Hover(new MarkupContent(kind, String.join("\n\n---\n\n", parts)));
  }

  private boolean isRule(YamlPath path) {
    return text.role() == OpenText.Role.POLICY
        ? path.isKey() && path.isUnder("rules") && path.steps().size() == 2
        : path.isUnder("suppressions") && path.key().equals("rule") && !path.isKey();
  }

  private void figures(YamlPath path, Workspace.Checked checked, List<String> parts)
      throws UserError {
    boolean given = path.isUnder("chain") && !path.isKey() && ChainNames.KEYS.contains(path.key());
    String name = path.text();
    if (name == null || text.role() != OpenText.Role.SITE || (!given && !path.takesName())) {
      return;
    }
    try {
      ExaminedFile.ReadSite site = checked.found().linter().read(text.input(workspace.base()));
      List<String> lines = site == null ? List.of() : new UnitFigures(site).at(name);
      if (!lines.isEmpty()) {
        parts.add(Publisher.printable(name) + "\n\n" + String.join("\n", lines));
      }
    } catch (IOException noText) {
      throw UserError.of("the text cannot be read", noText);
    }
  }

  private void meaning(YamlPath path, List<String> parts) {
    SchemaGuide guide = SchemaGuide.of(text.role());
    String meaning = guide == null || path.steps().isEmpty() ? null : guide.meaning(path);
    if (meaning != null) {
      parts.add(meaning);
    }
  }

  /** A page without its examples, which are long. */
  private static String told(String page) {
    StringBuilder told = new StringBuilder(page.length());
    boolean skipped = false;
    for (String line : page.split("\n", -1)) {
      if (line.startsWith("## ")) {
        skipped = EXAMPLES.contains(line.strip());
      }
      if (!skipped) {
        told.append(line).append('\n');
      }
    }
    return told.toString().strip();
  }
}
