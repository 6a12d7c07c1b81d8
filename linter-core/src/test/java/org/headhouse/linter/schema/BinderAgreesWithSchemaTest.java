package org.headhouse.linter.schema;

import static org.assertj.core.api.Assertions.assertThat;

import org.headhouse.linter.RandomCases;
import org.headhouse.linter.bind.SiteBinder;
import org.headhouse.linter.bind.UnitDefaults;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Document;
import org.headhouse.linter.yaml.YamlReader;
import org.junit.jupiter.api.Test;

/** A file that binds without a doubt is never asked of the schema, so the two must agree. */
class BinderAgreesWithSchemaTest {
  @Test
  void onMutatedFiles() {
    SchemaCheck schema = new SchemaCheck(FileKind.SITE);
    YamlReader reader = new YamlReader(Limits.DEFAULT);
    double flagged =
        RandomCases.share(
            20_000,
            random -> {
              String text = MutatedSite.of(random);
              Document document = reader.read(new SourceText("example.yaml", text));
              if (document.root() == null) {
                return false;
              }
              var root = UnitDefaults.spread(document.root());
              boolean needsCheck =
                  SiteBinder.bind(document.source(), root, DeviceTypes.NONE).needsSchemaCheck();
              assertThat(needsCheck).as(text).isEqualTo(!schema.explain(root).isEmpty());
              return needsCheck;
            });
    assertThat(flagged).isBetween(0.1, 0.975);
  }
}
