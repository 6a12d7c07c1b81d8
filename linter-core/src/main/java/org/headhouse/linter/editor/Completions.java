package org.headhouse.linter.editor;

import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionItemKind;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.yaml.DoubleQuoted;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;
import org.jspecify.annotations.Nullable;

/**
 * What can be written at the cursor: keys and words of the schema, and names that the text and what
 * holds for it know. No quantity is proposed: each is measured, or read off a data sheet.
 */
final class Completions {
  private static final String HARMLESS = "[A-Za-z][A-Za-z0-9_.-]*(?: [A-Za-z0-9][A-Za-z0-9_.-]*)*";

  private final Workspace workspace;
  private final OpenText text;

  Completions(Workspace workspace, OpenText text) {
    this.workspace = workspace;
    this.text = text;
  }

  /** Something that can be written. */
  private record Proposal(String label, String written, CompletionItemKind kind, String detail) {}

  List<CompletionItem> at(Position asked) throws UserError {
    SchemaGuide guide = SchemaGuide.of(text.role());
    Positions positions = text.positions();
    if (guide == null) {
      return List.of();
    }
    Cursors cursors = Cursors.of(positions, positions.offset(asked));
    Map<String, Proposal> proposals = new LinkedHashMap<>();
    if (cursors.asValue() != null) {
      values(guide, cursors.asValue()).forEach(one -> proposals.putIfAbsent(one.label(), one));
    }
    if (cursors.asKey() != null) {
      boolean colon = positions.source().text().startsWith(":", cursors.end());
      keys(guide, cursors.asKey().path(), colon ? "" : ": ")
          .forEach(one -> proposals.putIfAbsent(one.label(), one));
    }
    Range range = positions.between(cursors.start(), cursors.end());
    List<CompletionItem> items = new ArrayList<>();
    for (Proposal one : proposals.values()) {
      CompletionItem item = new CompletionItem(one.label());
      item.setKind(one.kind());
      if (!one.detail().isEmpty()) {
        item.setDetail(one.detail());
      }
      item.setTextEdit(Either.forLeft(new TextEdit(range, one.written())));
      item.setFilterText(one.written());
      item.setSortText(String.format("%05d", items.size()));
      items.add(item);
    }
    return items;
  }

  private List<Proposal> keys(SchemaGuide guide, YamlPath path, String after) throws UserError {
    if (text.role() == OpenText.Role.POLICY && path.isUnder("rules") && path.steps().size() == 2) {
      return rules(after, rule -> true);
    }
    Set<String> there = keysOf(path.parents().get(path.parents().size() - 1));
    List<Proposal> keys = new ArrayList<>();
    for (Map.Entry<String, JsonObject> key : guide.keys(path).entrySet()) {
      if (!there.contains(key.getKey())) {
        JsonObject schema = key.getValue();
        keys.add(
            new Proposal(
                key.getKey(),
                key.getKey() + after,
                CompletionItemKind.Property,
                schema.has("title") ? schema.get("title").getAsString() : ""));
      }
    }
    return keys;
  }

  private static Set<String> keysOf(Node node) {
    Set<String> keys = new TreeSet<>();
    if (node instanceof Mapping mapping) {
      mapping.entries().stream()
          .filter(entry -> entry.via() == null)
          .forEach(entry -> keys.add(entry.key().text()));
    }
    return keys;
  }

  private List<Proposal> values(SchemaGuide guide, Cursors.Guess guess) throws UserError {
    YamlPath path = guess.path();
    if (text.role() == OpenText.Role.SITE) {
      if (path.takesName()) {
        return names(path, guess.root());
      }
      if (path.key().equals("device-type")) {
        return words(linter().deviceTypes().ids(), CompletionItemKind.Reference);
      }
      if (path.isUnder("suppressions") && path.key().equals("rule")) {
        return rules("", rule -> !rule.subject().equals("suppression"));
      }
    }
    return words(guide.words(path), CompletionItemKind.Value);
  }

  /** In a list of names, without those that it has already. */
  private static List<Proposal> names(YamlPath path, Node.Valued root) {
    Node.@Nullable Valued parent =
        path.parents().isEmpty() ? null : path.parents().get(path.parents().size() - 1);
    Set<String> listed = new TreeSet<>();
    if (parent instanceof Sequence list) {
      list.items().stream()
          .filter(Scalar.class::isInstance)
          .forEach(item -> listed.add(((Scalar) item).text()));
    }
    List<Proposal> names = new ArrayList<>();
    for (ChainNames.Named one : ChainNames.of(root)) {
      String name = one.name().text();
      if (!listed.contains(name)) {
        names.add(new Proposal(name, written(name), CompletionItemKind.Reference, one.kind()));
      }
    }
    return names;
  }

  private List<Proposal> rules(String after, Predicate<RuleDescriptor> fitting) throws UserError {
    List<Proposal> rules = new ArrayList<>();
    for (RuleDescriptor rule : linter().rules()) {
      if (!rule.foundation() && fitting.test(rule)) {
        rules.add(
            new Proposal(
                rule.id(), rule.id() + after, CompletionItemKind.EnumMember, rule.requirement()));
      }
    }
    return rules;
  }

  private SiteLinter linter() throws UserError {
    return workspace.found(text).linter();
  }

  private List<Proposal> words(Collection<String> words, CompletionItemKind kind) {
    return words.stream().map(word -> new Proposal(word, word, kind, "")).toList();
  }

  private static String written(String name) {
    return name.matches(HARMLESS) ? name : DoubleQuoted.of(name);
  }
}
