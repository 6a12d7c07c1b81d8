package org.headhouse.linter.command;

import java.nio.file.Path;
import java.util.List;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.files.SiteNames;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.run.SettingsRequest;
import org.headhouse.linter.run.SitesRequest;
import org.jspecify.annotations.Nullable;

/**
 * The options that say where things are, which most goals take.
 *
 * @param base the folder that the command is called in
 */
record SiteOptions(Arguments arguments, BaseFolder base) {

  SettingsRequest settings() {
    return new SettingsRequest(
        base.path().resolve(arguments.get(CommandOption.SITES, "sites")).normalize(),
        path(CommandOption.POLICY),
        path(CommandOption.DEVICE_TYPES),
        base,
        OptionNames.NAMES);
  }

  SitesRequest sites() throws UserError {
    Integer threads = number(CommandOption.THREADS, "1 or more");
    return new SitesRequest(
        settings(),
        arguments.list(CommandOption.INCLUDES, SiteNames.USUAL),
        arguments.list(CommandOption.EXCLUDES, List.of()),
        arguments.has(CommandOption.ALLOW_EMPTY),
        SitesRequest.threads(threads, OptionNames.NAMES));
  }

  /** The place that an option names, or null. */
  @Nullable Path path(CommandOption option) {
    Path written = written(option);
    return written == null ? null : written.normalize();
  }

  /** The place that an option names as it is written, which may lead through links; or null. */
  @Nullable Path written(CommandOption option) {
    String written = arguments.get(option);
    return written == null ? null : base.path().resolve(written);
  }

  /**
   * The whole number of an option, or null.
   *
   * @param remedy what to use where it is none
   */
  @Nullable Integer number(CommandOption option, String remedy) throws UserError {
    String written = arguments.get(option);
    try {
      return written == null ? null : Integer.valueOf(written);
    } catch (NumberFormatException noNumber) {
      throw new UserError(
          "--" + option.word() + " cannot be \"" + written + "\": use " + remedy, noNumber);
    }
  }
}
