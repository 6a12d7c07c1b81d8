package org.headhouse.linter.check;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.headhouse.linter.result.Identity;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Location;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.result.Suppression;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.Sha256;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class CleanFilesTest {
  private static final byte[] SECRET = "the secret of this user, 32 bytes".getBytes(UTF_8);
  private static final String PATH = "sites/häuschen.yaml";
  private static final byte[] BYTES = "site: one".getBytes(UTF_8);
  private static final Location HERE =
      new Location(PATH, new Region(3, 5, 4, 1), "site: Häuschen \uD83C\uDFE0 # one");
  private static final FileOutcome.Key KEY = key("site.duplicate-id", "one", HERE, null);
  private static final FileOutcome CLEAN =
      new FileOutcome(List.of(), List.of(), List.of(KEY, key("house.rule", "", HERE, null)), 247);
  private static final FileOutcome OTHER = new FileOutcome(List.of(), List.of(), List.of(), 1);

  private static FileOutcome.Key key(
      String rule, String text, Location location, @Nullable Suppression suppression) {
    return new FileOutcome.Key(
        rule,
        text,
        location,
        "one",
        suppression,
        () -> new Identity(rule + text, "a/site", null, text, null, null));
  }

  /** What there is of an outcome without its identities, which are looked for when needed. */
  private static List<Object> told(FileOutcome outcome) {
    List<Object> told = new ArrayList<>();
    told.addAll(List.of(outcome.results(), outcome.notifications(), outcome.units()));
    for (FileOutcome.Key key : outcome.keys()) {
      told.add(
          Arrays.asList(key.rule(), key.text(), key.location(), key.site(), key.suppression()));
    }
    return told;
  }

  private static byte[] kept(String path, FileOutcome outcome) {
    CleanFiles files = new CleanFiles(SECRET, "day 1", new byte[0]);
    files.outcome(path, BYTES, () -> outcome);
    return files.sealed();
  }

  /** The outcome of the file in a check that would find another one. */
  private static FileOutcome later(byte[] secret, String validity, byte[] kept) {
    return new CleanFiles(secret, validity, kept).outcome(PATH, BYTES, () -> OTHER);
  }

  private static FileOutcome later(byte[] kept) {
    return later(SECRET, "day 1", kept);
  }

  @Test
  void aCleanFileIsNotCheckedAgain() {
    assertThat(told(later(kept(PATH, CLEAN)))).isEqualTo(told(CLEAN));
  }

  @Test
  void whatIsKeptStaysFromCheckToCheckAsLongAsTheFileIsThere() {
    byte[] first = kept(PATH, CLEAN);
    CleanFiles second = new CleanFiles(SECRET, "day 1", first);
    second.outcome(PATH, BYTES, () -> OTHER);
    assertThat(second.sealed()).isEqualTo(first);
    assertThat(later(new CleanFiles(SECRET, "day 1", first).sealed())).isEqualTo(OTHER);
  }

  @Test
  void otherBytesAndOtherNamesAreChecked() {
    byte[] kept = kept(PATH, CLEAN);
    CleanFiles files = new CleanFiles(SECRET, "day 1", kept);
    assertThat(files.outcome(PATH, "site: two".getBytes(UTF_8), () -> OTHER)).isEqualTo(OTHER);
    assertThat(files.outcome("sites/two.yaml", BYTES, () -> OTHER)).isEqualTo(OTHER);
  }

  static Stream<FileOutcome> unclean() {
    Message message = new Message("fact", "reason", "remedy");
    Suppression accepted = new Suppression("until spring", HERE);
    Result result = new Result("address.gap", Level.NOTE, message, HERE, "", null, List.of(), null);
    return Stream.of(
        new FileOutcome(List.of(result), List.of(), List.of(KEY), 2),
        new FileOutcome(List.of(result.suppressedBy(accepted)), List.of(), List.of(KEY), 2),
        new FileOutcome(
            List.of(),
            List.of(new Notification(Level.NOTE, "it failed", PATH, null)),
            List.of(),
            2),
        keys(KEY, key("house.rule", "one", HERE, accepted)));
  }

  /** Each at its place in a line that others may share. */
  @Test
  void everyKeyIsKept() {
    Location zone = new Location(PATH, new Region(9, 12, 9, 20), "zones: [North, South]");
    Location next = new Location(PATH, new Region(9, 22, 9, 30), zone.line());
    Location empty = new Location(PATH, new Region(10, 1, 10, 1), "");
    List<FileOutcome.Key> all = new ArrayList<>();
    for (Location location : List.of(HERE, zone, next, empty, zone)) {
      for (String text : List.of("", "=one", "two words")) {
        all.add(key("a.b", text, location, null));
        all.add(key("c.d", text, location, null));
      }
    }
    FileOutcome outcome = keys(all.toArray(FileOutcome.Key[]::new));
    assertThat(told(later(kept(PATH, outcome)))).isEqualTo(told(outcome));
  }

  /** It takes a check of the file, which most files never need, and one for all keys. */
  @Test
  void theIdentityIsThatOfTheFile() {
    AtomicInteger checks = new AtomicInteger();
    FileOutcome later =
        new CleanFiles(SECRET, "day 1", kept(PATH, CLEAN))
            .outcome(
                PATH,
                BYTES,
                () -> {
                  checks.incrementAndGet();
                  return CLEAN;
                });
    assertThat(checks).hasValue(0);
    assertThat(later.keys())
        .extracting(key -> key.identity().get())
        .isEqualTo(CLEAN.keys().stream().map(key -> key.identity().get()).toList())
        .doesNotHaveDuplicates();
    assertThat(checks).hasValue(1);
  }

  private static FileOutcome keys(FileOutcome.Key... keys) {
    return new FileOutcome(List.of(), List.of(), List.of(keys), 2);
  }

  @ParameterizedTest
  @MethodSource("unclean")
  void aFileWithAnythingElseToTellIsCheckedAgain(FileOutcome outcome) {
    byte[] kept = kept(PATH, outcome);
    assertThat(kept).isEqualTo(new CleanFiles(SECRET, "day 1", new byte[0]).sealed());
    assertThat(later(kept)).isEqualTo(OTHER);
  }

  @Test
  void whatAnotherUserKeptIsAsGoodAsNothing() {
    byte[] secret = SECRET.clone();
    secret[31] ^= 1;
    assertThat(later(secret, "day 1", kept(PATH, CLEAN))).isEqualTo(OTHER);
  }

  @Test
  void whatWasKeptForAnotherDayIsAsGoodAsNothing() {
    assertThat(later(SECRET, "day 2", kept(PATH, CLEAN))).isEqualTo(OTHER);
  }

  /** Of any length, and with any one bit turned over. */
  @Test
  void whatIsDamagedIsAsGoodAsNothing() {
    byte[] good = kept(PATH, CLEAN);
    for (int length = 0; length < good.length; length++) {
      assertThat(later(Arrays.copyOf(good, length))).isEqualTo(OTHER);
    }
    for (int i = 0; i < good.length * Byte.SIZE; i++) {
      byte[] damaged = good.clone();
      damaged[i / Byte.SIZE] ^= (byte) (1 << i % Byte.SIZE);
      assertThat(later(damaged)).isEqualTo(OTHER);
    }
    assertThat(later(Arrays.copyOf(good, good.length + 1))).isEqualTo(OTHER);
  }

  /** Whoever knows the form, and all but the secret. */
  @Test
  void whatIsMadeByHandIsAsGoodAsNothing() {
    byte[] good = kept(PATH, CLEAN);
    byte[] lines = Arrays.copyOf(good, good.length - 32);
    for (byte[] seal :
        List.of(
            new byte[0],
            new byte[32],
            Sha256.of(lines),
            Sha256.of("day 1".getBytes(UTF_8), lines),
            CleanFiles.seal(new byte[0], lines),
            CleanFiles.seal("day 1".getBytes(UTF_8), lines))) {
      byte[] made = Arrays.copyOf(lines, lines.length + seal.length);
      System.arraycopy(seal, 0, made, lines.length, seal.length);
      assertThat(later(made)).isEqualTo(OTHER);
    }
  }

  /** A file may have any name, and a key any text: none of them is a line of its own. */
  @ParameterizedTest
  @CsvSource({"'\n'", "'\t'", "'\r'", "'\0'", "'\uD83C'", "'\uDFE0'"})
  void aNameCannotTellOfAnotherFile(String between) {
    String line = HexFormat.of().formatHex(Sha256.of(BYTES)) + PATH + "\t9";
    assertThat(later(kept("x" + between + line, CLEAN))).isEqualTo(OTHER);
    assertThat(later(kept(line + between + "x", CLEAN))).isEqualTo(OTHER);
    Location there = new Location(PATH, HERE.region(), between + line);
    for (FileOutcome outcome :
        List.of(
            keys(key("house.rule", between + line, HERE, null)),
            keys(key("house.rule", "one", there, null)))) {
      byte[] kept = kept("x", outcome);
      assertThat(later(kept)).isEqualTo(OTHER);
      assertThat(new CleanFiles(SECRET, "day 1", kept).outcome("x", BYTES, () -> OTHER))
          .isEqualTo(OTHER);
    }
  }

  /** Several threads meet the files in an order of their own. */
  @Test
  void theOrderOfTheFilesMakesNoDifference() {
    CleanFiles up = new CleanFiles(SECRET, "day 1", new byte[0]);
    CleanFiles down = new CleanFiles(SECRET, "day 1", new byte[0]);
    AtomicInteger checks = new AtomicInteger();
    for (int i = 0; i < 100; i++) {
      up.outcome(i + ".yaml", BYTES, () -> OTHER);
      down.outcome(99 - i + ".yaml", BYTES, () -> OTHER);
    }
    assertThat(up.sealed()).isEqualTo(down.sealed());
    CleanFiles later = new CleanFiles(SECRET, "day 1", up.sealed());
    IntStream.range(0, 101)
        .parallel()
        .forEach(
            i ->
                later.outcome(
                    i + ".yaml",
                    BYTES,
                    () -> {
                      checks.incrementAndGet();
                      return CLEAN;
                    }));
    assertThat(checks).hasValue(1);
  }

  /** RFC 4231, test cases 1 to 4. */
  @ParameterizedTest
  @CsvSource({
    "0b0b0b0b0b0b0b0b0b0b0b0b0b0b0b0b0b0b0b0b, 4869205468657265,"
        + " b0344c61d8db38535ca8afceaf0bf12b881dc200c9833da726e9376c2e32cff7",
    "4a656665, 7768617420646f2079612077616e7420666f72206e6f7468696e673f,"
        + " 5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843",
    "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa,"
        + " dddddddddddddddddddddddddddddddddddddddddddddddddd"
        + "dddddddddddddddddddddddddddddddddddddddddddddddddd,"
        + " 773ea91e36800e46854db8ebd09181a72959098b3ef8c122d9635514ced565fe",
    "0102030405060708090a0b0c0d0e0f10111213141516171819,"
        + " cdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcd"
        + "cdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcdcd,"
        + " 82558a389a443c0ea4cc819899f2083a85f0faa3e578f8077a2e3ff46729665b"
  })
  void theSealIsHmacSha256(String key, String data, String expected) {
    HexFormat hex = HexFormat.of();
    assertThat(hex.formatHex(CleanFiles.seal(hex.parseHex(key), hex.parseHex(data))))
        .isEqualTo(expected);
  }
}
