package org.headhouse.linter.fix;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.Replacement;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;
import org.headhouse.linter.yaml.YamlReader;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * One edit of what stands under the last key, or of a list alone; {@code -} where it would touch
 * more than it must.
 */
class EditWriterTest {
  private static final Place HERE = Place.at(Region.START_OF_FILE);

  /** A text, its writer, and the node that is edited. */
  private record Written(String text, EditWriter writer, Node value) {
    static Written of(String written) {
      String text = written.replace("\\n", "\n");
      SourceText source = new SourceText("a.yaml", text);
      Node.Valued root = new YamlReader(Limits.DEFAULT).read(source).root();
      if (root == null) {
        throw new AssertionError("no YAML: " + text);
      }
      return new Written(
          text,
          new EditWriter(new TextLines(source)),
          root instanceof Mapping mapping
              ? mapping.entries().get(mapping.entries().size() - 1).value()
              : root);
    }

    Sequence list() {
      assertThat(value).isInstanceOf(Sequence.class);
      return (Sequence) value;
    }

    String after(@Nullable Replacement replacement) {
      return replacement == null
          ? "-"
          : new String(Splice.apply(text.getBytes(UTF_8), List.of(replacement)), UTF_8)
              .replace("\n", "\\n");
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '→',
      quoteCharacter = '`',
      value = {
        "a: b             → a: c",
        "a: 'b'           → a: 'c'",
        "a:               → a: c",
        "a: # none yet    → a: c # none yet",
        "a: !!str b       → a: !!str c",
        "a: &x b          → a: &x c",
        "a: |\\n  b\\n    → -",
        "a: >-\\n  b\\n   → -",
        "a: b\\n  c       → a: c",
        "{b: d, a: }      → {b: d, a: c }",
      })
  void anotherValue(String before, String after) {
    Written site = Written.of(before);
    assertThat(site.value).isInstanceOf(Scalar.class);
    assertThat(site.after(site.writer.write((Scalar) site.value, write("c")))).isEqualTo(after);
  }

  private static Edit.Write write(String value) {
    return new Edit.Write(HERE, value, Edit.Style.AS_BEFORE);
  }

