package org.headhouse.linter.diagram;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.bind.DeviceTypesBinder;
import org.headhouse.linter.bind.SiteBinder;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.YamlReader;

/** A site as a text has it, with its results. */
record DrawnSite(Site site, List<Result> results) {
  private static final String NO_TYPES = "format: 1\ndevice-types: []\n";

  /** A file, with the types of device beside it. */
  static DrawnSite of(Path folder, String name) throws IOException {
    return of(
        name,
        Files.readString(folder.resolve(name)),
        Files.readString(folder.resolve("device-types.yaml")));
  }

  /** A text, without any type of device. */
  static DrawnSite of(Object text) {
    return of("example.yaml", text.toString(), NO_TYPES);
  }

  private static DrawnSite of(String path, String text, String typesText) {
    YamlReader reader = new YamlReader(Limits.DEFAULT);
    SourceText typesSource = new SourceText("device-types.yaml", typesText);
    DeviceTypes types =
        DeviceTypesBinder.bind(typesSource, requireNonNull(reader.read(typesSource).root()))
            .model();
    SourceText source = new SourceText(path, text);
    Site site = SiteBinder.bind(source, requireNonNull(reader.read(source).root()), types).model();
    try {
      SiteLinter linter =
          SiteLinter.builder()
              .deviceTypes(SiteInput.text("device-types.yaml", typesText))
              .clock(Clock.fixed(Instant.parse("2026-05-01T00:00:00Z"), ZoneOffset.UTC))
              .build();
      return new DrawnSite(site, linter.checkText(path, text).results());
    } catch (IOException exception) {
      throw new UncheckedIOException(exception);
    }
  }
}
