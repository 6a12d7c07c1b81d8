package org.headhouse.linter.rules.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReferenceUnknownTest {
  private static final String RULE = "reference.unknown";
  private static final LineCheck SITE =
      LineCheck.of(
              new SiteText()
                      .bias("Head House", "560 ohm", "5.5 V")
                      .unit("120 ohm", "10 m", "device-type: box")
                      .unit("120 ohm", "", "device-type: box")
                  + "suppressions: [{rule: address.gap, unit: Bay 2, justification: Known.}]\n")
          .types("id: box");

  /** Each place where a name is referred to, and what is offered there. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "device-type: box  | device-type: bx   | there is no device type \"bx\"      | write \"box\"",
        "device-type: box  | device-type: tank | there is no device type \"tank\"    | write one of \"box\"",
        "{at: Head House, readings  | {at: Haed House, readings  | there is no unit \"Haed House\" | write \"Head House\"",
        "{at: Head House, readings  | {at: Palm Store, readings  | there is no unit \"Palm Store\" | write one of \"Head House\", \"Bay 2\"",
        "{at: Head House, resistors | {at: Palm Store, resistors | there is no item of the chain \"Palm Store\" | write one of \"Head House\", \"Bay 2\"",
        "unit: Bay 2, justification | unit: Palm Store, justification | there is no item of the chain \"Palm Store\" | write one of \"Head House\", \"Bay 2\"",
      })
  void whatIsReferredToIsThere(String text, String other, String fact, String remedy) {
    LineCheck check = SITE.with(text, other);
    assertThat(check.reportedBy(RULE))
        .isNotEmpty()
        .allSatisfy(reported -> assertThat(reported).contains(fact + ": ", "; " + remedy + " ["));
    assertThat(SITE.rules()).doesNotContain(RULE);
  }

  /** Of many only the first eight are shown. */
  @ParameterizedTest
  @CsvSource({"8, false", "9, true"})
  void manyTypesAreNotAllShown(int number, boolean cut) {
    List<String> types = new ArrayList<>();
    for (int i = 1; i <= number; i++) {
      types.add("id: pump-" + i);
    }
    assertThat(SITE.types(types.toArray(String[]::new)).reportedBy(RULE))
        .hasSize(2)
        .allSatisfy(
            reported ->
                assertThat(reported)
                    .contains("\"pump-1\", \"pump-2\"", "\"pump-8\"" + (cut ? " …" : " ["))
                    .doesNotContain("pump-9"));
  }

  /**
   * A unit that is gone is not to be replaced by one that is listed anyway, or has another number.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Bay 2, Bay 3 | delete it, or add the unit to the chain",
        "Bay 3        | delete it, or add the unit to the chain",
        "Bya 2        | write \"Bay 2\"",
      })
  void aNameInTheRecord(String seen, String remedy) {
    LineCheck check =
        LineCheck.of(new SiteText().unit("120 ohm", "10 m").unit("120 ohm", "").measured("x: y"))
            .with("outdoor-readings-seen: [Bay 2]", "outdoor-readings-seen: [" + seen + "]");
    assertThat(check.reportedBy(RULE))
        .singleElement()
        .asString()
        .contains(
            "there is no unit \"" + seen.substring(seen.length() - 5) + "\"", "; " + remedy + " [");
  }

  @Test
  void withoutAnyTypeTheReferenceIsDeleted() {
    assertThat(LineCheck.of(SITE.site()).reportedBy(RULE))
        .hasSize(2)
        .allSatisfy(reported -> assertThat(reported).contains("; delete it ["));
  }

  /** Its name is mended first; what refers to it is right. */
  @Test
  void nothingIsSpeltLikeAUnitThatCannotBeRead() {
    LineCheck check = SITE.with("unit: Head House\n", "unit: \"Head\\uFEFF House\"\n");
    assertThat(check.rules()).contains("name.unreadable").doesNotContain(RULE);
  }

  @Test
  void aNameThatIsNotUnderstoodMayBeAny() {
    assertThat(SITE.with("unit: Bay 2\n", "unit: 2\n").rules()).doesNotContain(RULE);
  }
}
