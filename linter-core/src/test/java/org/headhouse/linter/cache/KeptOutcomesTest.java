package org.headhouse.linter.cache;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32C;
import org.headhouse.linter.check.FileOutcome;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Identity;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Location;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.RelatedLocation;
import org.headhouse.linter.result.Replacement;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.result.Suppression;
import org.headhouse.linter.source.Region;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KeptOutcomesTest {
  private static final byte[] BYTES = "site: one".getBytes(UTF_8);
  private static final Location HERE =
      new Location("sites/one.yaml", new Region(3, 5, 4, 1), "unit: Häuschen \uD83C");
  private static final Suppression ACCEPTED = new Suppression("until spring", HERE);

  /** Has every part that an outcome can have; a text of 70000 characters among them. */
  private static final FileOutcome FULL =
      new FileOutcome(
          List.of(
              new Result(
                  "address.duplicate",
                  Level.WARNING,
                  new Message("fact", "reason", "remedy"),
                  HERE,
                  "chain/One/address",
                  "One",
                  List.of(new RelatedLocation(HERE, "first used here")),
                  ACCEPTED,
                  new Identity("one", "chain/One", "One", "4", Level.NOTE),
                  null,
                  new Fix(
                      FixKind.PROPOSED,
                      "Write it",
                      List.of(new Replacement(Region.onLine(1, 2, 3), "x".repeat(70_000))))),
              new Result(
                  "yaml.syntax",
                  Level.ERROR,
                  new Message("", "", ""),
                  HERE,
                  "",
                  null,
                  List.of(),
                  null)),
          List.of(),
          List.of(
              new FileOutcome.Key(
                  "site.duplicate-id",
                  "one",
                  HERE,
                  ACCEPTED,
                  new Identity(null, "site", null, null, null)),
              new FileOutcome.Key(
                  "house.rule", "", HERE, null, new Identity("a", "b", "c", "d", Level.ERROR))),
          247);

  private static final FileOutcome CLEAN = new FileOutcome(List.of(), List.of(), List.of(), 2);

  private static Circumstances circumstances(String text) {
    return new Circumstances().with(text);
  }

  /** What a whole check of one file gets for it. */
  private static FileOutcome check(
      KeptOutcomes kept, String circumstances, String path, byte[] bytes, FileOutcome found) {
    KeptCheck check = kept.start(circumstances(circumstances));
    FileOutcome outcome = check.of(path, bytes, () -> found);
    check.end();
    return outcome;
  }

  private static byte[] written(KeptOutcomes kept) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    kept.write(out);
    return out.toByteArray();
  }

  private static byte[] kept(FileOutcome outcome) throws IOException {
    KeptOutcomes first = KeptOutcomes.none();
    check(first, "day 1", "sites/one.yaml", BYTES, outcome);
    assertThat(first.isChanged()).isTrue();
    return written(first);
  }

  @Test
  void anOutcomeComesBackWithAllItsParts() throws IOException {
    KeptOutcomes second = KeptOutcomes.of(kept(FULL));
    assertThat(check(second, "day 1", "sites/one.yaml", BYTES, CLEAN)).isEqualTo(FULL);
    assertThat(second.isChanged()).isFalse();
    assertThat(written(second)).isEqualTo(kept(FULL));
  }

  @ParameterizedTest
  @CsvSource({
    "day 1, sites/one.yaml, site: two",
    "day 1, sites/two.yaml, site: one",
    "day 2, sites/one.yaml, site: one",
  })
  void whatDiffersIsCheckedAgain(String circumstances, String path, String text)
      throws IOException {
    KeptOutcomes second = KeptOutcomes.of(kept(FULL));
    assertThat(check(second, circumstances, path, text.getBytes(UTF_8), CLEAN)).isSameAs(CLEAN);
    assertThat(second.isChanged()).isTrue();

    KeptOutcomes third = KeptOutcomes.of(written(second));
    assertThat(check(third, circumstances, path, text.getBytes(UTF_8), FULL)).isEqualTo(CLEAN);
  }

  @Test
  void theNextCheckOfOneProgramUsesThemToo() throws IOException {
    KeptOutcomes kept = KeptOutcomes.none();
    assertThat(check(kept, "day 1", "sites/one.yaml", BYTES, FULL)).isSameAs(FULL);
    assertThat(check(kept, "day 1", "sites/one.yaml", BYTES, CLEAN)).isEqualTo(FULL);
    assertThat(kept.isChanged()).isTrue();
    assertThat(written(kept)).hasSize((int) kept.size()).isEqualTo(kept(FULL));
  }

  /** A check that fails does not take away what was there; neither does none at all. */
  @Test
  void whatWasThereStaysUntilACheckIsThrough() throws IOException {
    KeptOutcomes kept = KeptOutcomes.of(kept(FULL));
    assertThat(written(kept)).isEqualTo(kept(FULL));
    kept.start(circumstances("day 2")).of("sites/one.yaml", BYTES, () -> CLEAN);
    assertThat(kept.isChanged()).isFalse();
    assertThat(written(kept)).isEqualTo(kept(FULL));
  }

  @Test
  void checksAtOneTimeDoNotDisturbEachOther() throws IOException {
    KeptOutcomes kept = KeptOutcomes.of(kept(FULL));
    KeptCheck today = kept.start(circumstances("day 1"));
    KeptCheck tomorrow = kept.start(circumstances("day 2"));
    assertThat(tomorrow.of("sites/one.yaml", BYTES, () -> CLEAN)).isSameAs(CLEAN);
    assertThat(today.of("sites/one.yaml", BYTES, () -> CLEAN)).isEqualTo(FULL);
    tomorrow.end();
    today.end();
    assertThat(check(kept, "day 1", "sites/one.yaml", BYTES, CLEAN)).isEqualTo(FULL);
  }

  /** The file would grow for ever. */
  @Test
  void aFileThatIsGoneIsForgotten() throws IOException {
    KeptOutcomes second = KeptOutcomes.of(kept(FULL));
    second.start(circumstances("day 1")).end();
    assertThat(second.isChanged()).isTrue();
    KeptOutcomes third = KeptOutcomes.of(written(second));
    assertThat(check(third, "day 1", "sites/one.yaml", BYTES, CLEAN)).isSameAs(CLEAN);
  }

  /** What kept the tool from its work may be gone next time. */
  @Test
  void troubleIsNotKept() throws IOException {
    FileOutcome troubled =
        new FileOutcome(
            List.of(),
            List.of(new Notification(Level.ERROR, "it failed", null, null)),
            List.of(),
            2);
    KeptOutcomes second = KeptOutcomes.of(kept(CLEAN));
    assertThat(check(second, "day 2", "sites/one.yaml", BYTES, troubled)).isSameAs(troubled);
    KeptOutcomes third = KeptOutcomes.of(written(second));
    assertThat(check(third, "day 2", "sites/one.yaml", BYTES, CLEAN)).isSameAs(CLEAN);
  }

  /** Whichever byte is another one, and wherever the file is cut. */
  @Test
  void aDamagedFileIsAsGoodAsNone() throws IOException {
    byte[] good = kept(CLEAN);
    for (int at = 0; at < good.length; at++) {
      byte[] wrong = good.clone();
      wrong[at] ^= 0x10;
      assertThat(outcomeFrom(wrong)).as("byte %d", at).isSameAs(FULL);
      assertThat(outcomeFrom(Arrays.copyOf(good, at))).as("cut at %d", at).isSameAs(FULL);
    }
    assertThat(
            outcomeFrom(
                "no such thing, but long enough to be looked at, as it may be longer"
                    .getBytes(UTF_8)))
        .isSameAs(FULL);
  }

  /** A checksum is no proof: the numbers before it are looked at as well. */
  @ParameterizedTest
  @CsvSource({"2147483647, -20", "2147483647, 0", "-1, 0", "1, -1", "1, 2147483647"})
  void numbersThatCannotBeAreAsGoodAsNothing(int number, int length) throws IOException {
    byte[] good = kept(CLEAN);
    ByteBuffer bytes = ByteBuffer.wrap(good.clone());
    int start = Long.BYTES + 32;
    bytes.putInt(start, number).putInt(start + Integer.BYTES + 2 * Long.BYTES, length);
    CRC32C sum = new CRC32C();
    sum.update(bytes.array(), 0, good.length - Long.BYTES);
    bytes.putLong(good.length - Long.BYTES, sum.getValue());
    assertThat(outcomeFrom(bytes.array())).isSameAs(FULL);
  }

  /** A name of Windows may have half a pair of surrogates, for which UTF-8 writes the same sign. */
  @Test
  void namesThatDifferInHalfACharacterAreTwo() throws IOException {
    KeptOutcomes kept = KeptOutcomes.none();
    check(kept, "day 1", "sites/\uD800.yaml", BYTES, CLEAN);
    assertThat(check(kept, "day 1", "sites/?.yaml", BYTES, FULL)).isSameAs(FULL);
  }

  private static FileOutcome outcomeFrom(byte[] bytes) {
    return check(KeptOutcomes.of(bytes), "day 1", "sites/one.yaml", BYTES, FULL);
  }
}
