package org.headhouse.linter.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.headhouse.linter.growth.LongGrowth;

/** Fuzzes one subject after the other, each in a program of its own, and prints what came of it. */
public final class Fuzz {
  /** What is no subject: inputs that grow by a rule, and not by chance. */
  private static final String GROWTH = "growth";

  private static final String DRIVER = "com.code_intelligence.jazzer.Jazzer";
  private static final String FUZZED = "org.headhouse.linter.**:org.yaml.snakeyaml.**";
  private static final Path WORK = Path.of("target", "fuzz");
  private static final Path KEPT = Path.of("src", "test", "resources", "fuzz");

  private final Subject subject;
  private final String trace;
  private final int longest;
  private final Path corpus;
  private final Path seeds;

  private Fuzz(Subject subject, String trace, int longest) {
    this.subject = subject;
    this.trace = trace;
    this.longest = longest;
    this.corpus = WORK.resolve(subject.word()).resolve("corpus");
    this.seeds = WORK.resolve(subject.word()).resolve("seeds");
  }

  /**
   * Fuzzes.
   *
   * @param arguments the names of the subjects with commas between, {@code growth} among them, or
   *     {@code all}; how many seconds for each; {@code write} to keep what was found with the
   *     tests; what guides the fuzzer: {@code cov}, or slower {@code cov:cmp}, which looks at
   *     comparisons too; and how many bytes an input has at most: of short ones it tries more
   */
  @SuppressWarnings("SystemOut")
  public static void main(String[] arguments) throws IOException, InterruptedException {
    List<String> words = List.of(arguments[0].split(","));
    boolean all = words.contains("all");
    List<Subject> subjects =
        all
            ? List.of(Subject.values())
            : words.stream().filter(word -> !word.equals(GROWTH)).map(Subject::of).toList();
    int seconds = Integer.parseInt(arguments[1]);
    boolean keep = arguments[2].equals("write");
    List<String> rows = new ArrayList<>();
    boolean sound = !(all || words.contains(GROWTH)) || LongGrowth.isLimited();
    for (Subject subject : subjects) {
      Fuzz fuzz = new Fuzz(subject, arguments[3], Integer.parseInt(arguments[4]));
      fuzz.prepare();
      if (seconds > 0) {
        FuzzLog log = fuzz.run(seconds);
        rows.add(log.row(subject.word()));
        sound &= log.isSound();
      }
      if (keep) {
        fuzz.keep();
      }
    }
    rows.forEach(System.out::println);
    if (!sound) {
      throw new IllegalStateException("a property does not hold: see above, and " + WORK);
    }
  }

  /** Writes the words and the seeds; what earlier runs found stays. */
  private void prepare() throws IOException {
    Files.createDirectories(corpus);
    Files.createDirectories(seeds);
    Files.writeString(WORK.resolve("words.txt"), Dictionary.text());
    List<byte[]> all = new ArrayList<>(Seeds.of(subject.food()));
    if (Files.exists(KEPT.resolve(subject.word() + ".txt"))) {
      all.addAll(Inputs.of(KEPT, subject));
    }
    for (int i = 0; i < all.size(); i++) {
      Files.write(seeds.resolve(String.valueOf(i)), all.get(i));
    }
  }

  private FuzzLog run(int seconds) throws IOException, InterruptedException {
    Path log = WORK.resolve(subject.word()).resolve("log.txt");
    start(
        log,
        "-max_total_time=" + seconds,
        "-max_len=" + longest,
        "-timeout=60",
        "-print_final_stats=1",
        "-dict=" + WORK.resolve("words.txt"),
        "-artifact_prefix=" + WORK.resolve(subject.word()) + "/",
        corpus.toString(),
        seeds.toString());
    return FuzzLog.of(log);
  }

  /**
   * The fewest inputs that reach what all reach, counted by places of the program. The test has the
   * seeds anyway, so only what they do not reach counts.
   */
  private void keep() throws IOException, InterruptedException {
    Path fewest = Files.createDirectories(WORK.resolve(subject.word()).resolve("fewest"));
    for (Path file : files(fewest)) {
      Files.delete(file);
    }
    Set<String> known = new HashSet<>();
    for (byte[] seed : Seeds.of(subject.food())) {
      Files.write(fewest.resolve(String.valueOf(known.size())), seed);
      known.add(Inputs.text(seed));
    }
    start(
        WORK.resolve(subject.word()).resolve("merge.txt"),
        "-merge=1",
        "-use_counters=0",
        fewest.toString(),
        corpus.toString(),
        seeds.toString());
    List<byte[]> inputs = new ArrayList<>();
    for (Path file : files(fewest)) {
      byte[] input = Files.readAllBytes(file);
      if (known.add(Inputs.text(input))) {
        inputs.add(input);
      }
    }
    Files.createDirectories(KEPT);
    Inputs.write(KEPT, subject, inputs);
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    }
  }

  /** Starts the fuzzer with a small heap. */
  private void start(Path log, String... options) throws IOException, InterruptedException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx512m",
                "-XX:+UseSerialGC",
                "-XX:-OmitStackTraceInFastThrow",
                "-classpath",
                System.getProperty("java.class.path"),
                DRIVER,
                "--target_class=" + FuzzTarget.class.getName(),
                "--target_args=" + subject.word(),
                "--instrumentation_includes=" + FUZZED,
                "--custom_hook_includes=" + FUZZED,
                "--instrumentation_excludes=org.headhouse.linter.fuzz.**",
                "--trace=" + trace,
                "--reproducer_path=" + WORK.resolve(subject.word())));
    command.addAll(List.of(options));
    new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(log.toFile())
        .start()
        .waitFor();
  }
}
