package org.headhouse.linter.schema;

import static org.assertj.core.api.Assertions.assertThat;

import org.headhouse.linter.RandomCases;
import org.headhouse.linter.bind.DeviceTypesBinder;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Document;
import org.headhouse.linter.yaml.YamlReader;
import org.junit.jupiter.api.Test;

/** As for sites: a file that binds without a doubt is never asked of the schema. */
class DeviceTypesBinderAgreesWithSchemaTest {
  @Test
  void onMutatedFiles() {
    SchemaCheck schema = new SchemaCheck(FileKind.DEVICE_TYPES);
    YamlReader reader = new YamlReader(Limits.DEFAULT);
    double flagged =
        RandomCases.share(
            20_000,
            random -> {
              String text = MutatedDeviceTypes.of(random);
              Document document = reader.read(new SourceText("device-types.yaml", text));
              var root = document.root();
              if (root == null) {
                return false;
              }
              var bound = DeviceTypesBinder.bind(document.source(), root);
              boolean refused = !schema.explain(root).isEmpty();
              assertThat(bound.needsSchemaCheck()).as(text).isEqualTo(refused);
              if (!refused && bound.findings().isEmpty() && document.findings().isEmpty()) {
                assertThat(bound.model().isComplete()).as(text).isTrue();
              }
              return refused;
            });
    assertThat(flagged).isBetween(0.1, 0.95);
  }
}
