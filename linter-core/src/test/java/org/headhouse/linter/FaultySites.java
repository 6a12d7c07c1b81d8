package org.headhouse.linter;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.headhouse.linter.repository.SiteState;

/** The sample sites with faults, compared with the earlier states that they have. */
public final class FaultySites {
  static final Path FOLDER = Path.of("..", "sample-sites", "faulty");

  private FaultySites() {}

  /** Their results, those of their settings included. */
  public static CheckReport check() throws IOException {
    SiteInput types = input(FOLDER.resolve("device-types.yaml"));
    SiteLinter linter =
        SiteLinter.builder()
            .policy(input(FOLDER.resolve("linter.yaml")))
            .deviceTypes(types)
            .before(
                SiteState.of(
                    Stream.of("before/altered.yaml", "before/redated.yaml")
                        .map(name -> input(FOLDER.resolve(name))),
                    types))
            .build();
    try (Stream<Path> files = Files.walk(FOLDER.resolve("sites"))) {
      return linter.check(
          files.filter(file -> file.toString().endsWith(".yaml")).sorted().map(FaultySites::input));
    }
  }

  private static SiteInput input(Path file) {
    return SiteInput.file(file, FOLDER.relativize(file).toString().replace('\\', '/'));
  }
}
