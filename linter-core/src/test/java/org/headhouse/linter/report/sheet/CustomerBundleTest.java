package org.headhouse.linter.report.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.URLDecoder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.materials.Slack;
import org.headhouse.linter.report.BundleZip;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.report.SheetFile;
import org.headhouse.linter.report.SheetReport;
import org.headhouse.linter.report.SheetRequest;
import org.headhouse.linter.report.SiteBundle;
import org.headhouse.linter.report.SiteHistory;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.Sha256;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a customer gets, read by readers of ZIP files that others wrote: Commons Compress, and the
 * programs unzip and python3 where the machine has them.
 */
class CustomerBundleTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;

  /** A site of a customer, in a file of the name of the site. */
  private static SiteInput site(String id, String customer) {
    String text =
        Papers.PROVED
            .replace("site: proved\n", "site: " + id + "\n")
            .replace("title: Proved Nursery\n", "title: Title of " + id + "\n")
            .replace(
                "customer: proved-nurseries\n",
                customer.isEmpty() ? "" : "customer: " + customer + "\n");
    return SiteInput.text("sites/" + id + ".yaml", text);
  }

  /** The bundles by their names, as ZIP files. */
  private static Map<String, byte[]> bundles(SiteInput... inputs) throws IOException {
    Map<String, byte[]> written = new HashMap<>();
    SheetReport report =
        linter()
            .sheets(
                Stream.of(inputs),
                new SheetRequest(Measure.METRIC, Paper.A4, Slack.USUAL, SiteHistory.NONE, true),
                sheet -> sheet.files().forEach(one -> written.put(one.name(), one.content())));
    report.papers().forEach(one -> written.put(one.name(), one.content()));
    Map<String, byte[]> zips = new LinkedHashMap<>();
    for (SiteBundle bundle : report.bundles()) {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      BundleZip.write(bundle, name -> Objects.requireNonNull(written.get(name)), out);
      zips.put(bundle.file(), out.toByteArray());
    }
    return zips;
  }

  private static SiteLinter linter() throws IOException {
    return SiteLinter.builder()
        .deviceTypes(Sheets.SAMPLE_TYPES)
        .policy(SiteInput.text("linter.yaml", Papers.YEARLY))
        .clock(CLOCK)
        .build();
  }

  /** The files of a ZIP file by their names below its one folder, as Commons Compress has them. */
  private Map<String, byte[]> read(String name, Map<String, byte[]> zips) throws IOException {
    Path file = Files.write(folder.resolve(name), Objects.requireNonNull(zips.get(name)));
    String top = name.replaceFirst("\\.zip$", "/");
    Map<String, byte[]> files = new LinkedHashMap<>();
    try (ZipFile archive = ZipFile.builder().setPath(file).get()) {
      for (ZipArchiveEntry entry : Collections.list(archive.getEntries())) {
        assertThat(entry.getName()).startsWith(top).doesNotContain("..", "\\");
        byte[] content = archive.getInputStream(entry).readAllBytes();
        assertThat(content).hasSize((int) entry.getSize());
        files.put(entry.getName().substring(top.length()), content);
      }
    }
    return files;
  }

  private static String text(Map<String, byte[]> files, String name) {
    return new String(Objects.requireNonNull(files.get(name), name), UTF_8);
  }

  @Test
  void aCustomerGetsAllPapersOfAllLines() throws Exception {
    Map<String, byte[]> zips =
        bundles(
            site("one", "alder-nurseries"),
            site("two", "birch-nurseries"),
            site("three", "alder-nurseries"),
            site("four", ""));
    assertThat(zips)
        .containsOnlyKeys(
            "alder-nurseries-bundle.zip", "birch-nurseries-bundle.zip", "four-bundle.zip");
    Map<String, byte[]> alder = read("alder-nurseries-bundle.zip", zips);
    assertThat(alder)
        .containsOnlyKeys(
            Stream.concat(
                    Stream.of("one", "three")
                        .flatMap(
                            id ->
                                Stream.of(
                                    id + ".html",
                                    id + "-certificate.html",
                                    id + "-night-card.html",
                                    id + "-yearly.html",
                                    id + "-materials.html",
                                    id + "-faults.html",
                                    id + "-van.html",
                                    id + "-visit.csv",
                                    id + "-zones.csv",
                                    "sites/" + id + ".yaml")),
                    Stream.of(
                        "alder-nurseries-cover.html",
                        "device-types.yaml",
                        "index.html",
                        "SHA256SUMS.txt"))
                .toArray(String[]::new));
    assertThat(text(alder, "sites/three.yaml")).contains("site: three");
    assertThat(text(alder, "device-types.yaml"))
        .contains("id: eight-way-isolated")
        .doesNotContain("id: eight-way\n", "sixteen-way", "#");
    assertThat(Jsoup.parse(text(alder, "index.html")).select("main li strong").eachText())
        .contains("Title of one", "Title of three");
  }

  @Test
  void nothingInItIsOfOthers() throws Exception {
    // Both use one title, one name for the file's units, and one id: the second clashes.
    SiteInput other = site("elsewhere", "birch-nurseries");
    Map<String, byte[]> zips =
        bundles(
            other,
            site("one", "alder-nurseries"),
            SiteInput.text("sites/secret-client.yaml", text(site("one", "birch-nurseries"))),
            SiteInput.text("sites/late.yaml", text(site("elsewhere", "alder-nurseries"))));
    Map<String, byte[]> alder = read("alder-nurseries-bundle.zip", zips);
    alder.forEach(
        (name, content) ->
            assertThat(new String(content, UTF_8))
                .as(name)
                .doesNotContain("birch-nurseries", "secret-client", "sites/elsewhere.yaml"));
    // It says all the same that there is a clash, and so it is not proved.
    Document late = Jsoup.parse(text(alder, "elsewhere-2-certificate.html"));
    assertThat(late.expectFirst("h1").text()).isEqualTo("Not proved");
    assertThat(Jsoup.parse(text(alder, "elsewhere-2.html")).text())
        .contains("the file and another one of this run break a rule on all files");
  }

  private static String text(SiteInput input) throws IOException {
    return new String(input.bytes(Limits.DEFAULT), UTF_8);
  }

  /** The files open from the folder alone, wherever it is unpacked. */
  @Test
  void everyLinkEndsInTheBundle() throws Exception {
    Map<String, byte[]> zips =
        bundles(site("one", "alder"), site("two", "alder"), site("alone", ""));
    for (Map.Entry<String, byte[]> zip : zips.entrySet()) {
      Map<String, byte[]> files = read(zip.getKey(), zips);
      List<String> links = new ArrayList<>();
      for (String name : files.keySet()) {
        if (name.endsWith(".html")) {
          Document page = Jsoup.parse(text(files, name));
          assertThat(page.select("[src]")).as(name).isEmpty();
          for (Element link : page.select("[href]")) {
            String path = URI.create(link.attr("href")).getRawPath();
            assertThat(URI.create(link.attr("href")).getScheme()).isNull();
            if (!path.isEmpty()) {
              assertThat(files).as(name).containsKey(URLDecoder.decode(path, UTF_8));
              links.add(path);
            }
          }
        }
      }
      assertThat(links).as(zip.getKey()).hasSizeGreaterThan(files.size());
    }
  }

  @Test
  void theSameContentGivesTheSameBytes() throws Exception {
    TimeZone zone = TimeZone.getDefault();
    SiteInput[] sites = {site("one", "alder"), site("two", "alder"), site("alone", "")};
    Map<String, byte[]> first = bundles(sites);
    try {
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
      Map<String, byte[]> second = bundles(sites);
      assertThat(second.keySet()).containsExactlyElementsOf(first.keySet());
      second.forEach((name, zip) -> assertThat(zip).as(name).isEqualTo(first.get(name)));
    } finally {
      TimeZone.setDefault(zone);
    }
    assertThat(bundles(site("two", "alder"), site("one", "alder")).get("alder-bundle.zip"))
        .as("another order of the lines is another page")
        .isNotEqualTo(first.get("alder-bundle.zip"));
  }

  @Test
  void everyFileHasItsDigest() throws Exception {
    Map<String, byte[]> zips = bundles(site("one", "alder"));
    Map<String, byte[]> files = read("alder-bundle.zip", zips);
    List<String> expected = new ArrayList<>();
    files.forEach(
        (name, content) -> {
          if (!name.equals(BundleZip.DIGESTS)) {
            expected.add(Sha256.hex(content) + "  " + name);
          }
        });
    assertThat(text(files, BundleZip.DIGESTS).lines())
        .containsExactlyInAnyOrderElementsOf(expected);
  }

  /** From the bundle alone the line is checked as it was. */
  @Test
  void theLineIsCheckedFromTheBundleAlone() throws Exception {
    for (Path sample : samples()) {
      SiteInput input = SiteInput.file(sample);
      Map<String, byte[]> zips = bundles(input);
      Map.Entry<String, byte[]> zip = zips.entrySet().iterator().next();
      Map<String, byte[]> files = read(zip.getKey(), zips);
      String own =
          files.keySet().stream().filter(it -> it.startsWith("sites/")).findFirst().orElseThrow();
      SiteLinter.Builder builder = SiteLinter.builder().clock(CLOCK);
      byte[] types = files.get("device-types.yaml");
      if (types != null) {
        builder.deviceTypes(SiteInput.text("device-types.yaml", new String(types, UTF_8)));
      }
      SiteInput unpacked = SiteInput.text(input.path(), text(files, own));
      SiteLinter whole = SiteLinter.builder().deviceTypes(Sheets.SAMPLE_TYPES).clock(CLOCK).build();
      assertThat(messages(builder.build(), unpacked))
          .as(sample.toString())
          .isEqualTo(messages(whole, SiteInput.text(input.path(), text(input))));
    }
  }

  private static List<Path> samples() throws IOException {
    try (Stream<Path> files = Files.walk(Sheets.SAMPLES.resolve("sites"))) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  private static List<String> messages(SiteLinter linter, SiteInput input) {
    return linter.check(Stream.of(input)).results().stream()
        .map(result -> result.rule() + " " + result.message().text())
        .toList();
  }

  /** A name that leads out of the folder, or that a system keeps for itself, names no file. */
  @Test
  void aHostileCustomerNamesNoFile() throws Exception {
    String[] hostile = {
      "../../../etc/passwd", "a/b", "C:\\x", "<script>alert(1)</script>", "x\\u202Egpj", "-", "."
    };
    SiteInput[] sites = new SiteInput[hostile.length];
    for (int i = 0; i < hostile.length; i++) {
      sites[i] = site("line-" + i, "\"" + hostile[i].replace("\\x", "\\\\x") + "\"");
    }
    Map<String, byte[]> zips = bundles(sites);
    assertThat(zips).hasSize(hostile.length);
    for (int i = 0; i < hostile.length; i++) {
      String name = "line-" + i + "-bundle.zip";
      assertThat(zips).containsKey(name);
      Map<String, byte[]> files = read(name, zips);
      assertThat(files.keySet()).allMatch(file -> file.matches("[A-Za-z0-9/.-]+"));
      assertThat(Jsoup.parse(text(files, "index.html")).select("script")).isEmpty();
    }
  }

  /** A customer with the name of a site, and one with a name that a system keeps. */
  @Test
  void noBundleTakesThePlaceOfAnother() throws Exception {
    assertThat(bundles(site("x", ""), site("y", "x"), site("z", "nul"), site("nul", "")).keySet())
        .containsExactly("nul-bundle.zip", "x-bundle.zip", "x-2-bundle.zip", "nul-2-bundle.zip");
  }

  @Test
  void otherProgramsReadIt() throws Exception {
    Path file = folder.resolve("alder-bundle.zip");
    read("alder-bundle.zip", bundles(site("one", "alder"), site("two", "alder")));
    int readers = 0;
    for (List<String> command :
        List.of(
            List.of("unzip", "-tq", file.toString()),
            List.of("python3", "-m", "zipfile", "--test", file.toString()))) {
      try {
        Process reader = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(reader.getInputStream().readAllBytes(), UTF_8);
        assertThat(reader.waitFor()).as(command + ": " + said).isZero();
        readers++;
      } catch (IOException missing) {
        // The machine has no such program.
      }
    }
    assumeTrue(readers > 0, "neither unzip nor python3 is here");
  }

  @Test
  void nothingIsBundledUnlessItIsWanted() throws Exception {
    List<SheetFile> files = new ArrayList<>();
    SheetReport report =
        linter()
            .sheets(
                Stream.of(site("one", "alder")),
                Measure.METRIC,
                Paper.A4,
                sheet -> files.addAll(sheet.files()));
    assertThat(report.bundles()).isEmpty();
    assertThat(files).isNotEmpty();
  }
}