  /** The keys v and w, behind the key b where there is one. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '→',
      quoteCharacter = '`',
      value = {
        "m:\\n  a: 1\\n  b: 2\\n  c: 3\\n → m:\\n  a: 1\\n  b: 2\\n  v: 9\\n  w: 9\\n  c: 3\\n",
        "m:\\n  a: 1\\n  c: 3\\n      → m:\\n  a: 1\\n  c: 3\\n  v: 9\\n  w: 9\\n",
        "m:\\n  a: 1                  → m:\\n  a: 1\\n  v: 9\\n  w: 9",
        "m:\\n  b: 2 # why\\n  c: 3\\n → m:\\n  b: 2 # why\\n  v: 9\\n  w: 9\\n  c: 3\\n",
        "m:\\n  b: !!str\\n             → m:\\n  b: !!str\\n  v: 9\\n  w: 9\\n",
        "m:\\n  b: &k # k\\n            → -",
        "m:\\n  b:\\n    d: 1\\n  c: 2\\n → m:\\n  b:\\n    d: 1\\n  v: 9\\n  w: 9\\n  c: 2\\n",
        "m:\\n  b:\\n  - 1 # 1\\n  # 2\\n\\n  c: 2\\n → m:\\n  b:\\n  - 1 # 1\\n  v: 9\\n  w: 9\\n  # 2\\n\\n  c: 2\\n",
        "m:\\n  b: 1\\n...\\n          → m:\\n  b: 1\\n  v: 9\\n  w: 9\\n...\\n",
        "m:\\n  b:\\n  c: 3\\n        → m:\\n  b:\\n  v: 9\\n  w: 9\\n  c: 3\\n",
        "m:\\n  b: [1,\\n    2]\\n    → m:\\n  b: [1,\\n    2]\\n  v: 9\\n  w: 9\\n",
        "m:\\n  b: |\\n    2\\n       → -",
        "m:\\n  b: >\\n    2\\n       → -",
        "m:\\n  a: 1\\n  w: 3\\n      → -",
        "m: {a: 1, b: 2, c: 3}        → m: {a: 1, b: 2, v: 9, w: 9, c: 3}",
        "m: {a: 1, c: 3 }             → m: {a: 1, c: 3, v: 9, w: 9 }",
        "m: {}                        → m: {v: 9, w: 9}",
        "m: { }                       → m: {v: 9, w: 9 }",
        "m: { # none\\n  }            → -",
        "m: {b}                       → -",
        "m: {b: }                     → -",
        "m: {v: 1}                    → -",
        "z: &z {a: 1}\\nm: {<<: *z}   → -",
        "z: &z {a: 1}\\nm:\\n  <<: *z\\n → -",
        "z: &z {v: 1}\\nm:\\n  <<: *z\\n  a: 2\\n → z: &z {v: 1}\\nm:\\n  <<: *z\\n  a: 2\\n  v: 9\\n  w: 9\\n",
        "m:\\n  \"b\": 2\\n           → m:\\n  \"b\": 2\\n  v: 9\\n  w: 9\\n",
        "m:\\n  ? b\\n  : 2\\n        → -",
      })
  void moreKeys(String before, String after) {
    Written site = Written.of(before);
    assertThat(site.value).isInstanceOf(Mapping.class);
    Edit.AddKeys edit = new Edit.AddKeys(HERE, "b", List.of("v", "w"), "9");
    assertThat(site.after(site.writer.addKeys((Mapping) site.value, edit))).isEqualTo(after);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '→',
      quoteCharacter = '`',
      value = {
        "l: [a, b]          → 0  → l: [v, w, a, b]",
        "l: [a, b]          → 1  → l: [a, v, w, b]",
        "l: [a, b]          → 2  → l: [a, b, v, w]",
        "l: [a, b,]         → 99 → l: [a, b, v, w,]",
        "l: []              → 0  → l: [v, w]",
        "l: [ ]             → 5  → l: [v, w ]",
        "l: [ # none\\n  ]  → 0  → -",
        "l: [&k a, b]       → 0  → -",
        "l: [&k a, b]       → 1  → l: [&k a, v, w, b]",
        "l:\\n- a\\n- b\\n  → 0  → l:\\n- v\\n- w\\n- a\\n- b\\n",
        "- a\\n- b\\n       → 0  → - v\\n- w\\n- a\\n- b\\n",
        "- a\\n- b\\n       → 1  → - a\\n- v\\n- w\\n- b\\n",
        "l:\\n  - a\\n  - b → 0  → l:\\n  - v\\n  - w\\n  - a\\n  - b",
        "l:\\n  - a\\n  - b → 1  → l:\\n  - a\\n  - v\\n  - w\\n  - b",
        "l:\\n  - a\\n  - b → 2  → l:\\n  - a\\n  - b\\n  - v\\n  - w",
        "l:\\n  - a # 1\\n  - b\\n → 1 → l:\\n  - a # 1\\n  - v\\n  - w\\n  - b\\n",
        "l:\\n  - |\\n    a\\n → 1 → -",
        "l:\\n  -\\n    a\\n  - b\\n → 1 → -",
        "l:\\n  -\\n    a\\n  - b\\n → 0 → -",
        "l:\\n  - &k a\\n    → 1 → -",
        "l:\\n  - &k a\\n    → 0 → -",
        "l:\\n  -   a\\n     → 1 → l:\\n  -   a\\n  - v\\n  - w\\n",
        "l:\\n  - a: 1\\n    b: 2\\n → 1 → l:\\n  - a: 1\\n    b: 2\\n  - v\\n  - w\\n",
      })
  void moreItems(String before, int index, String after) {
    Written site = Written.of(before);
    Edit.AddItems edit = new Edit.AddItems(HERE, index, List.of("v", "w"));
    assertThat(site.after(site.writer.addItems(site.list(), edit))).isEqualTo(after);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '→',
      quoteCharacter = '`',
      value = {
        "l: [a, b, c]       → 1  → l: [a, c]",
        "l: [a, b, c]       → 2  → l: [a, b]",
        "l: [a, b, c]       → 0  → -",
        "l: [a]             → 0  → -",
        "l: [a, # 1\\n  b]  → 1  → -",
        "l: [a, &k b]       → 1  → -",
        "l:\\n- a\\n- b\\n  → 0  → l:\\n- b\\n",
        "- a\\n- b\\n       → 0  → - b\\n",
        "l:\\n- a\\n- b\\n  → 1  → l:\\n- a\\n",
        "l:\\n  - a\\n  - b → 0  → l:\\n  - b",
        // The last line has no end, so that of the line before goes with it.
        "l:\\n  - a\\n  - b → 1  → l:\\n  - a",
        "l:\\n  - a # 1\\n  - b → 1  → l:\\n  - a # 1",
        "l:\\n  - a\\n\\n  - b → 1  → l:\\n  - a\\n",
        "l:\\n  - a\\n  - b # 1 → 1  → -",
        "l:\\n  - a\\n      → 0  → -",
        "l:\\n  - a # 1\\n  - b\\n → 0 → -",
        "l:\\n  - &k a\\n  - b\\n → 0 → -",
        "l:\\n  -\\n    a\\n  - b\\n → 0 → -",
        "l:\\n  - a: 1\\n    b: 2\\n  - c\\n → 0 → l:\\n  - c\\n",
        "l:\\n  - a: 1 # 1\\n    b: 2\\n  - c\\n → 0 → -",
      })
  void oneItemLess(String before, int index, String after) {
    Written site = Written.of(before);
    Region item = site.list().items().get(index).region();
    assertThat(site.after(site.writer.removeItem(site.list(), item))).isEqualTo(after);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '→',
      quoteCharacter = '`',
      value = {
        "l:\\n  - - a\\n    - b\\n  - c\\n → 0 → -",
        "l:\\n  - - a\\n    - b\\n → 1 → l:\\n  - - a\\n"
      })
  void anItemOfAListInAList(String before, int index, String after) {
    Written site = Written.of(before);
    assertThat(site.list().items().get(0)).isInstanceOf(Sequence.class);
    Sequence inner = (Sequence) site.list().items().get(0);
    Region item = inner.items().get(index).region();
    assertThat(site.after(site.writer.removeItem(inner, item))).isEqualTo(after);
    assertThat(site.writer.addItems(inner, new Edit.AddItems(HERE, 0, List.of("v")))).isNull();
  }
}
