package org.headhouse.linter.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.headhouse.linter.change.States.Item;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Site;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who moves when: common practice, no source; never two units at one address. */
class PlanOfWorkTest {

  private static List<String> reported(List<Item> before, List<Item> after) {
    return reported(States.site(before), States.site(after));
  }

  private static List<String> reported(Site before, Site after) {
    FieldWork work = SiteComparison.of(before, after, ExcludedAddresses.NONE).work();
    assertThat(work).isInstanceOf(FieldWork.Plan.class);
    return ((FieldWork.Plan) work).steps().stream().map(PlanOfWorkTest::reported).toList();
  }

  private static String reported(PlannedStep planned) {
    Step step = planned.work();
    if (step instanceof Step.SetAddress set) {
      return set.unit() + " " + set.from() + ">" + set.to() + (set.spare() ? " spare" : "");
    }
    if (step instanceof Step.Wire wire) {
      return wire.places().stream()
              .map(WiringPlace::item)
              .collect(Collectors.joining(" ", "wire ", ""))
          + " without "
          + String.join(" ", planned.withoutReadings());
    }
    if (step instanceof Step.SetLine line) {
      return "line " + String.join(" ", line.units());
    }
    if (step instanceof Step.SetUnit set) {
      return set.unit() + " " + set.settings().get(0).what();
    }
    return step instanceof Step.SwitchOff off
        ? "off " + off.unit()
        : step instanceof Step.Prepare prepare ? "prepare " + prepare.unit() : step.toString();
  }

