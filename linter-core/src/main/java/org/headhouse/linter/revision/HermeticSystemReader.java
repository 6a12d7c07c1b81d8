package org.headhouse.linter.revision;

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
 * Lets git's library read the repository alone: it neither looks for settings of the user or the
 * machine, for which it would start the program git, nor writes any of its own.
 */
public final class HermeticSystemReader extends SystemReader.Delegate {
  private static final SystemReader READER = new HermeticSystemReader(SystemReader.getInstance());

  private HermeticSystemReader(SystemReader usual) {
    super(usual);
  }

  /** From now on, for all uses of the library in this program. */
  public static void use() {
    SystemReader.setInstance(READER);
  }

  @Override
  public FileBasedConfig openUserConfig(@Nullable Config parent, FS fs) {
    return new NoSettings(parent, fs);
  }

  @Override
  public FileBasedConfig openSystemConfig(@Nullable Config parent, FS fs) {
    return new NoSettings(parent, fs);
  }

  @Override
  public FileBasedConfig openJGitConfig(@Nullable Config parent, FS fs) {
    return new NoSettings(parent, fs);
  }

  private static final class NoSettings extends FileBasedConfig {
    /** FAT keeps times to 2 s. */
    private static final Duration COARSEST = Duration.ofSeconds(2);

    NoSettings(@Nullable Config parent, FS fs) {
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
     * Not measured, which would take seconds and write files into the repository: the coarsest
     * resolution is safe for all file systems.
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
