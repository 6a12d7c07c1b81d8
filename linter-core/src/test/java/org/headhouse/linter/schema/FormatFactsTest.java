package org.headhouse.linter.schema;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.headhouse.linter.ContractExample;
import org.headhouse.linter.JsonText;
import org.headhouse.linter.bind.DeviceTypesBinder;
import org.headhouse.linter.bind.SiteBinder;
import org.headhouse.linter.site.BroadcastHandling;
import org.headhouse.linter.site.BusAddress;
import org.headhouse.linter.site.CommModule;
import org.headhouse.linter.site.Conductor;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.Format;
import org.headhouse.linter.site.IdleBias;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Link;
import org.headhouse.linter.site.ModuleNeed;
import org.headhouse.linter.site.OtherClients;
import org.headhouse.linter.site.Pair;
import org.headhouse.linter.site.Parity;
import org.headhouse.linter.site.PolledBy;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.ReadingSource;
import org.headhouse.linter.site.Role;
import org.headhouse.linter.site.Run;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Stage;
import org.headhouse.linter.site.StaleAction;
import org.headhouse.linter.site.SurgeProtection;
import org.headhouse.linter.site.Vents;
import org.headhouse.linter.site.Word;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Document;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.YamlReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The schema, which editors use, and the binder, which is quicker, state the same facts: keys,
 * closed sets of words, limits and forms. Every key of the format is tried with every word and at
 * every limit that the schema has anywhere.
 */
class FormatFactsTest {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
  private static final YamlReader READER = new YamlReader(Limits.DEFAULT);

  /** One of so many values that are probably out of place is tried at each place. */
  private static final int SHARE = 7;

  private int turn;

  private static JsonNode schema(FileKind kind) {
    return JsonText.read(PublishedSchemas.text(kind));
  }

  record Words(FileKind kind, String pointer, List<? extends Word> words) {
    @Override
    public String toString() {
      return kind + " " + pointer;
    }
  }

  static Stream<Words> words() {
    FileKind site = FileKind.SITE;
    FileKind types = FileKind.DEVICE_TYPES;
    return Stream.of(
        new Words(site, "/properties/stage", List.of(Stage.values())),
        new Words(site, "/$defs/line/properties/parity", List.of(Parity.values())),
        new Words(site, "/$defs/unit-item/properties/role", List.of(Role.values())),
        new Words(site, "/$defs/unit-item/properties/comm-module", List.of(CommModule.values())),
        new Words(site, "/$defs/unit-item/properties/vents", List.of(Vents.values())),
        new Words(
            site, "/$defs/unit-item/properties/on-stale-readings", List.of(StaleAction.values())),
        new Words(site, "/$defs/pair", List.of(Pair.values())),
        new Words(site, "/$defs/side", List.of(Side.values())),
        new Words(site, "/$defs/idle-bias", List.of(IdleBias.values())),
        new Words(
            site,
            "/$defs/equipment-item/properties/broadcasts",
            List.of(BroadcastHandling.values())),
        new Words(site, "/$defs/polled/properties/by", List.of(PolledBy.values())),
        new Words(site, "/$defs/supervision/properties/link", List.of(Link.values())),
        new Words(site, "/$defs/reading", List.of(Reading.values())),
        new Words(site, "/$defs/source", List.of(ReadingSource.values())),
        new Words(site, "/$defs/conductor", List.of(Conductor.values())),
        new Words(site, "/$defs/run", List.of(Run.values())),
        new Words(site, "/$defs/surge-protection", List.of(SurgeProtection.values())),
        new Words(types, "/$defs/device-type/properties/comm-module", List.of(ModuleNeed.values())),
        new Words(types, "/$defs/device-type/properties/idle-bias", List.of(IdleBias.values())),
        new Words(
            types, "/$defs/device-type/properties/other-clients", List.of(OtherClients.values())),
        new Words(types, "/$defs/parity", List.of(Parity.values())));
  }

  @ParameterizedTest
  @MethodSource("words")
  void closedSetsHaveTheSameWords(Words set) {
    List<String> published = new ArrayList<>();
    schema(set.kind).at(set.pointer).path("enum").forEach(word -> published.add(word.asText()));
    assertThat(published).containsExactlyElementsOf(set.words.stream().map(Word::word).toList());
  }

