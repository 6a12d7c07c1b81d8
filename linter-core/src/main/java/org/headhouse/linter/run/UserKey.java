package org.headhouse.linter.run;

import static java.nio.file.LinkOption.NOFOLLOW_LINKS;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.Map;

/** A secret of one user, in a file that is closed to others. */
final class UserKey {
  private static final int BYTES = 32;

  private UserKey() {}

  /** Reads the secret, which is made where there is none; fails where others may know it. */
  static byte[] read(Path cacheFolder, String user) throws IOException {
    Path folder = cacheFolder.resolve("headhouse-linter");
    Path file = folder.resolve("key");
    boolean isFolderMissing = Files.notExists(folder, NOFOLLOW_LINKS);
    if (cacheFolder.isAbsolute()
        && Files.notExists(file, NOFOLLOW_LINKS)
        && (isFolderMissing || isClosed(folder, user))) {
      make(cacheFolder, folder, file);
    }
    if (!isClosed(folder, user)
        || !isClosed(file, user)
        || !Files.isRegularFile(file, NOFOLLOW_LINKS)
        || Files.size(file) != BYTES) {
      throw new IOException(file + " may be known to others");
    }
    return Files.readAllBytes(file);
  }

  /** The user's cache folder; on Windows, the system closes it to others. */
  static Path cacheFolder(Map<String, String> environment, Path home) {
    boolean windows = home.getFileSystem().getSeparator().equals("\\");
    String name = windows ? "LOCALAPPDATA" : "XDG_CACHE_HOME";
    Path named = home.getFileSystem().getPath(environment.getOrDefault(name, ""));
    return named.isAbsolute() ? named : home.resolve(".cache");
  }

  private static boolean isClosed(Path path, String user) throws IOException {
    var owner = path.getFileSystem().getUserPrincipalLookupService().lookupPrincipalByName(user);
    var posix = Files.getFileAttributeView(path, PosixFileAttributeView.class, NOFOLLOW_LINKS);
    return Files.getOwner(path, NOFOLLOW_LINKS).equals(owner)
        && (posix == null
            || PosixFilePermissions.toString(posix.readAttributes().permissions())
                .endsWith("------"));
  }

  // Temporary files and folders are closed to others from the start.
  private static void make(Path cacheFolder, Path folder, Path file) throws IOException {
    byte[] secret = new byte[BYTES];
    new SecureRandom().nextBytes(secret);
    if (Files.notExists(folder, NOFOLLOW_LINKS)) {
      Files.createDirectories(cacheFolder);
      Path made = Files.createTempDirectory(cacheFolder, ".");
      try {
        Files.move(made, folder);
      } finally {
        Files.deleteIfExists(made);
      }
    }
    Path beside = Files.createTempFile(folder, ".", ".part");
    try {
      Files.move(Files.write(beside, secret), file);
    } finally {
      Files.deleteIfExists(beside);
    }
  }
}
