package org.headhouse.linter;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A part from a process that has another version of the linter. */
class PartOfOtherVersionTest {
  private static final Clock TODAY =
      Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC);
  private static final String VERSION = "/report/version.properties";

  /**
   * The classes of the linter once more, with another version in the file that says it; null for
   * the same one.
   */
  private static final class OtherProcess extends ClassLoader {
    private static final String OURS = OtherProcess.class.getPackageName() + ".";

    private final @Nullable String version;

    OtherProcess(@Nullable String version) {
      super(OtherProcess.class.getClassLoader());
      this.version = version;
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
      synchronized (getClassLoadingLock(name)) {
        Class<?> loaded = findLoadedClass(name);
        if (loaded != null || !name.startsWith(OURS)) {
          return loaded == null ? super.loadClass(name, resolve) : loaded;
        }
        try (InputStream in = getParent().getResourceAsStream(name.replace('.', '/') + ".class")) {
          if (in == null) {
            throw new ClassNotFoundException(name);
          }
          byte[] bytes = in.readAllBytes();
          return defineClass(name, bytes, 0, bytes.length);
        } catch (IOException unreadable) {
          throw new ClassNotFoundException(name, unreadable);
        }
      }
    }

    @Override
    public @Nullable InputStream getResourceAsStream(String name) {
      return version != null && name.endsWith(VERSION)
          ? new ByteArrayInputStream(("version=" + version).getBytes(ISO_8859_1))
          : super.getResourceAsStream(name);
    }
  }

  /** What the other process does. */
  static final class Sent implements Callable<byte[]> {
    @Override
    public byte[] call() throws IOException {
      ReportPart part = linter().checkPart(Stream.of(SiteInput.text("example.yaml", Example.SITE)));
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
        out.writeObject(part);
      }
      return bytes.toByteArray();
    }
  }

  private static SiteLinter linter() throws IOException {
    return SiteLinter.builder().clock(TODAY).build();
  }

  private static ReportPart partOf(@Nullable String version) throws Exception {
    Class<?> sender = new OtherProcess(version).loadClass(Sent.class.getName());
    assertThat(sender).isNotEqualTo(Sent.class);
    var constructor = sender.getDeclaredConstructor();
    constructor.setAccessible(true);
    byte[] sent = (byte[]) Objects.requireNonNull(((Callable<?>) constructor.newInstance()).call());
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(sent))) {
      return (ReportPart) in.readObject();
    }
  }

  /** Its rules may have let pass what those of this version report. */
  @ParameterizedTest
  @ValueSource(strings = {"0.9.0", "1.0.1"})
  void isRefused(String version) throws Exception {
    ReportPart part = partOf(version);
    SiteLinter linter = linter();
    assertThatThrownBy(() -> linter.join(List.of(part)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("another version of the linter");
    assertThatThrownBy(() -> linter.join(List.of(part), 1))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** The other process differs in nothing but its version. */
  @Test
  void ofTheSameVersionIsTaken() throws Exception {
    assertThat(linter().join(List.of(partOf(null)), 1))
        .isEqualTo(linter().check(Stream.of(SiteInput.text("example.yaml", Example.SITE))));
  }
}
