package org.headhouse.linter.maven;

import java.io.File;
import org.eclipse.jgit.lib.Config;
import org.eclipse.jgit.storage.file.FileBasedConfig;
import org.eclipse.jgit.util.FS;
import org.eclipse.jgit.util.SystemReader;
import org.jspecify.annotations.Nullable;

/**
 * Keeps git's library to the repository at hand: it neither looks for settings of the user or the
 * machine, for which it would start the program git, nor writes any of its own.
 */
final class OnlyTheRepository extends SystemReader.Delegate {
  private static final SystemReader READER = new OnlyTheRepository(SystemReader.getInstance());

  private OnlyTheRepository(SystemReader usual) {
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
    Nothing(@Nullable Config parent, FS fs) {
      super(parent, new File("no-settings"), fs);
    }

    @Override
    public void load() {
      // There is nothing to read.
    }

    @Override
    public void save() {
      // What is measured of the file system is measured again next time.
    }

    @Override
    public boolean isOutdated() {
      return false;
    }
  }
}