  private static List<Item> chain(String units) {
    return Arrays.stream(units.split(", ", -1))
        .map(
            unit -> {
              String[] part = unit.split(" ", 3);
              return Item.unit(
                  part[0],
                  Integer.parseInt(part[1]),
                  part.length > 2 ? new String[] {part[2]} : new String[0]);
            })
        .toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "H 1, B 2, C 3             | H 1, B 3, C 2             | B 2>4 spare; C 3>2; B 4>3",
        // A unit that leaves keeps its address until the wiring.
        "H 1, B 2, C 3, D 4        | H 1, B 3, C 2             | C 3>5 spare; B 2>3; C 5>2; wire C D without H B C",
        // One that joins has its own from the start.
        "H 1, B 2, C 3             | H 1, B 3, C 2, N 4        | prepare N; C 3>5 spare; B 2>3; C 5>2; wire C N without H B C",
        // The unit that is visited anyway, for settings or wiring, moves twice.
        "H 1, B 2, C 3             | H 1, B 3, C 2 vents: roof | C 3>4 spare; B 2>3; C 4>2",
        "H 1, B 2, C 3             | H 1, B 3, C 2 stub: 1 m   | C 3>4 spare; B 2>3; C 4>2; wire C without H B C",
        "H 1, B 2                  | H 2, B 1                  | B 2>3 spare; H 1>2; B 3>1",
        // Each cycle as a whole, the one with the first unit first.
        "H 1, B 2, C 3, D 4, E 5   | H 1, B 5, C 4, D 3, E 2 vents: roof | C 3>6 spare; D 4>3; C 6>4; E 5>6 spare; B 2>5; E 6>2",
        // A unit whose address is taken elsewhere goes off first; at the same place it need not.
        "H 1, B 2 device-type: x, C 3, D 4, E 5 | H 1, C 3, D 4, N 2 device-type: y, E 5 | prepare N; off B; wire H B C without H C D E; wire D N E without H C D E",
        "H 1, B 2 device-type: x, C 3 | H 1, N 2 device-type: y, C 3 | prepare N; wire H B N C without H C",
      })
  void addresses(String before, String after, String steps) {
    assertThat(reported(chain(before), chain(after))).containsExactly(steps.split("; ", -1));
  }

  /** The head unit is set last, wherever it stands. */
  @Promise("head-last")
  @Test
  void theHeadUnitIsSetLast() {
    String text = States.text(chain("H 1, B 2, C 3"), 9600);
    assertThat(reported(States.site(text), States.site(text.replace("9600", "19200"))))
        .containsExactly("line B C H");
    String second =
        text.replace("role: head", "role: @")
            .replaceFirst("role: follower", "role: head")
            .replace("@", "follower");
    assertThat(reported(States.site(second), States.site(second.replace("9600", "19200"))))
        .containsExactly("line H C B");
  }

  /** A chain that cannot be reported apart has no plan. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "unit: B     | unit: H    | the name \"H\" is used twice",
        "unit: B     | units: B   | item 2 of the chain has no name",
        "address: 2  | address: x | \"B\" has no address",
        "chain:      | chian:     | there is no chain",
      })
  void withoutAnOrder(String text, String other, String obstacle) {
    String sound = States.text(chain("H 1, B 2"), 9600);
    String faulty = sound.replace(text, other);
    assertThat(
            SiteComparison.of(States.site(faulty), States.site(sound), ExcludedAddresses.NONE)
                .work())
        .isEqualTo(
            new FieldWork.None(
                "in the earlier state " + obstacle + ": put the line in order first"));
    assertThat(
            SiteComparison.of(States.site(sound), States.site(faulty), ExcludedAddresses.NONE)
                .work())
        .isEqualTo(
            new FieldWork.None("in the later state " + obstacle + ": check and correct it first"));
  }

  /** With two devices of one name on the line, no step says which of them it means. */
  @Test
  void withoutAnOrderForTwoDevicesOfOneName() {
    assertThat(
            SiteComparison.of(
                    States.site(chain("H 1, B 2 device-type: x, C 3, D 4")),
                    States.site(chain("H 1, C 3, B 2 device-type: y, D 4")),
                    ExcludedAddresses.NONE)
                .work())
        .isEqualTo(
            new FieldWork.None(
                "\"B\" is one device before and another one after, at another place or of another"
                    + " kind: take the old one out in one change, and put the new one in with the"
                    + " next"));
  }

  /** All but one of those that share an address are set off the line, or go; else none is left. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "H 1, B 2, C 2, D 4 | H 1, B 2, C 3, D 4 | C 2>3",
        "H 1, B 2, C 2, D 4 | H 1, B 3, C 2, D 4 | B 2>3",
        // The head unit stays, and a spare address is used where the other's is taken.
        "H 1, B 1, C 2      | H 1, B 2, C 3      | B 1>4 spare; set C 2>3; set B 4>2",
        "H 1, B 2, C 2, D 2 | H 1, B 2, C 3, D 4 | C 2>3; D 2>4",
        "H 1, B 2, C 2      | H 1, C 2           | off B; wire H B C",
      })
  void sharedAddressesAreSeparatedFirst(String before, String after, String expected) {
    FieldWork work =
        SiteComparison.of(
                States.site(chain(before)), States.site(chain(after)), ExcludedAddresses.NONE)
            .work();
    assertThat(work).isInstanceOf(FieldWork.Plan.class);
    FieldWork.Plan plan = (FieldWork.Plan) work;
    assertThat(plan.remarks()).hasSize(1).allMatch(one -> one.contains("share an address"));
    assertThat(plan.steps().stream().map(PlannedStep::work).map(PlanOfWorkTest::separated))
        .containsExactly(expected.split("; ", -1));
  }

  private static String separated(Step step) {
    if (step instanceof Step.Separate one) {
      return one.unit() + " " + one.from() + ">" + one.to() + (one.spare() ? " spare" : "");
    }
    if (step instanceof Step.Wire wire) {
      return "wire "
          + wire.places().stream().map(WiringPlace::item).collect(Collectors.joining(" "));
    }
    return step instanceof Step.SetAddress set
        ? "set " + set.unit() + " " + set.from() + ">" + set.to()
        : step instanceof Step.SwitchOff off ? "off " + off.unit() : step.toString();
  }

  /** Whoever gives up leaves the device off the line, and asks nobody at the shared address. */
  @Test
  void nobodyComesBackToASharedAddress() {
    String software = "supervision: {link: serial, zones: [H, B, C]}\n";
    SiteChange.Changed changed =
        SiteComparison.of(
            States.site(States.text(chain("H 1, B 2, C 2"), 9600) + software),
            States.site(States.text(chain("H 1, B 2, C 3"), 9600) + software),
            ExcludedAddresses.NONE);
    assertThat(((FieldWork.Plan) changed.work()).steps().get(1))
        .satisfies(
            step -> {
              assertThat(step.work()).isEqualTo(new Step.Separate("C", 2, 3, false));
              assertThat(step.pollingFirst())
                  .containsExactly(PollingChange.pause(PollingChange.Client.SOFTWARE, "C", 2));
              assertThat(step.checks())
                  .contains(
                      Check.of(Check.Kind.NAME_READ_BACK, "C", 3),
                      Check.of(Check.Kind.NAME_READ_BACK, "B", 2));
              assertThat(step.wayBack())
                  .isEqualTo(
                      new WayBack(
                          List.of(PollingChange.pause(PollingChange.Client.SOFTWARE, "C", 3)),
                          null,
                          List.of()));
            });
  }

  /** No address moves and no zone with it where nobody knows the order. */
  @Test
  void withoutAnOrderNothingElseIsToDo() {
    SiteChange.Changed changed =
        SiteComparison.of(
            States.site(chain("H 1, B 2, C 3")),
            States.site(chain("H 1, B 2, C 2")),
            ExcludedAddresses.NONE);
    assertThat(changed.work())
        .isEqualTo(
            new FieldWork.None(
                "in the later state address 2 is used twice: check and correct it first"));
    assertThat(changed.consequences()).isEmpty();
  }

  /** A unit that is not on the line disturbs nobody, whatever its address. */
  @Test
  void aUnitWithoutAModuleNeedsNoAddressOfItsOwn() {
    String text = States.text(chain("H 1, B 2"), 9600);
    String absent =
        text.replaceFirst(
            "address: 2\n    comm-module: fitted", "address: 1\n    comm-module: absent");
    assertThat(
            SiteComparison.of(States.site(absent), States.site(absent), ExcludedAddresses.NONE)
                .work())
        .isEqualTo(new FieldWork.Plan(List.of(), List.of(), List.of()));
  }

  /** What is said besides the steps, and only where it holds. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "address: 2          | address: 3         | commissioned |",
        "address: 2          | address: 3         | planned      | The earlier state is planned",
        "site: example       | site: sample       | planned      |",
        "termination: none   | termination: 120 ohm | commissioned | The later state has a segment without",
        "shielded: true      | shielded: false    | commissioned | The cable is written differently",
        "baud: 9600          | baud: 19200        | commissioned |",
      })
  void remarks(String text, String other, String stage, String remark) {
    String before =
        States.text(chain("H 1, B 2, C 4"), 9600)
            .replace("stage: commissioned", "stage: " + stage)
            .replace("baud:", "cable: {shielded: true}, baud:");
    FieldWork work =
        SiteComparison.of(
                States.site(before),
                States.site(before.replace(text, other)),
                ExcludedAddresses.NONE)
            .work();
    assertThat(work).isInstanceOf(FieldWork.Plan.class);
    List<String> remarks = ((FieldWork.Plan) work).remarks();
    assertThat(remarks).hasSize(remark == null ? 0 : 1);
    assertThat(remarks).allMatch(one -> one.startsWith(String.valueOf(remark)));
  }
}
