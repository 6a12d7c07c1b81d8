package org.headhouse.linter.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.headhouse.linter.bind.DeviceTypesBinder;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Document;
import org.headhouse.linter.yaml.YamlReader;
import org.junit.jupiter.api.Test;

/** As for sites: a file that binds without a doubt is never asked of the schema. */
class DeviceTypesBinderAgreesWithSchemaTest {
  private static final int FILES = Integer.getInteger("mutated.files", 20_000);

  @Test
  void onMutatedFiles() {
    SchemaCheck schema = new SchemaCheck(FileKind.DEVICE_TYPES);
    YamlReader reader = new YamlReader(Limits.DEFAULT);
    Random random = new Random(485);
    int flagged = 0;
    for (int i = 0; i < FILES; i++) {
      String text = MutatedDeviceTypes.of(random);
      Document document = reader.read(new SourceText("device-types.yaml", text));
      var root = document.root();
      if (root == null) {
        continue;
      }
      var bound = DeviceTypesBinder.bind(document.source(), root);
      boolean refused = !schema.explain(root).isEmpty();
      assertThat(bound.needsSchemaCheck()).as(text).isEqualTo(refused);
      flagged += refused ? 1 : 0;
      if (!refused && bound.findings().isEmpty() && document.findings().isEmpty()) {
        assertThat(bound.model().isComplete()).as(text).isTrue();
      }
    }
    assertThat(flagged).isBetween(FILES / 10, FILES / 20 * 19);
  }
}
