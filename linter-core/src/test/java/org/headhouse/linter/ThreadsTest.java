package org.headhouse.linter;

import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import java.util.Spliterators;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.headhouse.linter.report.SarifReport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The number of threads changes nothing but the time, and sites are a stream. */
class ThreadsTest {
  private static final List<String> LINES = List.of(Example.SITE.split("\n"));

  /** A few hundred sites; most have a fault, some are no YAML, no UTF-8, no file, or the same. */
  private static List<SiteInput> repository() {
    Random random = new Random(8);
    List<SiteInput> inputs = new ArrayList<>();
    for (int i = 0; i < 400; i++) {
      List<String> lines = new ArrayList<>(LINES);
      lines.set(1, "site: site-" + random.nextInt(300));
      for (int faults = random.nextInt(3); faults > 0; faults--) {
        lines.remove(2 + random.nextInt(lines.size() - 3));
      }
      String text = String.join("\n", lines) + (i % 50 == 7 ? "\n\t[" : "\n");
      byte[] bytes = text.getBytes(i % 60 == 11 ? UTF_16 : UTF_8);
      boolean lost = i % 70 == 13;
      inputs.add(
          new SiteInput(
              "site-" + i + ".yaml",
              most -> {
                if (lost) {
                  throw new NoSuchFileException("lost");
                }
                return bytes;
              }));
    }
    return inputs;
  }

  private static String log(int threads) throws IOException {
    SiteLinter linter = SiteLinter.builder().threads(threads).build();
    CheckReport report = linter.check(repository().stream());
    assertThat(report.files()).isEqualTo(400);
    assertThat(report.results()).hasSizeGreaterThan(400);
    assertThat(report.notifications()).hasSize(6);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new SarifReport(report.rules()).write(report.results(), report.notifications(), out);
    return out.toString(UTF_8);
  }

  @Test
  void theLogIsTheSameByteForByte() throws IOException {
    String one = log(1);
    assertThat(log(2)).isEqualTo(one);
    assertThat(log(8)).isEqualTo(one);
    assertThat(log(8)).isEqualTo(one);
  }

  /** Numbers above what is needed are no fault, and none or less is. */
  @ParameterizedTest
  @ValueSource(ints = {0, -1})
  void atLeastOneThreadIsWanted(int threads) {
    assertThatThrownBy(() -> SiteLinter.builder().threads(threads))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("at least 1");
  }

