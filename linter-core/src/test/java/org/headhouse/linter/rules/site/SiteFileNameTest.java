package org.headhouse.linter.rules.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.Checks;
import org.headhouse.linter.Example;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The site is called example. */
class SiteFileNameTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "example.yaml            |",
        "sites/example.yml       |",
        "example                 |",
        "example/site.yaml       |",
        "site.yaml               |",
        "<text>                  |",
        "sites/other.yaml        | is in the file other.yaml; name the file example.yaml, or correct the id",
        "other/site.yaml         | is in the folder other; name the folder example, or correct the id",
        // The name of the folder counts for site.yaml only.
        "example/other.yaml      | is in the file other.yaml; name the file example.yaml, or correct the id",
        "example.yaml/other.yaml | is in the file other.yaml; name the file example.yaml, or correct the id",
        "example.old.yaml        | is in the file example.old.yaml; name the file example.yaml, or correct the id",
        ".example                | is in the file .example; name the file example.yaml, or correct the id",
      })
  void theFileOrItsFolderIsNamedAfterTheSite(String path, String reported) {
    List<String> found =
        Checks.linter().checkText(path, Example.SITE).results().stream()
            .map(result -> result.message().fact() + "; " + result.message().remedy())
            .toList();
    assertThat(found)
        .containsExactlyElementsOf(
            reported == null ? List.of() : List.of("the site \"example\" " + reported));
  }
}
