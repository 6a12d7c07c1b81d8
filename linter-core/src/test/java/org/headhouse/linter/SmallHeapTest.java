package org.headhouse.linter;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Hostile files in a virtual machine with little memory: a rule's id each, and no stack trace. */
@Tag("long")
class SmallHeapTest {
  @TempDir private Path folder;

  private final List<String> expected = new ArrayList<>();

  private void file(String name, String text, String... rules) throws IOException {
    String id = name.replace(".yaml", "");
    file(name, text.replace("site: example", "site: " + id).getBytes(UTF_8), rules);
  }

  private void file(String name, byte[] bytes, String... rules) throws IOException {
    Files.write(folder.resolve(name), bytes);
    for (String rule : rules) {
      expected.add(name + " " + rule);
    }
  }

  private static String run(String heap, String... arguments) throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add(heap);
    command.add("-cp");
    command.add(System.getProperty("java.class.path"));
    command.add(SmallHeap.class.getName());
    command.addAll(List.of(arguments));
    Path output = Files.createTempFile("small-heap", ".txt");
    try {
      Process process =
          new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(output.toFile())
              .start();
      int exit = process.waitFor();
      String printed = Files.readString(output);
      assertThat(exit).as(printed).isZero();
      assertThat(printed).doesNotContain("Exception", "Error", "\tat ");
      return printed;
    } finally {
      Files.delete(output);
    }
  }

  private static String bomb() {
    StringBuilder bomb = new StringBuilder("a0: &a0 x\n");
    for (int i = 1; i < 40; i++) {
      bomb.append("a%d: &a%d [%s]\n".formatted(i, i, ("*a" + (i - 1) + ", ").repeat(9) + "x"));
    }
    return bomb.toString();
  }

  @Test
  void hostileFiles() throws Exception {
    file("00-thirty-megabytes.yaml", new byte[30 << 20], "file.too-large");
    file("01-scalar.yaml", "a: '" + "x".repeat(3_000_000) + "'\n", "file.too-large");
    file(
        "02-scalar-in-budget.yaml",
        "format: '" + "x ".repeat(500_000) + "'\n",
        "schema.missing-key",
        "schema.bad-value");
    file("03-bomb.yaml", bomb(), "file.too-large");
    file("04-brackets.yaml", "a: " + "[".repeat(20_000), "file.too-large");
    file("05-closed-brackets.yaml", "[".repeat(20_000) + "]".repeat(20_000), "file.too-large");
    file("06-braces.yaml", "{a: ".repeat(20_000), "file.too-large");
    file("07-dashes.yaml", "- ".repeat(20_000) + "x\n", "file.too-large");
    file("08-recursive.yaml", "format: &a [*a]\n", "yaml.syntax");
    file("09-recursive-merge.yaml", "format: &a {<<: *a}\n", "yaml.syntax");
    String huge = Example.SITE.replaceAll("(address|baud|stop-bits|format): [0-9]+", "$1: 1.0e+20");
    file("10-huge.yaml", huge, "schema.out-of-range", "schema.bad-value");
    file(
        "11-digits.yaml",
        Example.with("address: 3", "address: " + "9".repeat(500_000)),
        "schema.out-of-range");
    file(
        "12-exponent.yaml",
        Example.with("address: 3", "address: 1.0e+999999999"),
        "schema.wrong-type");
    file("13-mark.yaml", "\uFEFF" + Example.SITE);
    file("14-crlf.yaml", Example.SITE.replace("\n", "\r\n"));
    file("15-tab.yaml", "format: 1\n\tsite: a\n", "yaml.syntax");
    file("16-control.yaml", "format: 1\nsite: a\u0000b\n", "yaml.syntax");
    file("17-escape.yaml", "format: 1\nsite: a\u001B[31mb\n", "yaml.syntax");
    file("18-documents.yaml", Example.SITE + "---\n" + Example.SITE, "yaml.several-documents");
    file(
        "19-many-documents.yaml",
        "---\n".repeat(200_000),
        "yaml.several-documents",
        "schema.wrong-type");
    file("20-empty.yaml", "", "schema.wrong-type");
    file("21-comments.yaml", "# a\n".repeat(200_000), "schema.wrong-type");
    file(
        "22-tag.yaml",
        Example.with("stage: planned", "stage: !!java.net.URL [x]"),
        "yaml.syntax",
        "schema.bad-value");
    file(
        "23-tags.yaml",
        Example.with("stage: planned", "stage: !<tag:example.org,2026:x> planned"),
        "yaml.syntax");
    file(
        "24-latin.yaml",
        Example.with("Hardening Bay", "P\u00E9pini\u00E8re").getBytes(ISO_8859_1),
        "file.encoding");
    file("25-wide.yaml", ("\uFEFF" + Example.SITE).getBytes(UTF_16LE), "file.encoding");
    file("26-zeros.yaml", new byte[1_000], "yaml.syntax");
    file("27-keys.yaml", keys(), "schema.unknown-key", "schema.missing-key", "file.too-large");
    file(
        "28-duplicates.yaml",
        "format: 1\n".repeat(50_000),
        "yaml.duplicate-key",
        "schema.missing-key",
        "file.too-large");
    file("29-comment-in-flow.yaml", "[" + "#\n".repeat(200_000), "yaml.syntax");
    file(
        "30-zones.yaml",
        Example.SITE
            + "supervision: {link: serial, zones: ["
            + "Hardnig Bay, ".repeat(60_000)
            + "]}\n",
        "supervision.zone-unknown",
        "supervision.zone-duplicate",
        "supervision.zone-missing",
        "file.too-large");
    file(
        "31-units.yaml",
        Example.SITE + "  - {unit: Bay}\n".repeat(50_000),
        "schema.out-of-range",
        "schema.missing-key",
        "file.too-large");
    String printed = run("-Xmx256m", folder.toString());
    assertThat(printed.lines().skip(2)).containsExactlyInAnyOrderElementsOf(expected);
    assertThat(printed).startsWith("32 files\n");
  }

  /**
   * All units of 64 sites have address 1: each of 247 results has the same new numbers as its fix.
   */
  @Test
  void equalAddresses() throws Exception {
    SiteText site = new SiteText().unit("120 ohm", "3 m").units(245, "3 m").unit("120 ohm", "");
    String equal = site.toString().replaceAll("(?m)^    address: .*", "    address: 1");
    for (int i = 0; i < 64; i++) {
      Files.writeString(
          folder.resolve("site-" + i + ".yaml"), equal.replace("site: example", "site: site-" + i));
    }
    String printed = run("-Xmx256m", folder.toString());
    assertThat(printed).startsWith("64 files\n").contains("site-63.yaml address.duplicate");
    assertThat(printed.lines().skip(1).findFirst().orElseThrow()).matches("1?[0-9] MB of SARIF");
  }

  private static String keys() {
    StringBuilder keys = new StringBuilder();
    for (int i = 0; i < 40_000; i++) {
      keys.append("key-").append(i).append(": 1\n");
    }
    return keys.toString();
  }

  /** 200 MB of sites in 48 MB of memory: sites are not kept. */
  @Test
  void memoryDoesNotGrowWithTheNumberOfSites() throws Exception {
    String printed = run("-Xmx48m", "stream", "2000");
    assertThat(printed).startsWith("2000 files\n");
    assertThat(printed.lines().filter(line -> line.endsWith(" address.gap"))).hasSize(1);
  }

  /** Sites of 100 KB, and 70 KB of sheets each, together more than the memory holds. */
  @Test
  void noSheetIsKept() throws Exception {
    assertThat(run("-Xmx72m", "sheets", "1500"))
        .matches("1500 sites\\n1[0-4][0-9] MB of sheets\\n");
  }
}
