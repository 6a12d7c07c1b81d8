package org.headhouse.linter.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.SettingsRequest;
import org.headhouse.linter.run.SharedSettings;
import org.headhouse.linter.source.Limits;
import org.jspecify.annotations.Nullable;

/**
 * One text from the standard input, such as a file in an editor that was not saved, or one that git
 * has staged.
 *
 * @param file that it is for, which need not be there, or null
 */
record PipedText(@Nullable Path file, SiteInput input) {
  /** The file that is none. */
  static final String MARK = "-";

  private static final String NAMELESS = "<standard input>";

  static boolean isAsked(Arguments arguments) {
    return arguments.files().contains(MARK) || arguments.get(CommandOption.NAME) != null;
  }

  /** Reads the text. */
  static PipedText of(Arguments arguments, BaseFolder base, InputStream in) throws UserError {
    if (!arguments.files().equals(List.of(MARK))) {
      throw new UserError(
          arguments.files().contains(MARK)
              ? "- goes with no other file: call the command once for each"
              : "--name works only with -: use - as the one file, or leave it out");
    }
    if (arguments.get(CommandOption.SINCE) != null) {
      throw new UserError("--since does not go with -: name the file that is compared");
    }
    for (CommandOption option : List.of(CommandOption.INCLUDES, CommandOption.EXCLUDES)) {
      if (arguments.get(option) != null) {
        throw new UserError(
            "--"
                + option.word()
                + " does not go with -, which is checked in any case: leave it out");
      }
    }
    String name = arguments.get(CommandOption.NAME);
    Path file = name == null ? null : base.path().resolve(name).normalize();
    byte[] bytes = read(in);
    return new PipedText(
        file, new SiteInput(file == null ? NAMELESS : base.shown(file), most -> bytes));
  }

  private static byte[] read(InputStream in) throws UserError {
    try {
      // One byte more than a check reads, so that it refuses what is longer.
      return in.readNBytes(Limits.DEFAULT.bytes() + 1);
    } catch (IOException broken) {
      throw UserError.of("the standard input cannot be read", broken);
    }
  }

  /** A linter with what holds for the file; without a name, with what holds for all sites. */
  SiteLinter.Builder builder(SettingsRequest request, Console console) throws UserError {
    SettingsRequest asked = file == null ? request : request.forFile(file);
    SharedSettings settings = asked.find();
    settings.report(asked.sites(), console);
    return settings.builder();
  }
}
