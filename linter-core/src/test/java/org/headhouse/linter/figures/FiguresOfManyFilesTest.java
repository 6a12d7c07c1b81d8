package org.headhouse.linter.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.source.Limits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Figures of a stream of files: their order, and what is told of files that have none. */
class FiguresOfManyFilesTest {
  private static final String NONE = "it has no figures: a check says why";

  private static SiteLinter linter(int threads) throws IOException {
    return SiteLinter.builder().threads(threads).limits(new Limits(2_000, 64, 1_000)).build();
  }

  private static SiteInput site(String id) {
    return SiteInput.text(id + ".yaml", Example.with("site: example", "site: " + id));
  }

  private static SiteInput unreadable(String path) {
    return new SiteInput(
        path,
        most -> {
          throw new IOException("the share is gone");
        });
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 8})
  void areInTheOrderOfTheFiles(int threads) throws IOException {
    List<String> ids = IntStream.range(0, 1_500).mapToObj(number -> "site-" + number).toList();
    List<String> taken = new ArrayList<>();
    List<Notification> troubles =
        linter(threads)
            .figures(
                ids.stream().map(FiguresOfManyFilesTest::site),
                figures -> taken.add(figures.site()));
    assertThat(taken).isEqualTo(ids);
    assertThat(troubles).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 3})
  void filesWithoutFiguresAreToldInTheirOrder(int threads) throws IOException {
    List<String> taken = new ArrayList<>();
    Stream<SiteInput> inputs =
        Stream.of(
            unreadable("gone.yaml"),
            site("one"),
            SiteInput.text("torn.yaml", "site: ["),
            SiteInput.text("large.yaml", "#".repeat(2_001)),
            new SiteInput("bytes.yaml", most -> new byte[] {(byte) 0xFF, (byte) 0xFE, 0x41}),
            site("two"));
    assertThat(linter(threads).figures(inputs, figures -> taken.add(figures.site())))
        .containsExactly(
            new Notification(
                Level.ERROR, "the file cannot be read: the share is gone", "gone.yaml", null),
            new Notification(Level.WARNING, NONE, "torn.yaml", null),
            new Notification(Level.WARNING, NONE, "large.yaml", null),
            new Notification(Level.WARNING, NONE, "bytes.yaml", null));
    assertThat(taken).containsExactly("one", "two");
  }

  /** The figures are those of the record, and the file's path stands in for an id. */
  @Test
  void aSiteWithoutIdIsCalledByItsFile() throws IOException {
    List<SiteFigures> taken = new ArrayList<>();
    linter(1)
        .figures(
            Stream.of(SiteInput.text("sites/x.yaml", Example.with("site: example\n", ""))),
            taken::add);
    assertThat(taken).singleElement().extracting(SiteFigures::site).isEqualTo("sites/x.yaml");
  }

  @Test
  void noFileAtAll() throws IOException {
    List<SiteFigures> taken = new ArrayList<>();
    assertThat(linter(2).figures(Stream.of(), taken::add)).isEmpty();
    assertThat(taken).isEmpty();
  }

  /** Where the figures cannot be written, the work ends. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void aTakerThatFailsEndsTheWork(int threads) throws IOException {
    SiteLinter linter = linter(threads);
    assertThatThrownBy(
            () ->
                linter.figures(
                    Stream.generate(() -> site("one")),
                    figures -> {
                      throw new IllegalStateException("the disk is full");
                    }))
        .hasMessage("the disk is full");
  }
}
