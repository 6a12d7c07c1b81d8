package org.headhouse.linter.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.nio.file.attribute.UserPrincipal;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@EnabledOnOs({OS.LINUX, OS.MAC})
class UserKeyTest {
  private static final String USER = System.getProperty("user.name");

  /** As in a container that knows its user by number only: nothing is kept there. */
  @BeforeAll
  static void theUserHasAName() {
    assumeTrue(!System.getProperty("user.name").equals("?"));
  }

  @TempDir private Path cache;

  private Path key() {
    return cache.resolve("headhouse-linter/key");
  }

  private void assertRefused() {
    assertThatIOException().isThrownBy(() -> UserKey.read(cache, USER));
  }

  private static String rights(Path path) throws IOException {
    return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
  }

  private static void allow(Path path, String rights) throws IOException {
    Files.setPosixFilePermissions(path, PosixFilePermissions.fromString(rights));
  }

  @Test
  void itIsMadeAtFirstUseForItsOwnerOnly() throws IOException {
    byte[] made = UserKey.read(cache, USER);
    assertThat(made).hasSize(32).isEqualTo(Files.readAllBytes(key()));
    assertThat(rights(key())).isEqualTo("rw-------");
    assertThat(rights(key().resolveSibling("."))).isEqualTo("rwx------");
    assertThat(UserKey.read(cache, USER)).isEqualTo(made);
    try (Stream<Path> all = Files.walk(cache)) {
      assertThat(all).containsExactlyInAnyOrder(cache, key().getParent(), key());
    }
  }

  @Test
  void noTwoAreTheSame() throws IOException {
    Path other = cache.resolve("far/off/.cache");
    assertThat(UserKey.read(other, USER)).isNotEqualTo(UserKey.read(cache, USER));
  }

  @Test
  void whereTheOldOneIsDeletedANewOneIsMade() throws IOException {
    byte[] old = UserKey.read(cache, USER);
    Files.delete(key());
    assertThat(UserKey.read(cache, USER)).hasSize(32).isNotEqualTo(old);
  }

  @ParameterizedTest
  @ValueSource(strings = {"rw-r-----", "rw----r--", "rw--w----", "rw-----w-", "rw---x---"})
  void oneThatOthersCanReadOrWriteIsRefused(String rights) throws IOException {
    UserKey.read(cache, USER);
    allow(key(), rights);
    assertRefused();
    assertThat(rights(key())).isEqualTo(rights);
  }

  @ParameterizedTest
  @ValueSource(strings = {"rwxr-x---", "rwx-w----", "rwxrwxrwx"})
  void oneInAFolderThatOthersCanUseIsRefused(String rights) throws IOException {
    UserKey.read(cache, USER);
    allow(key().resolveSibling("."), rights);
    assertRefused();
  }

  @Test
  void oneOfSomebodyElseIsRefused() throws IOException {
    UserKey.read(cache, USER);
    String other = USER.equals("daemon") ? "root" : "daemon";
    UserPrincipal known;
    try {
      known = cache.getFileSystem().getUserPrincipalLookupService().lookupPrincipalByName(other);
    } catch (IOException unknown) {
      known = null;
    }
    assumeTrue(known != null, "this machine knows no user " + other);
    assertThatIOException().isThrownBy(() -> UserKey.read(cache, other));
    assertThatIOException().isThrownBy(() -> UserKey.read(cache, "nobody of this name"));
  }

  @Test
  void aLinkIsRefused() throws IOException {
    UserKey.read(cache, USER);
    Path elsewhere = Files.move(key(), cache.resolve("elsewhere"));
    Files.createSymbolicLink(key(), elsewhere);
    assertRefused();
    Files.delete(elsewhere);
    assertRefused();
    assertThat(elsewhere).doesNotExist();
  }

  @Test
  void aFolderThatIsALinkIsRefused() throws IOException {
    UserKey.read(cache, USER);
    Path elsewhere = Files.move(cache.resolve("headhouse-linter"), cache.resolve("elsewhere"));
    Files.createSymbolicLink(cache.resolve("headhouse-linter"), elsewhere);
    assertRefused();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 31, 33, 5000})
  void oneOfAnotherSizeIsRefused(int size) throws IOException {
    UserKey.read(cache, USER);
    Files.write(key(), new byte[size]);
    assertRefused();
  }

  @Test
  void aFolderIsNoKey() throws IOException {
    Files.createDirectories(key());
    allow(key(), "rwx------");
    allow(key().resolveSibling("."), "rwx------");
    assertRefused();
  }

  /** To open it would wait for somebody who writes. */
  @Test
  @Timeout(value = 30, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
  void aPipeIsNoKey() throws Exception {
    UserKey.read(cache, USER);
    Files.delete(key());
    Process made = new ProcessBuilder("mkfifo", "-m", "600", key().toString()).start();
    assertThat(made.waitFor(10, TimeUnit.SECONDS)).isTrue();
    assertRefused();
  }

  @Test
  void whereItCannotBeMadeThereIsNone() throws IOException {
    Path file = Files.writeString(cache.resolve("file"), "");
    assertThatIOException().isThrownBy(() -> UserKey.read(file, USER));
  }

  /** As where a user has no home. */
  @Test
  void nothingIsMadeInTheFolderThatHappensToBeTheCurrentOne() {
    Path relative = Path.of("?", ".cache");
    assertThatIOException().isThrownBy(() -> UserKey.read(relative, USER));
    assertThat(relative.getParent()).doesNotExist();
  }

  /** XDG Base Directory Specification 0.8: a relative path is invalid and ignored. */
  @ParameterizedTest
  @CsvSource({
    "XDG_CACHE_HOME, /scratch/cache, /scratch/cache",
    "XDG_CACHE_HOME, '', /home/ro/.cache",
    "XDG_CACHE_HOME, cache, /home/ro/.cache",
    "LOCALAPPDATA, /scratch/cache, /home/ro/.cache",
    "HOME, /scratch, /home/ro/.cache"
  })
  void theCacheFolderIsTheOneOfTheUser(String name, String value, Path expected) {
    assertThat(UserKey.cacheFolder(Map.of(name, value), Path.of("/home/ro"))).isEqualTo(expected);
  }

  @Test
  void windowsHasAFolderOfItsOwn() throws IOException {
    try (FileSystem windows =
        Jimfs.newFileSystem(
            Configuration.windows().toBuilder().setAttributeViews("basic", "owner").build())) {
      Path home = windows.getPath("C:\\Users\\ro");
      String local = "C:\\Users\\ro\\AppData\\Local";
      Path folder =
          UserKey.cacheFolder(Map.of("LOCALAPPDATA", local, "XDG_CACHE_HOME", "C:\\x"), home);
      assertThat(folder).isEqualTo(windows.getPath(local));
      assertThat(UserKey.cacheFolder(Map.of(), home)).isEqualTo(home.resolve(".cache"));
      byte[] made = UserKey.read(folder, "user");
      assertThat(made).hasSize(32).isEqualTo(UserKey.read(folder, "user"));
      assertThatIOException().isThrownBy(() -> UserKey.read(folder, "somebody else"));
    }
  }
}