  @ParameterizedTest
  @EnumSource(
      value = FileKind.class,
      names = {"SITE", "DEVICE_TYPES"})
  void theRatesAreTheSame(FileKind kind) {
    List<Integer> published = new ArrayList<>();
    schema(kind).at("/$defs/baud-rate/enum").forEach(rate -> published.add(rate.asInt()));
    assertThat(published).isEqualTo(LineSettings.BAUD_RATES);
  }

  static Stream<Object[]> limits() {
    return Stream.of(
        new Object[][] {
          {FileKind.SITE, "/properties/chain/maxItems", Format.MOST_ITEMS},
          {FileKind.SITE, "/$defs/id/maxLength", Format.LONGEST_ID},
          {FileKind.SITE, "/$defs/text/maxLength", Format.LONGEST_TEXT},
          {FileKind.SITE, "/$defs/unit-name/maxLength", Format.LONGEST_TEXT},
          {FileKind.SITE, "/$defs/registers/maximum", Format.MOST_REGISTERS},
          {FileKind.SITE, "/$defs/polling/properties/retries/maximum", Format.MOST_RETRIES},
          {
            FileKind.SITE, "/$defs/unit-item/properties/conductors/maxItems", Format.MOST_CONDUCTORS
          },
          {
            FileKind.SITE, "/$defs/unit-item/properties/address/minimum", BusAddress.WRITABLE.from()
          },
          {FileKind.SITE, "/$defs/unit-item/properties/address/maximum", BusAddress.WRITABLE.to()},
          {FileKind.SITE, "/$defs/conductors/maxItems", Format.MOST_CONDUCTORS},
          {FileKind.SITE, "/$defs/unit-load/maximum", Format.HEAVIEST_UNIT_LOAD},
          {
            FileKind.SITE,
            "/$defs/equipment-item/properties/address/maximum",
            BusAddress.WRITABLE.to()
          },
          {FileKind.DEVICE_TYPES, "/$defs/terminal/maxLength", Format.LONGEST_TERMINAL_MARK},
          {FileKind.DEVICE_TYPES, "/$defs/id/maxLength", Format.LONGEST_ID},
          {
            FileKind.DEVICE_TYPES,
            "/$defs/device-type/properties/name-limit/maximum",
            Format.WIDEST_DISPLAY
          },
          {
            FileKind.DEVICE_TYPES,
            "/$defs/device-type/properties/address-limit/maximum",
            BusAddress.SETTABLE.to()
          },
          {
            FileKind.DEVICE_TYPES,
            "/$defs/device-type/properties/address-limit/default",
            BusAddress.STANDARD.to()
          },
          {FileKind.DEVICE_TYPES, "/$defs/unit-load/maximum", Format.HEAVIEST_UNIT_LOAD}
        });
  }

  @ParameterizedTest
  @MethodSource("limits")
  void limitsAreTheSame(FileKind kind, String pointer, int limit) {
    assertThat(schema(kind).at(pointer).asInt(-1)).isEqualTo(limit);
  }

  /** The form of the schema is a regular expression, that of the code is not. */
  @ParameterizedTest
  @CsvSource({
    "a",
    "alder-brook",
    "7",
    "a-7-b",
    "''",
    "-",
    "-a",
    "a-",
    "a--b",
    "A",
    "a_b",
    "a.b",
    "ä",
    "a b"
  })
  void idsHaveTheSameForm(String text) {
    String form = schema(FileKind.SITE).at("/$defs/id/pattern").asText();
    assertThat(Format.isId(text)).isEqualTo(text.matches(form));
  }

  /** A file as the tests change it. */
  private record File(FileKind kind, JsonNode example) {
    static File of(FileKind kind) {
      String text = kind == FileKind.SITE ? ContractExample.SITE : ContractExample.TYPES;
      Node.Valued root = Objects.requireNonNull(read(text).root());
      return new File(kind, JsonTree.of(new Cursor(root, null)));
    }

