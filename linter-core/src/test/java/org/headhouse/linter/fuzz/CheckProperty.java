package org.headhouse.linter.fuzz;

import java.io.IOException;
import java.util.stream.Stream;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.ContractExample;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;

/** A check never fails, and what it tells lies in the file. */
final class CheckProperty implements Property {
  private static final String FILE = "alder-brook.yaml";

  private final SiteLinter linter;

  CheckProperty() throws IOException {
    this.linter = linter(1);
  }

  /** A linter that knows device types. */
  static SiteLinter linter(int threads) throws IOException {
    return SiteLinter.builder()
        .threads(threads)
        .deviceTypes(SiteInput.text("device-types.yaml", ContractExample.TYPES))
        .clock(Today.CLOCK)
        .build();
  }

  @Override
  public void tryWith(byte[] input) {
    CheckReport report = linter.check(Stream.of(new SiteInput(FILE, most -> input)));
    Told.noTrouble(report.notifications());
    Demand.that(report.files() == 1, "%d files", report.files());
    new Told(FILE, input).results(report.results());
  }
}
