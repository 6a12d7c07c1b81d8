package org.headhouse.linter.fuzz;

import java.io.IOException;
import java.util.Locale;
import org.headhouse.linter.schema.MutatedDeviceTypes;
import org.headhouse.linter.schema.MutatedSite;
import org.headhouse.linter.source.SourceText;

/** What is fuzzed, each with its property and the kind of text that it takes. */
public enum Subject {
  YAML(Food.SITES),
  CHECK(Food.SITES),
  REPORTS(Food.SITES),
  SHEETS(Food.SITES),
  FIX(Food.SITES),
  THREADS(Food.SITES),
  LARGE(Food.PIECES),
  SCHEMA(Food.SITES),
  TYPES_SCHEMA(Food.DEVICE_TYPES),
  TYPES(Food.DEVICE_TYPES),
  POLICY(Food.POLICIES),
  DRAFT(Food.LISTS),
  VISIT(Food.VISITS),
  BASELINE(Food.BASELINES),
  FAULTY_SITES(Food.CHOICES),
  MUTATED_SITES(Food.CHOICES),
  MUTATED_TYPES(Food.CHOICES);

  /** What an input looks like where it is sound. */
  public enum Food {
    SITES,
    PIECES,
    DEVICE_TYPES,
    POLICIES,
    LISTS,
    VISITS,
    BASELINES,
    CHOICES
  }

  private final Food food;

  Subject(Food food) {
    this.food = food;
  }

  /** The subject of a name as people write it. */
  public static Subject of(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  /** The name as people write it. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public Food food() {
    return food;
  }

  /** The property; it may load a schema, so make it once. */
  public Property property() throws IOException {
    return switch (this) {
      case YAML -> new YamlProperty();
      case CHECK -> new CheckProperty();
      case REPORTS -> new ReportsProperty();
      case SHEETS -> new SheetsProperty();
      case FIX -> new FixProperty(false);
      case THREADS -> new ThreadsProperty();
      case LARGE -> new LargeProperty();
      case SCHEMA -> SchemaProperty.ofSites();
      case TYPES_SCHEMA -> SchemaProperty.ofDeviceTypes();
      case TYPES -> new DeviceTypesProperty();
      case POLICY -> new PolicyProperty();
      case DRAFT -> new DraftProperty();
      case VISIT -> new VisitProperty();
      case BASELINE -> new BaselineProperty();
      case FAULTY_SITES -> new FixProperty(true);
      case MUTATED_SITES -> mutatedSites();
      case MUTATED_TYPES -> mutatedTypes();
    };
  }

  private static Property mutatedSites() {
    SchemaProperty schema = SchemaProperty.ofSites();
    return input ->
        schema.tryWith(new SourceText("example.yaml", MutatedSite.of(new Choices(input))));
  }

  private static Property mutatedTypes() {
    SchemaProperty schema = SchemaProperty.ofDeviceTypes();
    return input ->
        schema.tryWith(
            new SourceText("device-types.yaml", MutatedDeviceTypes.of(new Choices(input))));
  }
}
