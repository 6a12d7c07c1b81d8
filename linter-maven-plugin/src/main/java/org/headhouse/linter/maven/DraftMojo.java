package org.headhouse.linter.maven;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.draft.DraftSettings;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.run.SettingsRequest;
import org.jspecify.annotations.Nullable;

/**
 * Makes a site from a list of its units: comma-separated values with a row of headings, such as
 * name, address, vents and cable-to-next. If the site exists, shows what the list changes in it,
 * and writes the changes only if linter.write is set. A list that was filled in on a visit is added
 * to the record of its site in the same way. Nothing is written while the policy or the device
 * types have an error.
 */
@Mojo(name = "draft", requiresProject = false, threadSafe = true)
public final class DraftMojo extends SettingsMojo {
  /** The list of units; has no default. */
  @Parameter(property = "linter.csv")
  private @Nullable File csv;

  /**
   * A list that was filled in on a visit, as the goal report writes it for each site, in UTF-8 or
   * UTF-16; has no default. What was found is added to the record of commissioning of the site that
   * the list names. Takes the place of a list of units.
   */
  @Parameter(property = "linter.visit")
  private @Nullable File visit;

  /** The id of the site: lower-case letters, digits and hyphens; has no default. */
  @Parameter(property = "linter.site")
  private @Nullable String site;

  /**
   * The file of the site; by default named after the site, in the folder of sites, or site.yaml in
   * a folder of its name. An existing file is compared with the list.
   */
  @Parameter(property = "linter.output")
  private @Nullable File output;

  /** Whether to write an existing site; without it, the goal only shows what would change. */
  @Parameter(property = "linter.write", defaultValue = "false")
  private boolean write;

  /** The name of the site as people say it. */
  @Parameter(property = "linter.title")
  private @Nullable String title;

  /** What the weather station measures. */
  @Parameter(
      property = "linter.readings",
      defaultValue = "light,temperature,wind-speed,wind-direction,rain")
  private List<String> readings = List.of();

  /** The rate of the line in bit/s. */
  @Parameter(property = "linter.baud", defaultValue = "9600")
  private int baud = 9600;

  /** The parity: even, odd, or none, which goes with 2 stop bits. */
  @Parameter(property = "linter.parity", defaultValue = "even")
  private String parity = "even";

  /** The gauge of the conductors, in AWG or mm2. */
  @Parameter(property = "linter.gauge", defaultValue = "24 AWG")
  private String gauge = "24 AWG";

  /** Whether the cable has a shield. */
  @Parameter(property = "linter.shielded", defaultValue = "true")
  private boolean shielded = true;

  /** The impedance of the cable, and of the terminators at its ends. */
  @Parameter(property = "linter.impedance", defaultValue = "120 ohm")
  private String impedance = "120 ohm";

  /**
   * The supply for bias resistors at the head unit, such as 5 V; without it, the resistors to fit
   * are only proposed in a comment.
   */
  @Parameter(property = "linter.biasSupply")
  private @Nullable String biasSupply;

  @Override
  GoalRequest request() throws UserError {
    if (visit != null) {
      return visitRequest(visit);
    }
    if (csv == null || site == null) {
      throw new UserError(missing());
    }
    SettingsRequest settings = settingsRequest();
    Path file = output == null ? UsualSiteFile.of(settings.sites(), site) : output.toPath();
    return new DraftRequest(settings, csv.toPath(), draft(site), file, write);
  }

  private VisitRequest visitRequest(File list) throws UserError {
    if (csv != null) {
      throw new UserError(
          "linter.csv is a list of units, and linter.visit one from a visit: give one of the two");
    }
    return new VisitRequest(
        settingsRequest(), list.toPath(), site, output == null ? null : output.toPath(), write);
  }

  /** Maven's own word for it would name the parameters, and not how they are written. */
  private String missing() {
    if (site != null) {
      return "there is no list of units: use -Dlinter.csv=<file>";
    }
    return csv != null
        ? "the site has no id: use -Dlinter.site=<id>"
        : "there is neither a list of units nor an id for the site: use -Dlinter.csv=<file> and"
            + " -Dlinter.site=<id>";
  }

  private DraftSettings draft(String id) throws UserError {
    try {
      return new DraftSettings(
          id,
          title,
          DraftParameters.readings("linter.readings", readings),
          baud,
          DraftParameters.parity("linter.parity", parity),
          DraftParameters.gauge("linter.gauge", gauge),
          shielded,
          DraftParameters.resistance("linter.impedance", impedance),
          biasSupply == null ? null : DraftParameters.voltage("linter.biasSupply", biasSupply));
    } catch (IllegalArgumentException wrong) {
      throw new UserError(String.valueOf(wrong.getMessage()), wrong);
    }
  }
}
