package org.headhouse.linter.site;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.check.SiteReader;
import org.headhouse.linter.source.Limits;
import org.junit.jupiter.api.Test;

/** Which item is which, and where segments end. */
class ChainItemTest {
  private static Site site(String text) {
    return requireNonNull(
        new SiteReader(DeviceTypes.NONE, Limits.DEFAULT).read("site.yaml", text.getBytes(UTF_8)));
  }

  @Test
  void anItemIsNoOtherOfItsChain() {
    List<? extends ChainItem> items =
        site(new SiteText().unit("120 ohm", "9 m").repeater("Mid", "none", "9 m").toString())
            .items();
    assertThat(items.get(0).isSameItemAs(items.get(0))).isTrue();
    assertThat(items.get(0).isSameItemAs(items.get(1))).isFalse();
    assertThat(items.get(0).isSameItemAs(null)).isFalse();
  }

  /** One that is written by an alias of another is a unit of its own. */
  @Test
  void twoItemsOfOneTextAreTwo() {
    String text = new SiteText().unit("120 ohm", "9 m").toString();
    Site site = site(text.replace("  - unit", "  - &it\n    unit") + "  - *it\n");
    assertThat(site.units()).hasSize(2);
    assertThat(site.units().get(1).name().orNull()).isEqualTo("Head House");
    assertThat(site.units().get(0).isSameItemAs(site.units().get(1))).isFalse();
  }

  @Test
  void aRepeaterEndsBothOfItsSegments() {
    Site site =
        site(
            new SiteText()
                .unit("120 ohm", "9 m")
                .unit("none", "9 m")
                .repeater("Mid", "120 ohm", "9 m")
                .unit("none", "9 m")
                .unit("120 ohm", "")
                .toString());
    Segment before = site.segments().get(0);
    Segment behind = site.segments().get(1);
    assertThat(before.last().isSameItemAs(behind.first())).isTrue();
    ChainItem repeater = behind.first();
    assertThat(before.endsAt(repeater)).isTrue();
    assertThat(behind.endsAt(repeater)).isTrue();
    assertThat(before.endsAt(before.items().get(1))).isFalse();
    assertThat(behind.endsAt(before.first())).isFalse();
  }
}
