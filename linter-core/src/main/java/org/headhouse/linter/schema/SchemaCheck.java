package org.headhouse.linter.schema;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.path.PathType;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Node;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Checks trees against the schema of a kind of file. Safe for use by several threads. */
public final class SchemaCheck {
  private final Schema schema;
  private final JsonNode text;
  private final FileKind kind;

  /** Loads the schema of a kind of file. */
  public SchemaCheck(FileKind kind) {
    String json = PublishedSchemas.text(kind);
    SchemaRegistryConfig config =
        SchemaRegistryConfig.builder().pathType(PathType.JSON_POINTER).locale(Locale.ROOT).build();
    SchemaRegistry registry =
        SchemaRegistry.withDefaultDialect(
            SpecificationVersion.DRAFT_2020_12, builder -> builder.schemaRegistryConfig(config));
    this.schema = registry.getSchema(json, InputFormat.JSON);
    this.kind = kind;
    this.text = JsonMapper.shared().readTree(json);
  }

  /** The findings of the schema: one for each fault, in the order of the file. */
  public List<Finding> explain(Node.Valued root) {
    Tree tree = new Tree(new Cursor(root, null));
    ChainFaults chain = new ChainFaults(kind, text, tree);
    IdentityHashMap<Node, Set<String>> reported = new IdentityHashMap<>();
    List<Finding> findings = new ArrayList<>();
    for (Error error : inOrder(schema.validate(JsonTree.of(tree.root())))) {
      if (chain.takes(error) || SchemaFault.isMisspelt(error, text, tree)) {
        continue;
      }
      SchemaFault fault = SchemaFault.of(error, text, tree);
      if (reported.computeIfAbsent(fault.node(), node -> new HashSet<>()).add(fault.detail())) {
        findings.add(fault.finding());
      }
    }
    findings.addAll(chain.findings());
    findings.sort(Comparator.comparing(finding -> finding.place().region()));
    return findings;
  }

  /** Where a value has the wrong type, its other errors do not help. */
  private static List<Error> inOrder(List<Error> errors) {
    return errors.stream()
        .sorted(Comparator.comparing(error -> !error.getKeyword().equals("type")))
        .toList();
  }
}
