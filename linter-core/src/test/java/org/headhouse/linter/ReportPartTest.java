package org.headhouse.linter;

import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.headhouse.linter.baseline.Baseline;
import org.headhouse.linter.baseline.SitePaths;
import org.headhouse.linter.report.SarifReport;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.result.Notification;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Parts that went through another process join into the report of one check. */
class ReportPartTest {
  private static final Clock TODAY =
      Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC);

  /** Sites of which many share an id, some have faults, and some cannot be read. */
  private static List<SiteInput> sites() {
    List<String> lines = List.of(Example.SITE.split("\n"));
    Random random = new Random(3);
    List<SiteInput> sites = new ArrayList<>();
    for (int i = 0; i < 120; i++) {
      List<String> site = new ArrayList<>(lines);
      site.set(1, "site: site-" + random.nextInt(90));
      if (i % 3 == 0) {
        site.remove(2 + random.nextInt(site.size() - 3));
      }
      byte[] bytes = String.join("\n", site).getBytes(i % 40 == 11 ? UTF_16 : UTF_8);
      boolean isLost = i % 50 == 13;
      sites.add(
          new SiteInput(
              "sites/" + i + ".yaml",
              most -> {
                if (isLost) {
                  throw new NoSuchFileException("lost");
                }
                return bytes;
              }));
    }
    return sites;
  }

  private static SiteLinter.Builder linter() {
    return SiteLinter.builder().clock(TODAY).threads(2);
  }

  /** A part as another process gets it. */
  private static ReportPart sent(ReportPart part) throws IOException, ClassNotFoundException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(part);
    }
    try (var in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      return (ReportPart) in.readObject();
    }
  }

  private static CheckReport joined(SiteLinter.Builder builder, int parts)
      throws IOException, ClassNotFoundException {
    List<SiteInput> sites = sites();
    List<ReportPart> sent = new ArrayList<>();
    for (int part = 0; part < parts; part++) {
      int from = sites.size() * part / parts;
      int to = sites.size() * (part + 1) / parts;
      sent.add(sent(builder.build().checkPart(sites.subList(from, to).stream())));
    }
    return builder.build().join(sent);
  }

  private static String log(CheckReport report) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new SarifReport(report.rules()).write(report.results(), report.notifications(), out);
    return out.toString(UTF_8);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 7, 120})
  void partsJoinIntoTheReportOfOneCheck(int parts) throws IOException, ClassNotFoundException {
    CheckReport whole = linter().build().check(sites().stream());
    assertThat(whole.results()).anyMatch(result -> result.rule().equals("site.duplicate-id"));
    assertThat(whole.notifications()).isNotEmpty();
    CheckReport joined = joined(linter(), parts);
    assertThat(joined).isEqualTo(whole);
    assertThat(log(joined)).isEqualTo(log(whole));
  }

  @Test
  void theBaselineIsThatOfTheLinterThatJoins(@TempDir Path folder)
      throws IOException, ClassNotFoundException {
    Path file = folder.resolve("baseline.jsonl");
    List<SiteInput> before = sites().subList(0, 60);
    CheckReport known = linter().build().check(before.stream());
    try (OutputStream out = Files.newOutputStream(file)) {
      Baseline.empty(SitePaths.of(file, folder))
          .renewed(known.results(), Set.of(), true)
          .write(out);
    }
    CheckReport whole = linter().baseline(file).build().check(sites().stream());
    assertThat(whole.known()).isNotEmpty();
    assertThat(joined(linter().baseline(file), 3)).isEqualTo(whole);
  }

  @Test
  void aPartOfAnotherLinterIsRefused() throws IOException {
    ReportPart part = linter().build().checkPart(sites().stream());
    SiteLinter strict =
        linter()
            .policy(
                SiteInput.text(
                    "linter.yaml",
                    "format: 1\nrule-set: 1\nrules: {address.order: {level: error}}\n"))
            .build();
    assertThatThrownBy(() -> strict.join(List.of(part)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("policy");
    SiteLinter tomorrow = linter().clock(Clock.offset(TODAY, Duration.ofDays(1))).build();
    assertThatThrownBy(() -> tomorrow.join(List.of(part)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void changesNeedAllSitesAtOnce() throws IOException {
    SiteLinter comparing = linter().beforeAll(SiteState.of(Stream.empty(), null)).build();
    assertThatThrownBy(() -> comparing.checkPart(sites().stream()))
        .isInstanceOf(IllegalStateException.class);
  }

  private static ReportPart part(int from, int to) throws IOException {
    return linter().build().checkPart(sites().subList(from, to).stream());
  }

  /** Green would mean that sites are sound which nobody looked at. */
  @Test
  void aPartThatIsLostIsNoticed() throws IOException {
    SiteLinter linter = linter().build();
    List<ReportPart> all = List.of(part(0, 50), part(50, 100), part(100, 120));
    assertThat(linter.join(all, 120)).isEqualTo(linter.check(sites().stream()));
    assertThat(linter.join(all.subList(0, 2), 120).failures())
        .extracting(Notification::text)
        .contains("the parts have 100 sites of 120: a part is missing");
    assertThat(linter.join(List.of(), 120).failures())
        .extracting(Notification::text)
        .containsExactly("the parts have 0 sites of 120: a part is missing");
  }

  @Test
  void aPartThatIsThereTwiceIsNoticed() throws IOException {
    SiteLinter linter = linter().build();
    ReportPart part = linter.checkPart(Stream.of(SiteInput.text("example.yaml", Example.SITE)));
    CheckReport twice = linter.join(List.of(part, part), 1);
    assertThat(twice.failures())
        .extracting(Notification::text)
        .containsExactly(
            "the parts have 2 sites of 1: there is a part too many",
            "this site is in the parts more than once");
    // The number alone is right where one is lost and one is there twice.
    assertThat(linter.join(List.of(part, part), 2).failures())
        .extracting(Notification::file)
        .containsExactly("example.yaml");
  }

  @Test
  void partsDoNotJoinWhereChangesAreAskedFor() throws IOException {
    SiteLinter comparing = linter().before(SiteState.of(Stream.empty(), null)).build();
    ReportPart part = part(0, 1);
    assertThatThrownBy(() -> comparing.join(List.of(part)))
        .isInstanceOf(IllegalStateException.class);
  }
}
