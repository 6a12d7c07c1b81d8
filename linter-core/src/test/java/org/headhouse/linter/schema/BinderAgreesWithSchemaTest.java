package org.headhouse.linter.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.headhouse.linter.bind.SiteBinder;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Document;
import org.headhouse.linter.yaml.YamlReader;
import org.junit.jupiter.api.Test;

/** A file that binds without a doubt is never asked of the schema, so the two must agree. */
class BinderAgreesWithSchemaTest {
  private static final int FILES = Integer.getInteger("mutated.files", 20_000);

  @Test
  void onMutatedFiles() {
    SchemaCheck schema = new SchemaCheck(FileKind.SITE);
    YamlReader reader = new YamlReader(Limits.DEFAULT);
    Random random = new Random(2026);
    int flagged = 0;
    for (int i = 0; i < FILES; i++) {
      String text = MutatedSite.of(random);
      Document document = reader.read(new SourceText("example.yaml", text));
      var root = document.root();
      if (root == null) {
        continue;
      }
      boolean needsCheck =
          SiteBinder.bind(document.source(), root, DeviceTypes.NONE).needsSchemaCheck();
      assertThat(needsCheck).as(text).isEqualTo(!schema.explain(root).isEmpty());
      flagged += needsCheck ? 1 : 0;
    }
    assertThat(flagged).isBetween(FILES / 10, FILES / 40 * 39);
  }
}
