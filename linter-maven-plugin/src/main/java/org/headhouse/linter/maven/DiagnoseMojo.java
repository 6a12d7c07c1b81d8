package org.headhouse.linter.maven;

import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.run.DiagnosisOutput;
import org.jspecify.annotations.Nullable;

/**
 * Compares readings of a meter with what each single fault of a line would make it show, prints the
 * faults that agree and what to measure next, and writes both into diagnosis.json. The readings are
 * those under as-found of each site, else those of its latest record; sites without any are left
 * out. Sites need not be without results; what is missing in one is reported. Policy and device
 * types have to be without an error.
 */
@Mojo(name = "diagnose", requiresProject = false, threadSafe = true)
public final class DiagnoseMojo extends SitesMojo {
  /**
   * Readings of the one site that linter.sites names, in place of those of its file, written as
   * under as-found: [{at: Propagation, pair-resistance: 118 ohm}].
   */
  @Parameter(property = "linter.asFound")
  private @Nullable String asFound;

  @Override
  DiagnoseRequest request() throws UserError {
    return new DiagnoseRequest(sitesRequest(), new DiagnosisOutput(asFound, output()));
  }
}
