package org.headhouse.linter.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A node starts behind its anchor, its tag, and the comments and line ends between. */
class NodePropertiesTest {

  private static Document read(String text) {
    return new YamlReader(Limits.DEFAULT).read(new SourceText("example.yaml", text));
  }

  private static Node.Valued value(Document document) {
    Mapping root = (Mapping) Objects.requireNonNull(document.root());
    return (Node.Valued) root.entries().get(0).value();
  }

  @ParameterizedTest
  @CsvSource({
    "'a: b', 1:4-1:5",
    "'a: &x b', 1:7-1:8",
    "'a: !!str b', 1:10-1:11",
    "'a: &x !!str b', 1:13-1:14",
    "'a: !!str &x b', 1:13-1:14",
    "'a: &x  b', 1:8-1:9",
    "'a: &x \"b\"', 1:7-1:10",
    "'a: &x [b]', 1:7-1:10",
    "'a: &x # c\n  [b]', 2:3-2:6",
    "'a: &x\n\n# c\n  b: c', 4:3-4:7",
    "'a: &x', 1:6-1:6",
    "'a: &x # c\nb: 1', 1:7-1:7"
  })
  void regions(String text, String region) {
    assertThat(written(value(read(text)).region())).isEqualTo(region);
  }

  /** YAML 1.1, section 5.4: these are the line ends that the parser counts. */
  @ParameterizedTest
  @ValueSource(strings = {"\n", "\r\n", "\r"})
  void everyLineEndCounts(String end) {
    Document document = read("a: &x !y # c" + end + "  [b]" + end);
    Node.Valued value = value(document);
    assertThat(value.region()).isEqualTo(Region.onLine(2, 3, 3));
    assertThat(value.anchor()).isEqualTo(new Node.Anchor("x", Region.onLine(1, 4, 2)));
    assertThat(document.findings())
        .extracting(Finding::place)
        .extracting(place -> place.region())
        .isEqualTo(List.of(Region.onLine(1, 7, 2)));
  }

  /** A colon may stand right behind an anchor, and a tag may have what ends a plain word. */
  @ParameterizedTest
  @CsvSource({
    "'&x: 1', x, 1:1-1:3, 1:3-1:3",
    "'&x#y : 1', x#y, 1:1-1:5, 1:6-1:6",
    "'!<tag:yaml.org,2002:str> &x z: 1', x, 1:26-1:28, 1:29-1:30"
  })
  void keyWithAnchor(String text, String name, String anchor, String key) {
    Mapping root = (Mapping) Objects.requireNonNull(read(text).root());
    Scalar scalar = root.entries().get(0).key();
    assertThat(scalar.anchor())
        .isNotNull()
        .satisfies(
            found -> {
              assertThat(found.name()).isEqualTo(name);
              assertThat(written(found.region())).isEqualTo(anchor);
            });
    assertThat(written(scalar.region())).isEqualTo(key);
  }

  private static String written(Region at) {
    return at.startLine() + ":" + at.startColumn() + "-" + at.endLine() + ":" + at.endColumn();
  }
}
