package org.headhouse.linter.fuzz;

import java.io.IOException;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.ContractExample;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;

/** No device types make a check fail, and what is told of them lies in their file. */
final class DeviceTypesProperty implements Property {
  private static final String FILE = "device-types.yaml";

  @Override
  public void tryWith(byte[] input) throws IOException {
    CheckReport report =
        SiteLinter.builder()
            .deviceTypes(new SiteInput(FILE, most -> input))
            .clock(Today.CLOCK)
            .build()
            .checkText("alder-brook.yaml", ContractExample.SITE);
    Told.noTrouble(report.notifications());
    new Told(FILE, input).results(report.results());
  }
}
