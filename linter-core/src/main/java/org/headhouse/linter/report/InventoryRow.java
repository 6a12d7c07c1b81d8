package org.headhouse.linter.report;

import java.util.List;
import org.headhouse.linter.stability.Internal;

/**
 * One unit in the inventory of all sites; what the file does not say is empty.
 *
 * @param site its id, or the path of its file where it has none
 * @param ip with the length of its prefix, as the file has it
 * @param provedOn the day on which the whole line was last proved; empty unless it is commissioned,
 *     and its certificate calls it proved
 * @param nextProof the day on which it is due again; empty where the policy sets no period; today
 *     where it is commissioned and not proved
 * @param openExceptions the rules of which results are accepted for the unit or the whole site,
 *     with the last day where there is one
 */
public record InventoryRow(
    String customer,
    String site,
    String unit,
    String role,
    String address,
    String deviceType,
    String firmware,
    String serialNumber,
    String vents,
    String ip,
    String stage,
    String provedOn,
    String provedBy,
    String nextProof,
    String openExceptions) {
  @Internal
  public InventoryRow {}

  static final List<String> HEADINGS =
      List.of(
          "customer",
          "site",
          "unit",
          "role",
          "address",
          "device-type",
          "firmware",
          "serial-number",
          "vents",
          "ip",
          "stage",
          "proved-on",
          "proved-by",
          "next-proof",
          "open-exceptions");

  List<String> fields() {
    return List.of(
        customer,
        site,
        unit,
        role,
        address,
        deviceType,
        firmware,
        serialNumber,
        vents,
        ip,
        stage,
        provedOn,
        provedBy,
        nextProof,
        openExceptions);
  }
}
