package org.headhouse.linter.maven;

import java.io.File;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import org.eclipse.jgit.lib.Config;
import org.eclipse.jgit.lib.ConfigConstants;
import org.eclipse.jgit.storage.file.FileBasedConfig;
import org.eclipse.jgit.util.FS;
import org.eclipse.jgit.util.SystemReader;
import org.jspecify.annotations.Nullable;

/**
 * Keeps git's library to the repository at hand: it neither looks for settings of the user or the
 * machine, for which it would start the program git, nor writes any of its own.
 */
final class HermeticSystemReader extends SystemReader.Delegate {
  private static final SystemReader READER = new HermeticSystemReader(SystemReader.getInstance());

  private HermeticSystemReader(SystemReader usual) {
    super(usual);
  }

  static void use() {
    SystemReader.setInstance(READER);
  }

  @Override
  public FileBasedConfig openUserConfig(@Nullable Config parent, FS fs) {
    return new Nothing(parent, fs);
  }

  @Override
  public FileBasedConfig openSystemConfig(@Nullable Config parent, FS fs) {
    return new Nothing(parent, fs);
  }

  @Override
  public FileBasedConfig openJGitConfig(@Nullable Config parent, FS fs) {
    return new Nothing(parent, fs);
  }

  private static final class Nothing extends FileBasedConfig {
    /** FAT writes down every second second. */
    private static final Duration COARSEST = Duration.ofSeconds(2);

    Nothing(@Nullable Config parent, FS fs) {
      super(parent, new File("no-settings"), fs);
    }

    @Override
    public void load() {
      // There is nothing to read.
    }

    @Override
    public void save() {
      // There is nothing to keep.
    }

    /**
     * How exact the file system's times are would be measured for seconds, with files written into
     * the repository. The coarsest that there is holds for all.
     */
    @Override
    public long getTimeUnit(
        String section, @Nullable String subsection, String name, long otherwise, TimeUnit wanted) {
      return section.equals(ConfigConstants.CONFIG_FILESYSTEM_SECTION)
          ? wanted.convert(COARSEST)
          : super.getTimeUnit(section, subsection, name, otherwise, wanted);
    }

    @Override
    public boolean isOutdated() {
      return false;
    }
  }
}
