package org.headhouse.linter.editor;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.files.SettingsFiles;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.run.LinterFactory;
import org.headhouse.linter.run.SettingsRequest;
import org.jspecify.annotations.Nullable;

/**
 * Finds what holds for a text as the command finds it, and makes the linter for it. Linters are
 * made anew once a file that holds for sites changes, in the editor or on the disk. For one thread.
 */
final class Surroundings {
  private static final int MOST_LINTERS = 4;

  private final SettingsRequest asked;
  private final Map<SettingsFiles, Made> made =
      new LinkedHashMap<>(8, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<SettingsFiles, Made> eldest) {
          return size() > MOST_LINTERS;
        }
      };

  /**
   * @param asked what the server was called with; its sites are replaced by each text
   */
  Surroundings(SettingsRequest asked) {
    this.asked = asked;
  }

  /** What holds for a text. */
  record Found(SettingsFiles files, SiteLinter linter) {}

  private record Made(List<Object> stamps, @Nullable Path baseline, SiteLinter linter) {}

  BaseFolder base() {
    return asked.base();
  }

  /**
   * Finds what holds for a text.
   *
   * @param open finds the text that is open in place of a file
   * @throws UserError where something that holds for the text cannot be used
   */
  Found of(OpenText text, Function<Path, @Nullable OpenText> open) throws UserError {
    SettingsFiles files = files(text);
    Made known = made.get(files);
    if (known == null || !known.stamps().equals(stamps(files, known.baseline(), open))) {
      // Before they are read: what is written meanwhile is read the next time.
      List<Object> stamps = stamps(files, null, open);
      SiteLinter linter = linter(files, open);
      Path baseline = linter.baselineFile().orElse(null);
      if (baseline != null) {
        stamps.add(stamp(baseline, open));
      }
      known = new Made(stamps, baseline, linter);
      made.put(files, known);
    }
    return new Found(files, known.linter());
  }

  private SettingsFiles files(OpenText text) throws UserError {
    Path file = text.file();
    if (file == null) {
      return new SettingsFiles(asked.policy(), asked.deviceTypes());
    }
    return switch (text.role()) {
      case POLICY -> new SettingsFiles(file, there(asked.deviceTypes(), file, "device-types.yaml"));
      case DEVICE_TYPES -> new SettingsFiles(there(asked.policy(), file, "linter.yaml"), file);
      default -> asked.forFile(file).find().files();
    };
  }

  private static @Nullable Path there(@Nullable Path named, Path beside, String name) {
    Path usual = beside.resolveSibling(name);
    return named == null && Files.isRegularFile(usual) ? usual : named;
  }

  private SiteLinter linter(SettingsFiles files, Function<Path, @Nullable OpenText> open)
      throws UserError {
    SiteLinter.Builder builder = SiteLinter.builder().shownFrom(base().path()).perhapsLive();
    Path policy = files.policy();
    if (policy != null) {
      builder.policy(input(policy, open));
    }
    Path types = files.deviceTypes();
    if (types != null) {
      builder.deviceTypes(input(types, open));
    }
    return LinterFactory.build(
        builder,
        Surroundings.class.getClassLoader(),
        "on the class path",
        "correct the name, or make it with the Maven plugin's goal baseline");
  }

  private SiteInput input(Path file, Function<Path, @Nullable OpenText> open) {
    OpenText text = open.apply(file);
    return text == null ? SiteInput.file(file, base().shown(file)) : text.input(base());
  }

  private static List<Object> stamps(
      SettingsFiles files, @Nullable Path baseline, Function<Path, @Nullable OpenText> open) {
    List<Path> all = new ArrayList<>(files.all());
    if (baseline != null) {
      all.add(baseline);
    }
    List<Object> stamps = new ArrayList<>();
    for (Path file : all) {
      stamps.add(stamp(file, open));
    }
    return stamps;
  }

  private static Object stamp(Path file, Function<Path, @Nullable OpenText> open) {
    OpenText text = open.apply(file);
    if (text != null) {
      return text.text();
    }
    try {
      FileTime changed = Files.getLastModifiedTime(file);
      return List.of(changed, Files.size(file));
    } catch (IOException gone) {
      return List.of();
    }
  }
}
