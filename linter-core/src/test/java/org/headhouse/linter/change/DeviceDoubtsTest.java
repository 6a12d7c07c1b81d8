package org.headhouse.linter.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.headhouse.linter.change.States.Item.unit;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.change.States.Item;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Site;
import org.junit.jupiter.api.Test;

/**
 * What is asked where a file does not show whether two items are one device. That a new device
 * answers at its address as delivered until it is set: common practice, no source.
 */
class DeviceDoubtsTest {
  private static final List<Item> LINE =
      List.of(unit("Head", 1), unit("Palms", 2), unit("Ferns", 3), unit("Cacti", 4));

  private static FieldWork.Plan plan(List<Item> before, List<Item> after) {
    return plan(States.site(before), States.site(after));
  }

  private static FieldWork.Plan plan(Site before, Site after) {
    FieldWork work = SiteComparison.of(before, after, ExcludedAddresses.NONE).work();
    assertThat(work).isInstanceOf(FieldWork.Plan.class);
    return (FieldWork.Plan) work;
  }

  private static List<Item> line(Item... items) {
    return List.of(items);
  }

  /** The freed address at the far end: it is set before it is landed, and the old one taken out. */
  @Test
  void aNewHouseWithAFreedAddressIsANewDevice() {
    FieldWork.Plan plan =
        plan(LINE, line(unit("Head", 1), unit("Palms", 2), unit("Cacti", 4), unit("Herbs", 3)));
    assertThat(plan.steps().get(0).work())
        .isInstanceOfSatisfying(
            Step.Prepare.class,
            step -> {
              assertThat(step.unit()).isEqualTo("Herbs");
              assertThat(step.address()).isEqualTo(3);
            });
    List<String> out = new ArrayList<>();
    for (PlannedStep step : plan.steps()) {
      if (step.work() instanceof Step.Wire wire) {
        wire.places().stream()
            .filter(place -> place.actions().contains(new FieldAction.TakeOut()))
            .forEach(place -> out.add(place.item()));
      }
    }
    assertThat(out).containsExactly("Ferns");
    assertThat(plan.remarks())
        .containsExactly(
            "\"Herbs\" is taken for a new device, though it has the address of \"Ferns\", which"
                + " leaves. If it is the same device, moved, plan two changes: first the new name,"
                + " then the new place.");
  }

  @Test
  void aRenamedDeviceIsAskedFor() {
    assertThat(
            plan(LINE, line(unit("Head", 1), unit("Palms", 2), unit("Herbs", 3), unit("Cacti", 4)))
                .remarks())
        .containsExactly(
            "\"Herbs\" is taken for the device that was called \"Ferns\", since it has its place."
                + " If it is another device, do not work in this order: plan two changes, first"
                + " without \"Ferns\", then with \"Herbs\".");
  }

  /** Serial numbers are read off the devices: where both are given, nothing is in doubt. */
  @Test
  void serialNumbersAnswer() {
    Item ferns = unit("Ferns", 3, "serial-number: S-3");
    Item cacti = unit("Cacti", 4);
    List<Item> before = line(unit("Head", 1), unit("Palms", 2), ferns, cacti);
    assertThat(
            plan(
                    before,
                    line(
                        unit("Head", 1),
                        unit("Palms", 2),
                        unit("Herbs", 3, "serial-number: S-3"),
                        cacti))
                .remarks())
        .isEmpty();
    assertThat(
            plan(
                    before,
                    line(
                        unit("Head", 1),
                        unit("Palms", 2),
                        cacti,
                        unit("Herbs", 3, "serial-number: S-9")))
                .remarks())
        .isEmpty();
  }

  /** Nothing in the file says that the device is another, nor that it is the same. */
  @Test
  void aFirstSerialNumberMayBeThatOfAnotherDevice() {
    String text = States.text(LINE, 9600);
    String numbered = text.replace("unit: Ferns\n", "unit: Ferns\n    serial-number: S-9\n");
    FieldWork.Plan plan = plan(States.site(text), States.site(numbered));
    assertThat(plan.steps()).isEmpty();
    assertThat(plan.remarks())
        .containsExactly(
            "\"Ferns\": its serial number is entered for the first time, so nothing shows whether the"
                + " device is another. If it was exchanged: before the pair of the new one is"
                + " landed, set it as the file and its set-up card say, with address 3; prove again"
                + " the outdoor readings, the storm response and the response to stale readings at"
                + " \"Ferns\"; the pair resistance at \"Head\"; and add it to renewed in the record"
                + " of commissioning.");
    // Before a line is proved, numbers are read off the devices that are there.
    String planned = text.replace("stage: commissioned", "stage: planned");
    assertThat(plan(States.site(planned), States.site(numbered)).remarks()).isEmpty();
  }

  /** Only a unit has a set-up card. */
  @Test
  void aRepeaterIsSetAsTheFileSays() {
    String text =
        States.text(line(unit("Head", 1), Item.repeater("Boiler"), unit("Palms", 2)), 9600);
    String numbered =
        text.replace("repeater: Boiler\n", "repeater: Boiler\n    serial-number: R-9\n");
    assertThat(numbered).isNotEqualTo(text);
    assertThat(plan(States.site(text), States.site(numbered)).remarks())
        .singleElement()
        .asString()
        .contains("landed, set it as the file says; prove again");
  }

  @Test
  void manyFirstSerialNumbersAreOneRemark() {
    String text = States.text(LINE, 9600);
    String numbered =
        text.replaceAll("unit: (Ferns|Cacti)\n", "unit: $1\n    serial-number: S-$1\n");
    assertThat(plan(States.site(text), States.site(numbered)).remarks())
        .singleElement()
        .asString()
        .startsWith("\"Ferns\", \"Cacti\": their serial numbers are entered for the first time")
        .contains("response to stale readings at \"Ferns\", \"Cacti\"");
  }
}
