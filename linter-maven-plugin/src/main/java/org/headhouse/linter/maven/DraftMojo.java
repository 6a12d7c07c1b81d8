package org.headhouse.linter.maven;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.draft.Draft;
import org.headhouse.linter.draft.DraftSettings;
import org.headhouse.linter.draft.ListFault;
import org.headhouse.linter.files.AtomicFile;
import org.headhouse.linter.files.SettingsFiles;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.run.ConsoleReport;
import org.headhouse.linter.run.SharedSettings;
import org.jspecify.annotations.Nullable;

/**
 * Makes a site of a list of units: comma-separated values with the columns name, cable-to-next and
 * device-type, the head unit first. A file that is there already is never touched, and nothing is
 * written while the policy or the device types have an error.
 */
@Mojo(name = "draft", requiresProject = false, threadSafe = true)
public final class DraftMojo extends LinterMojo {
  private static final int REPEATED = 5;

  /** The list of units; there is none by default. */
  @Parameter(property = "linter.csv")
  private @Nullable File csv;

  /** The id of the site: lower-case letters, digits and hyphens; there is none by default. */
  @Parameter(property = "linter.site")
  private @Nullable String site;

  /** The file to write; by default named after the site, in the folder of sites. */
  @Parameter(property = "linter.output")
  private @Nullable File output;

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

  /** The impedance of the cable, which its ends are terminated by. */
  @Parameter(property = "linter.impedance", defaultValue = "120 ohm")
  private String impedance = "120 ohm";

  /**
   * The supply for bias resistors at the head unit, such as 5 V; without it, the resistors to fit
   * are only proposed in a comment.
   */
  @Parameter(property = "linter.biasSupply")
  private @Nullable String biasSupply;

  /** The folder of the sites. */
  @Parameter(property = "linter.sites", defaultValue = "${basedir}/sites")
  private File sites = new File("sites");

  /** The policy; by default the file linter.yaml beside the folder of sites, where there is one. */
  @Parameter(property = "linter.policy")
  private @Nullable File policy;

  /**
   * The types of device; by default the file device-types.yaml beside the folder of sites, where
   * there is one.
   */
  @Parameter(property = "linter.deviceTypes")
  private @Nullable File deviceTypes;

  /** Whether to do nothing. */
  @Parameter(property = "linter.skip", defaultValue = "false")
  private boolean skip;

  /** The folder that paths are shown from. */
  @Parameter(defaultValue = "${basedir}", readonly = true)
  private File basedir = new File("");

  @Override
  void work() throws MojoExecutionException, MojoFailureException, UserError {
    if (skip) {
      getLog().info("The goal is skipped by linter.skip.");
      return;
    }
    checkProperties();
    if (csv == null || site == null) {
      throw new MojoExecutionException(missing());
    }
    draft(csv.toPath(), site);
  }

  /** Maven's own word for it would name the parameters, and not how they are written. */
  private String missing() {
    if (site != null) {
      return "there is no list of units: write -Dlinter.csv=<file>";
    }
    return csv != null
        ? "the site has no id: write -Dlinter.site=<id>"
        : "there is neither a list of units nor an id for the site: write -Dlinter.csv=<file> and"
            + " -Dlinter.site=<id>";
  }

  private void draft(Path list, String id)
      throws MojoExecutionException, MojoFailureException, UserError {
    DraftSettings settings = settings(id);
    Path file = output == null ? sites.toPath().resolve(id + ".yaml") : output.toPath();
    refuseToOverwrite(file);
    SiteLinter linter = linter();
    String text = text(linter, list, settings);
    AtomicFile.writeNew(file, out -> out.write(text.getBytes(UTF_8)));
    console().tell(Level.NOTE, "Wrote " + shown(file) + ": go through the lines marked \"look:\"");
    new ConsoleReport(console(), Level.NOTE)
        .print(linter.check(Stream.of(SiteInput.file(file, shown(file)))));
  }

  private DraftSettings settings(String id) throws MojoExecutionException, UserError {
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
      throw new MojoExecutionException(wrong.getMessage(), wrong);
    }
  }

  private void refuseToOverwrite(Path file) throws UserError {
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new UserError(
          shown(file)
              + " is there already, and is left as it is: move it away, or name another file with"
              + " linter.output");
    }
  }

  private SiteLinter linter() throws MojoExecutionException, MojoFailureException, UserError {
    SettingsFiles files =
        SettingsFiles.find(sites.toPath(), path(policy), path(deviceTypes), PluginParameters::name);
    SharedSettings settings = new SharedSettings(files, BuildFolder.of(basedir).base());
    settings.tell(sites.toPath(), console());
    SiteLinter linter = PluginLinterFactory.build(settings.builder());
    ValidSettingsGuard.require(linter, console());
    return linter;
  }

  private String text(SiteLinter linter, Path list, DraftSettings settings)
      throws MojoFailureException, UserError {
    Draft draft;
    try {
      draft = linter.draft(SiteInput.file(list, shown(list)), settings);
    } catch (IOException unreadable) {
      throw UserError.of("the list of units cannot be read", unreadable);
    }
    if (draft instanceof Draft.Refused refused) {
      tell(refused.faults());
      throw new MojoFailureException(repeated(refused.faults()));
    }
    return ((Draft.Made) draft).text();
  }

  private void tell(List<ListFault> faults) {
    faults.stream()
        .flatMap(fault -> TextReport.lines(fault.location(), fault.message()).stream())
        .forEach(line -> console().found(Level.ERROR, line));
  }

  private static String repeated(List<ListFault> faults) {
    int more = faults.size() - REPEATED;
    return "the list of units has "
        + (faults.size() == 1 ? "1 fault" : faults.size() + " faults")
        + ", and nothing is written:\n"
        + faults.stream()
            .limit(REPEATED)
            .map(fault -> TextReport.headline(fault.location(), fault.message()))
            .collect(Collectors.joining("\n"))
        + (more > 0 ? "\nand " + more + " more" : "");
  }

  private BuildConsole console() {
    return new BuildConsole(getLog());
  }

  private static @Nullable Path path(@Nullable File file) {
    return file == null ? null : file.toPath();
  }

  private String shown(Path path) {
    return BuildFolder.of(basedir).shown(path);
  }
}
