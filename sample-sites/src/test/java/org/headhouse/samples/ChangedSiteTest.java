package org.headhouse.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SiteLinter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Both states of the changed site are good ones. */
class ChangedSiteTest {
  private static final Path CHANGED = Path.of("changed");

  @ParameterizedTest
  @ValueSource(strings = {"before", "after"})
  void hasNoResults(String state) throws IOException {
    CheckReport report =
        SiteLinter.builder()
            .deviceTypes(CHANGED.resolve("device-types.yaml"))
            .build()
            .checkFiles(List.of(CHANGED.resolve(state).resolve("hazelgate.yaml")));
    assertThat(report.results()).isEmpty();
    assertThat(report.notifications()).isEmpty();
  }
}
