package org.headhouse.linter.schema;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.path.NodePath;
import com.networknt.schema.path.PathType;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Node;

/** Checks trees against the schema of a kind of file. Safe for use by several threads. */
public final class SchemaCheck {
  private final Schema schema;
  private final JsonNode text;
  private final FileKind kind;

  /** Loads the schema of a kind of file. */
  public SchemaCheck(FileKind kind) {
    JsonNode whole = withFaultsOfUnits(withRequiredKeys(parsed(PublishedSchemas.text(kind))));
    SchemaRegistryConfig config =
        SchemaRegistryConfig.builder().pathType(PathType.JSON_POINTER).locale(Locale.ROOT).build();
    SchemaRegistry registry =
        SchemaRegistry.withDefaultDialect(
            SpecificationVersion.DRAFT_2020_12, builder -> builder.schemaRegistryConfig(config));
    this.schema = registry.getSchema(whole.toString(), InputFormat.JSON);
    this.kind = kind;
    this.text = whole;
  }

  private static JsonNode parsed(String schema) {
    try {
      return JsonMapper.builder().build().readTree(schema);
    } catch (JsonProcessingException broken) {
      throw new IllegalStateException("a published schema is no JSON", broken);
    }
  }

  /**
   * What the published schema asks of a unit where there are no defaults is asked of every unit
   * here: the tree that is checked has the defaults in the units already.
   */
  private static JsonNode withRequiredKeys(JsonNode schema) {
    JsonNode otherwise = schema.at("/then/properties/chain/items/then/required");
    if (schema instanceof ObjectNode root
        && otherwise instanceof ArrayNode more
        && root.at("/$defs/unit-item/required") instanceof ArrayNode required) {
      required.addAll(more);
      root.remove(List.of("if", "then"));
    }
    return schema;
  }

  /**
   * An item without a name is refused either way. In an editor it is offered the keys that name
   * one; here its other keys are looked at as well, as those of a unit.
   */
  private static JsonNode withFaultsOfUnits(JsonNode schema) {
    if (schema.at("/properties/chain/items/else/else/else") instanceof ObjectNode named) {
      named.set("else", named.get("then"));
    }
    return schema;
  }

  /** The findings of the schema: one for each fault, in the order of the file. */
  public List<Finding> explain(Node.Valued root) {
    Tree tree = new Tree(new Cursor(root, null));
    ChainFaults chain = new ChainFaults(kind, text, tree);
    IdentityHashMap<Node, Set<String>> reported = new IdentityHashMap<>();
    List<Finding> findings = new ArrayList<>();
    List<Error> others = new ArrayList<>();
    for (Error error : inOrder(schema.validate(JsonTree.of(tree.root())))) {
      Optional<SchemaFault> comma = SchemaFault.decimalComma(error, text, tree);
      if (comma.isEmpty()) {
        others.add(error);
        continue;
      }
      SchemaFault fault = comma.get();
      reported.computeIfAbsent(fault.node(), node -> new HashSet<>()).add(fault.detail());
      findings.add(fault.finding());
    }
    for (Error error : others) {
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

  /**
   * Where a value has the wrong type, its other errors do not help. A fault in a default is
   * reported where it is written, before the units have it.
   */
  private static List<Error> inOrder(List<Error> errors) {
    return errors.stream()
        .sorted(
            Comparator.comparing((Error error) -> !error.getKeyword().equals("type"))
                .thenComparing(error -> !isInDefaults(error)))
        .toList();
  }

  private static boolean isInDefaults(Error error) {
    NodePath path = error.getInstanceLocation();
    return path.getNameCount() > 0 && path.getElement(0).toString().equals("defaults");
  }
}