  @ParameterizedTest
  @ValueSource(ints = {1025, 1 << 27, Integer.MAX_VALUE})
  void moreThreadsThanAreOfUseAreNoFault(int threads) throws IOException {
    SiteLinter linter = SiteLinter.builder().threads(threads).build();
    assertThat(linter.checkText("example.yaml", Example.SITE).results()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void aFailureIsTheSameByAnyNumberOfThreads(int threads) throws IOException {
    SiteLinter linter = SiteLinter.builder().threads(threads).build();
    OutOfMemoryError full = new OutOfMemoryError("the heap is full");
    SiteInput input =
        new SiteInput(
            "example.yaml",
            most -> {
              throw full;
            });
    assertThatThrownBy(() -> linter.check(Stream.of(input))).isSameAs(full);
  }

  /** Each file takes a while that no interrupt ends; at the end none is in the middle of it. */
  @Test
  void noWorkOutlivesItsCheck() throws IOException {
    SiteLinter linter = SiteLinter.builder().threads(2).build();
    byte[] bytes = Example.SITE.getBytes(UTF_8);
    AtomicInteger working = new AtomicInteger();
    Stream<SiteInput> inputs =
        IntStream.range(0, 200)
            .mapToObj(
                i ->
                    new SiteInput(
                        "site-" + i + ".yaml",
                        most -> {
                          working.incrementAndGet();
                          long end = System.nanoTime() + 5_000_000;
                          while (System.nanoTime() < end) {
                            Thread.onSpinWait();
                          }
                          working.decrementAndGet();
                          return bytes;
                        }));
    assertThatThrownBy(
            () ->
                linter.check(
                    inputs,
                    files -> {
                      throw new IllegalStateException("enough");
                    }))
        .hasMessage("enough");
    assertThat(working).hasValue(0);
  }

  /** Counts what was taken from it. */
  private static final class Counting implements Iterator<SiteInput> {
    private final int size;
    private int taken;

    Counting(int size) {
      this.size = size;
    }

    @Override
    public boolean hasNext() {
      return taken < size;
    }

    @Override
    public SiteInput next() {
      taken++;
      return SiteInput.text("site-" + taken + ".yaml", Example.SITE);
    }
  }

  private static Stream<SiteInput> stream(Iterator<SiteInput> inputs) {
    return StreamSupport.stream(Spliterators.spliteratorUnknownSize(inputs, 0), false);
  }

  /** Up to 64 for each thread, and the one that the stream itself holds. */
  @ParameterizedTest
  @CsvSource({"1, 1", "2, 129", "4, 257"})
  void onlyAFewInputsAreAheadOfTheReport(int threads, int most) throws IOException {
    Counting inputs = new Counting(1_500);
    AtomicInteger farthest = new AtomicInteger();
    AtomicInteger done = new AtomicInteger();
    SiteLinter.builder()
        .threads(threads)
        .build()
        .check(
            stream(inputs),
            files -> {
              assertThat(files).isEqualTo(done.incrementAndGet());
              farthest.accumulateAndGet(inputs.taken - files + 1, Math::max);
            });
    assertThat(done).hasValue(1_500);
    assertThat(farthest.get()).isBetween(1, most);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void anInterruptEndsTheCheck(int threads) throws IOException {
    SiteLinter linter = SiteLinter.builder().threads(threads).build();
    Counting inputs = new Counting(100_000);
    try {
      assertThatThrownBy(
              () ->
                  linter.check(
                      stream(inputs),
                      files -> {
                        if (files == 10) {
                          Thread.currentThread().interrupt();
                        }
                      }))
          .isInstanceOf(IllegalStateException.class)
          .hasMessage("the check was interrupted");
      assertThat(Thread.currentThread().isInterrupted()).isTrue();
      assertThat(inputs.taken).isLessThan(1_000);
    } finally {
      Thread.interrupted();
    }
    assertThat(linter.checkText("example.yaml", Example.SITE).results()).isEmpty();
  }

  /** Also where all files are checked already, and only their outcomes are left to hand on. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 8})
  void anInterruptEndsTheCheckOfAFewFiles(int threads) throws IOException {
    SiteLinter linter = SiteLinter.builder().threads(threads).build();
    List<Integer> taken = new ArrayList<>();
    try {
      assertThatThrownBy(
              () ->
                  linter.check(
                      stream(new Counting(5)),
                      files -> {
                        taken.add(files);
                        Thread.currentThread().interrupt();
                      }))
          .isInstanceOf(IllegalStateException.class)
          .hasMessage("the check was interrupted");
      assertThat(taken).containsExactly(1);
    } finally {
      Thread.interrupted();
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void whatTheCallersStreamThrowsReachesTheCaller(int threads) throws IOException {
    SiteLinter linter = SiteLinter.builder().threads(threads).build();
    Stream<SiteInput> broken =
        Stream.of(1, 2, 3)
            .map(
                i -> {
                  throw new IllegalStateException("the listing broke off");
                });
    assertThatThrownBy(() -> linter.check(broken)).hasMessage("the listing broke off");
  }

  @Test
  void oneLinterServesSeveralThreads() throws Exception {
    SiteLinter linter = SiteLinter.builder().build();
    String text = Example.with("address: 3", "address: 2").replace("role: head", "role: haed");
    List<String> expected = Checks.places(linter.checkText("example.yaml", text));
    List<Thread> threads = new ArrayList<>();
    AtomicInteger same = new AtomicInteger();
    for (int i = 0; i < 4; i++) {
      Thread thread =
          new Thread(
              () -> {
                for (int n = 0; n < 100; n++) {
                  CheckReport report = linter.checkText("example.yaml", text);
                  same.addAndGet(Checks.places(report).equals(expected) ? 1 : 0);
                }
              });
      threads.add(thread);
      thread.start();
    }
    for (Thread thread : threads) {
      thread.join();
    }
    assertThat(same).hasValue(400);
  }
}
