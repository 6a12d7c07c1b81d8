package org.headhouse.linter.schema;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.headhouse.linter.Example;
import org.headhouse.linter.JsonText;
import org.headhouse.linter.bind.UnitDefaults;
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
import org.junit.jupiter.params.provider.ValueSource;

/** The published schemas help an editor: they are complete, valid and have examples that hold. */
class PublishedSchemasTest {
  private static final Path SAMPLES = Path.of("..", "sample-sites");

  private static JsonNode schema(FileKind kind) {
    return JsonText.read(PublishedSchemas.text(kind));
  }

  private static SchemaRegistry registry() {
    Map<String, String> texts = new HashMap<>();
    for (FileKind kind : FileKind.values()) {
      texts.put(schema(kind).path("$id").asText(), PublishedSchemas.text(kind));
    }
    return SchemaRegistry.withDefaultDialect(
        SpecificationVersion.DRAFT_2020_12, builder -> builder.schemas(texts));
  }

  /** An id that changes would break the comment by which files name their schema. */
  @ParameterizedTest
  @CsvSource({
    "SITE, https://headhouse.org/linter/1/site.schema.json",
    "DEVICE_TYPES, https://headhouse.org/linter/1/device-types.schema.json",
    "POLICY, https://headhouse.org/linter/1/policy.schema.json"
  })
  void idsStay(FileKind kind, String id) {
    assertThat(schema(kind).path("$id").asText()).isEqualTo(id);
  }

  /** JSON Schema 2020-12, with the meta-schema that the library brings along. */
  @ParameterizedTest
  @EnumSource(FileKind.class)
  void areValid(FileKind kind) {
    String dialect = "https://json-schema.org/draft/2020-12/schema";
    assertThat(schema(kind).path("$schema").asText()).isEqualTo(dialect);
    Schema metaSchema = registry().getSchema(SchemaLocation.of(dialect));
    assertThat(metaSchema.validate(schema(kind))).isEmpty();
    JsonNode broken = JsonText.read("{\"type\": \"sting\", \"minimum\": \"1\"}");
    assertThat(metaSchema.validate(broken)).hasSizeGreaterThan(1);
  }

  /** A part of a schema with the pointer that leads to it. */
  private record Part(String pointer, JsonNode node) {}

  /** Every schema inside a schema: properties, definitions, items and the like. */
  private static void collect(Part part, List<Part> parts) {
    parts.add(part);
    for (String map : List.of("properties", "$defs")) {
      for (Map.Entry<String, JsonNode> entry : part.node.path(map).properties()) {
        collect(new Part(part.pointer + "/" + map + "/" + entry.getKey(), entry.getValue()), parts);
      }
    }
    for (String one : List.of("items", "additionalProperties", "if", "then", "else")) {
      if (part.node.path(one).isObject()) {
        collect(new Part(part.pointer + "/" + one, part.node.path(one)), parts);
      }
    }
  }

  private static List<Part> parts(FileKind kind) {
    List<Part> parts = new ArrayList<>();
    collect(new Part("", schema(kind)), parts);
    return parts;
  }

  @ParameterizedTest
  @EnumSource(FileKind.class)
  void everyKeyHasATitleADescriptionAndAnExample(FileKind kind) {
    List<Part> keys =
        parts(kind).stream()
            .filter(part -> part.pointer.matches(".*/properties/[^/]+"))
            .filter(part -> !isKeyOfAnother(part.node) && !isCondition(part))
            .filter(part -> !part.pointer.startsWith("/properties/rules/properties/"))
            .toList();
    assertThat(keys).hasSizeGreaterThan(5);
    for (Part key : keys) {
      assertThat(key.node.path("title").asText("")).as(key.pointer).matches("[A-Z].*[^.]");
      assertThat(key.node.path("description").asText("")).as(key.pointer).matches("[A-Z].*\\.");
      assertThat(key.node.path("examples").size()).as(key.pointer).isPositive();
    }
  }

  /** A default of the units is just the key of a unit, with all that is said of it. */
  private static boolean isKeyOfAnother(JsonNode node) {
    return node.size() == 1
        && node.path("$ref").asText("").matches("#/\\$defs/[a-z]+-item/properties/.*");
  }

  /** The rules of the linter are named for completion only; other rules may be set as well. */
  private static boolean isRules(String pointer) {
    return pointer.equals("/properties/rules");
  }

  /** Whatever else is in it, an item without a name is refused. */
  private static boolean isWithoutName(String pointer) {
    return pointer.equals("/$defs/item-without-name");
  }