    /** Any JSON is YAML. */
    private static Document read(String text) {
      return READER.read(new SourceText("example.yaml", text));
    }

    boolean needsSchemaCheck(Document document) {
      Node.Valued root = Objects.requireNonNull(document.root());
      return kind == FileKind.SITE
          ? SiteBinder.bind(document.source(), root, DeviceTypes.NONE).needsSchemaCheck()
          : DeviceTypesBinder.bind(document.source(), root).needsSchemaCheck();
    }
  }

  /** Where a value of the example lies: keys and numbers of items. */
  private static void paths(JsonNode node, List<String> path, Map<String, List<String>> paths) {
    paths.putIfAbsent(kindOf(path), path);
    for (Map.Entry<String, JsonNode> entry : node.properties()) {
      paths(entry.getValue(), joined(path, entry.getKey()), paths);
    }
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      String step = i + naming(node.get(i));
      paths(node.get(i), joined(path, step), paths);
    }
  }

  /** Items of one kind are tried once. */
  private static String kindOf(List<String> path) {
    return String.join("/", path.stream().map(step -> step.replaceAll("^[0-9]+", "")).toList());
  }

  private static String naming(JsonNode item) {
    return item.isObject() ? " " + JsonText.keys(item).iterator().next() : "";
  }

  private static List<String> joined(List<String> path, String step) {
    List<String> longer = new ArrayList<>(path);
    longer.add(step);
    return longer;
  }

  private static JsonNode child(JsonNode node, String step) {
    return node.isArray() ? node.get(index(step)) : node.get(step);
  }

  private static int index(String step) {
    return Integer.parseInt(step.split(" ", 2)[0]);
  }

  private static JsonNode with(JsonNode root, List<String> path, JsonNode value) {
    JsonNode copy = root.deepCopy();
    JsonNode parent = copy;
    for (String step : path.subList(0, path.size() - 1)) {
      parent = child(parent, step);
    }
    String last = path.get(path.size() - 1);
    if (parent instanceof ArrayNode array) {
      array.set(index(last), value);
    } else {
      ((ObjectNode) parent).set(last, value);
    }
    return copy;
  }

  private static void facts(JsonNode node, Set<JsonNode> values, Set<Integer> sizes) {
    for (Map.Entry<String, JsonNode> entry : node.properties()) {
      JsonNode fact = entry.getValue();
      if (entry.getKey().equals("anyOf")) {
        continue; // the ids of rules, of which any other is taken as well
      }
      switch (entry.getKey()) {
        case "enum" -> fact.forEach(values::add);
        case "examples" -> {
          if (node.has("pattern")) {
            fact.forEach(values::add);
          }
        }
        case "minimum", "maximum", "exclusiveMinimum" -> {
          for (int off = -1; off <= 1; off++) {
            values.add(JSON.numberNode(fact.asInt() + off));
          }
          values.add(JSON.numberNode(fact.asInt() + 0.5));
        }
        case "minLength", "maxLength" -> {
          for (int off = -1; off <= 1; off++) {
            values.add(JSON.textNode("a".repeat(Math.max(0, fact.asInt() + off))));
          }
        }
        case "minItems", "maxItems" -> {
          for (int off = -1; off <= 1; off++) {
            sizes.add(Math.max(0, fact.asInt() + off));
          }
        }
        default -> {}
      }
      facts(fact, values, sizes);
    }
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      facts(node.get(i), values, sizes);
    }
  }

  /** Its limits are tried at every value, and of all else each at some. */
  private Set<JsonNode> changes(JsonNode node, Set<JsonNode> values, Set<Integer> sizes) {
    Set<JsonNode> changes = new LinkedHashSet<>();
    if (node instanceof ArrayNode array) {
      for (int size : sizes) {
        ArrayNode other = JSON.arrayNode();
        for (int i = 0; i < size; i++) {
          other.add(array.get(i % array.size()));
        }
        changes.add(other);
      }
    }
    if (node instanceof ObjectNode object) {
      for (String key : JsonText.keys(object)) {
        ObjectNode other = object.deepCopy();
        other.remove(key);
        changes.add(other);
      }
    }
    for (JsonNode value : values) {
      boolean isLikely =
          value.isNumber() ? node.isNumber() : node.isTextual() && value.asText().matches("a*");
      if (isLikely || ((value.isValueNode() || !node.isValueNode()) && turn++ % SHARE == 0)) {
        changes.add(value);
      }
    }
    changes.addAll(
        List.of(JSON.nullNode(), JSON.booleanNode(true), JSON.arrayNode(), JSON.objectNode()));
    return changes;
  }

  @ParameterizedTest
  @EnumSource(
      value = FileKind.class,
      names = {"SITE", "DEVICE_TYPES"})
  void everyKeyHasTheSameValues(FileKind kind) {
    SchemaCheck check = new SchemaCheck(kind);
    File file = File.of(kind);
    Set<JsonNode> values = new LinkedHashSet<>();
    Set<Integer> sizes = new TreeSet<>();
    facts(schema(kind), values, sizes);
    Map<String, List<String>> paths = new LinkedHashMap<>();
    paths(file.example, List.of(), paths);
    int refused = 0;
    int tried = 0;
    for (List<String> path : paths.values()) {
      JsonNode node = file.example;
      for (String step : path) {
        node = child(node, step);
      }
      for (JsonNode change : path.isEmpty() ? Set.<JsonNode>of() : changes(node, values, sizes)) {
        Document document = File.read(with(file.example, path, change).toString());
        boolean refusal = !check.explain(Objects.requireNonNull(document.root())).isEmpty();
        assertThat(file.needsSchemaCheck(document)).as("%s: %s", path, change).isEqualTo(refusal);
        refused += refusal ? 1 : 0;
        tried++;
      }
    }
    assertThat(refused).isBetween(tried / 2, tried / 20 * 19);
  }

  @ParameterizedTest
  @EnumSource(
      value = FileKind.class,
      names = {"SITE", "DEVICE_TYPES"})
  void everyBlockHasTheSameKeys(FileKind kind) {
    SchemaCheck check = new SchemaCheck(kind);
    File file = File.of(kind);
    Map<String, JsonNode> samples = new LinkedHashMap<>();
    samples(schema(kind), samples);
    samples.put("nonsense", JSON.textNode("x"));
    Map<String, List<String>> paths = new LinkedHashMap<>();
    paths(file.example, List.of(), paths);
    for (List<String> path : paths.values()) {
      JsonNode node = file.example;
      for (String step : path) {
        node = child(node, step);
      }
      for (Map.Entry<String, JsonNode> sample : samples.entrySet()) {
        if (node instanceof ObjectNode object && !object.has(sample.getKey())) {
          JsonNode changed = with(file.example, joined(path, sample.getKey()), sample.getValue());
          Document document = File.read(changed.toString());
          boolean refusal = !check.explain(Objects.requireNonNull(document.root())).isEmpty();
          assertThat(file.needsSchemaCheck(document)).as("%s: %s", path, sample).isEqualTo(refusal);
        }
      }
    }
  }

  /** The first example of each key. */
  private static void samples(JsonNode node, Map<String, JsonNode> samples) {
    for (Map.Entry<String, JsonNode> key : node.path("properties").properties()) {
      samples.putIfAbsent(key.getKey(), key.getValue().path("examples").path(0));
    }
    node.forEach(part -> samples(part, samples));
  }

  /** What the example lacks, the tests above do not try. */
  @Test
  void theExamplesHaveEveryKey() {
    for (FileKind kind : List.of(FileKind.SITE, FileKind.DEVICE_TYPES)) {
      Set<String> missing = new HashSet<>();
      schema(kind)
          .path("$defs")
          .properties()
          .forEach(part -> missing.addAll(JsonText.keys(part.getValue().path("properties"))));
      keys(File.of(kind).example, missing);
      assertThat(missing)
          .containsExactlyInAnyOrderElementsOf(
              kind == FileKind.SITE ? Set.of("humidity") : Set.of());
    }
  }

  private static void keys(JsonNode node, Set<String> missing) {
    missing.removeAll(JsonText.keys(node));
    node.forEach(part -> keys(part, missing));
  }
}
