package org.headhouse.linter.maven;

import java.io.File;
import java.util.List;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.goal.DraftChoice;
import org.headhouse.linter.goal.DraftOptions;
import org.headhouse.linter.goal.GoalRequest;
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

  /** For a new site: its name as people say it. */
  @Parameter(property = "linter.title")
  private @Nullable String title;

  /**
   * For a new site: what the weather station measures; by default light, temperature, wind-speed,
   * wind-direction and rain.
   */
  @Parameter(property = "linter.readings")
  private @Nullable List<String> readings;

  /** For a new site: the rate of the line in bit/s; by default 9600. */
  @Parameter(property = "linter.baud")
  private @Nullable Integer baud;

  /** For a new site: the parity, even, odd or none (with 2 stop bits); by default even. */
  @Parameter(property = "linter.parity")
  private @Nullable String parity;

  /** For a new site: the gauge of the conductors, in AWG or mm2; by default 24 AWG. */
  @Parameter(property = "linter.gauge")
  private @Nullable String gauge;

  /** For a new site: whether the cable has a shield; by default true. */
  @Parameter(property = "linter.shielded")
  private @Nullable Boolean shielded;

  /**
   * For a new site: the impedance of the cable, and of the terminators at its ends; by default 120
   * ohm.
   */
  @Parameter(property = "linter.impedance")
  private @Nullable String impedance;

  /**
   * For a new site: the supply for bias resistors at the head unit, such as 5 V; without it, the
   * resistors to fit are only proposed in a comment.
   */
  @Parameter(property = "linter.biasSupply")
  private @Nullable String biasSupply;

  @Override
  GoalRequest request() throws UserError {
    // Maven makes an empty list of one that is not given.
    List<String> asked = readings == null || readings.isEmpty() ? null : readings;
    DraftOptions options =
        new DraftOptions(title, asked, baud, parity, gauge, shielded, impedance, biasSupply);
    return new DraftChoice(
            settingsRequest(), path(csv), path(visit), site, path(output), write, options)
        .request();
  }
}