  /** What is asked more where something is missing has no keys of its own. */
  private static boolean isCondition(Part part) {
    return part.pointer.startsWith("/then");
  }

  @ParameterizedTest
  @EnumSource(FileKind.class)
  void everyDefinitionHasATitleAndEveryValueAnExample(FileKind kind) {
    for (Part part : parts(kind)) {
      boolean isDefinition = part.pointer.matches("/\\$defs/[^/]+");
      boolean isValue = isDefinition && !part.node.path("type").asText("").equals("object");
      if (isDefinition) {
        assertThat(part.node.path("title").asText("")).as(part.pointer).isNotEmpty();
      }
      if (isValue) {
        assertThat(part.node.has("examples") || part.node.has("enum")).as(part.pointer).isTrue();
      }
    }
  }

  /** An object that takes any key would let a misspelt one pass. */
  @ParameterizedTest
  @EnumSource(FileKind.class)
  void everyBlockOfKeysIsClosed(FileKind kind) {
    for (Part part : parts(kind)) {
      if (part.node.has("properties")
          && !isCondition(part)
          && !isRules(part.pointer)
          && !isWithoutName(part.pointer)) {
        assertThat(part.node.path("additionalProperties").asBoolean(true))
            .as(part.pointer)
            .isFalse();
      }
    }
  }

  @ParameterizedTest
  @EnumSource(FileKind.class)
  void everyExampleAndDefaultHolds(FileKind kind) {
    String id = schema(kind).path("$id").asText();
    int examples = 0;
    for (Part part : parts(kind)) {
      Schema schema = registry().getSchema(SchemaLocation.of(id + "#" + part.pointer));
      for (JsonNode example : part.node.path("examples")) {
        assertThat(schema.validate(example)).as("%s: %s", part.pointer, example).isEmpty();
        examples++;
      }
      if (part.node.has("default")) {
        assertThat(schema.validate(part.node.path("default"))).as(part.pointer).isEmpty();
      }
    }
    assertThat(examples).isGreaterThan(5);
  }

  static List<Path> samples() throws IOException {
    try (Stream<Path> files = Files.walk(SAMPLES.resolve("sites"))) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void theSampleSitesAreAccepted(Path file) throws IOException {
    assertAccepted(FileKind.SITE, file);
  }

  @ParameterizedTest
  @CsvSource({"DEVICE_TYPES, device-types.yaml", "POLICY, linter.yaml"})
  void theSettingsOfTheSampleSitesAreAccepted(FileKind kind, String file) throws IOException {
    assertAccepted(kind, SAMPLES.resolve(file));
  }

  /** An editor knows no defaults: where there are some, it cannot say what a unit lacks. */
  @Test
  void withoutDefaultsEachUnitSaysAll() {
    Schema published =
        registry().getSchema(SchemaLocation.of(schema(FileKind.SITE).path("$id").asText()));
    String site = Example.SHORT;
    String without =
        site.substring(0, site.indexOf("defaults:")) + site.substring(site.indexOf("chain:"));
    assertThat(published.validate(json(Example.SITE))).isEmpty();
    assertThat(published.validate(json(site))).isEmpty();
    assertThat(published.validate(json(without))).hasSize(4);
  }

  /** What is offered there is another schema than that of a unit, and must not let it pass. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "{}",
        "[]",
        "East",
        "{name: East}",
        "{uint: East, role: follower, address: 4, comm-module: fitted, conductors: [A, B]}",
        "{role: follower, address: 4, comm-module: fitted, conductors: [A, B]}",
      })
  void anItemWithoutANameIsRefused(String item) {
    Schema published =
        registry().getSchema(SchemaLocation.of(schema(FileKind.SITE).path("$id").asText()));
    assertThat(published.validate(json(Example.SITE + "  - " + item + "\n"))).isNotEmpty();
    assertThat(published.validate(json(Example.SITE + "  - {repeater: East}\n"))).isEmpty();
  }

  private static JsonNode json(String site) {
    Document document = new YamlReader(Limits.DEFAULT).read(new SourceText("a.yaml", site));
    return JsonTree.of(new Cursor(Objects.requireNonNull(document.root()), null));
  }

  private static void assertAccepted(FileKind kind, Path file) throws IOException {
    SourceText source = new SourceText(file.toString(), Files.readString(file));
    Document document = new YamlReader(Limits.DEFAULT).read(source);
    Node.Valued root = UnitDefaults.spread(Objects.requireNonNull(document.root()));
    assertThat(new SchemaCheck(kind).explain(root)).isEmpty();
  }
}
