package org.headhouse.linter.maven;

import java.util.List;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.goal.DiagnoseRequest;
import org.headhouse.linter.run.DiagnosisOutput;
import org.headhouse.linter.run.SitesRequest;
import org.jspecify.annotations.Nullable;

/**
 * Compares meter readings with what the meter would show for each single fault of a line. Prints
 * the faults that agree and what to measure next, and writes both into diagnosis.json. The readings
 * come from as-found of each site, else from its latest record; sites without readings are left
 * out. Sites may have results; what is missing in a site is reported. Policy and device types must
 * have no error.
 */
@Mojo(name = "diagnose", requiresProject = false, threadSafe = true)
public final class DiagnoseMojo extends SitesMojo {
  /**
   * Readings of the one site that linter.sites names, instead of those in its file, in the form of
   * as-found: [{at: Propagation, pair-resistance: 118 ohm}].
   */
  @Parameter(property = "linter.asFound")
  private @Nullable String asFound;

  @Override
  DiagnoseRequest request() throws UserError {
    SitesRequest sites = sitesRequest();
    return new DiagnoseRequest(
        console -> List.of(sites.find()),
        sites.settings().base(),
        new DiagnosisOutput(asFound, output()));
  }
}
