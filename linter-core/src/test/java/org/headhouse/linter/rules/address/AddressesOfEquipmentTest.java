package org.headhouse.linter.rules.address;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Every server on the line has an address of its own, from 1 to 247 (MODBUS over Serial Line V1.02,
 * section 2.2), whether it is a unit or not.
 */
class AddressesOfEquipmentTest {
  private static final String TYPES =
      "format: 1\ndevice-types: [{id: rig, address-limit: 63, unit-load: 1/4}]\n";

  /** Units 1, 2 and 3, with equipment between the first two and at the end. */
  private static String site(String address, String other) {
    return Example.SITE
        .replace(
            "  - unit: Seedling North\n",
            equipment("Dosing Rig", address, "none") + "  - unit: Seedling North\n")
        .replace(
            "  - unit: Hardening Bay\n",
            equipment("Meter", other, "none") + "  - unit: Hardening Bay\n");
  }

  private static String equipment(String name, String address, String termination) {
    return """
          - equipment: %s
            address: %s
            broadcasts: ignored
            termination: %s
            cable-to-next: 10 m
        """
        .formatted(name, address, termination);
  }

  private static List<Result> results(String site, String keptFree) throws IOException {
    String policy =
        "format: 1\nrule-set: 1\nrules: {address.kept-free: {parameters: {ranges: ["
            + keptFree
            + "]}}}\n";
    return SiteLinter.builder()
        .deviceTypes(SiteInput.text("device-types.yaml", TYPES))
        .policy(SiteInput.text("linter.yaml", policy))
        .build()
        .checkText("example.yaml", site)
        .results();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "",
      value = {
        // Taken, and no gap.
        "57 | 58 || 0 |",
        "2  | 58 || 1 | address.duplicate: number the units in the order of the chain, without 2",
        "3  | 58 || 1 | address.duplicate: give \"Hardening Bay\" address 4",
        "57 | 57 || 1 | address.duplicate: give \"Meter\" address 58",
        "57 | 57 | 100-109 | 1 | address.duplicate: give \"Meter\" address 100",
        // The head unit keeps 1, so that no other rule sends it back.
        "1  | 58 || 1 | address.duplicate: give \"Dosing Rig\" address 59",
        "57 | 1  || 1 | address.duplicate: give \"Meter\" address 58",
        "1  | 1  || 2 | address.duplicate: give \"Meter\" address 5",
        "0  | 58 || 1 | address.reserved: give \"Dosing Rig\" address 59",
        "248 | 58 || 1 | address.reserved: give \"Dosing Rig\" address 59",
        "247 | 250 || 1 | address.reserved: give \"Meter\" address 4",
        // What the policy keeps free is for equipment.
        "105 | 58 | 100-109 | 0 |",
        "250 | 58 | 100-109 | 1 | address.reserved: give \"Dosing Rig\" address 100",
        "250 | 100 | 100-109 | 1 | address.reserved: give \"Dosing Rig\" address 101",
      })
  void theyAreTakenAndNeedNoOrder(
      String address, String other, String keptFree, int count, String told) throws IOException {
    List<Result> results = results(site(address, other), keptFree == null ? "" : keptFree);
    assertThat(results).hasSize(count);
    if (told != null) {
      Result last = results.get(count - 1);
      assertThat(last.rule() + ": " + last.message().remedy()).isEqualTo(told);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "",
      value = {
        "63 | 62 |",
        "64 | 62 | give \"Dosing Rig\" address 63",
        "64 | 63 | give \"Dosing Rig\" address 4",
      })
  void theLimitOfItsTypeHoldsForEquipment(String address, String other, String remedy)
      throws IOException {
    String site =
        site(address, other)
            .replace("equipment: Dosing Rig\n", "equipment: Dosing Rig\n    device-type: rig\n");
    List<Result> results = results(site, "");
    assertThat(results).hasSize(remedy == null ? 0 : 1);
    for (Result result : results) {
      assertThat(result.rule()).isEqualTo("address.beyond-limit");
      assertThat(result.message().remedy()).isEqualTo(remedy);
      // No numbering of the units mends it.
      assertThat(result.fix()).isNull();
    }
  }

  /** The units are numbered around equipment. */
  @ParameterizedTest
  @CsvSource({"2, 58", "3, 58"})
  void theFixNumbersTheUnits(String address, String other) throws IOException {
    assertThat(results(site(address, other), ""))
        .singleElement()
        .satisfies(
            result -> assertThat(requireNonNull(result.fix()).kind()).isEqualTo(FixKind.SAFE));
  }
}
