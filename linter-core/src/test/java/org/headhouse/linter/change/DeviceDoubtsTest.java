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
}
