package org.headhouse.linter.bench;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Checks sites of 20 units by the command in a process of its own, beside a process that only turns
 * the same files into events: in turn, so that what else runs on the machine meets both. Prints the
 * medians, and how long the one takes for each second of the other.
 */
public final class ColdStart {
  private static final int FILES = 5000;
  private static final int PAIRS = 11;
  private static final Path PROCESS_ACCOUNT = Path.of("/proc/self/stat");

  private final Path folder;
  private final String command;

  /** Whole processes of one kind, each with the seconds that it took. */
  private record Times(List<Double> wall, List<Double> processor) {
    Times() {
      this(new ArrayList<>(), new ArrayList<>());
    }
  }

  private ColdStart(Path folder, String command) {
    this.folder = folder;
    this.command = command;
  }

  /** Takes the jar of the command. */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    ColdStart start = new ColdStart(Files.createTempDirectory("cold-start"), arguments[0]);
    try {
      start.write();
      start.compare();
    } finally {
      start.delete();
    }
  }

  private Path sites() {
    return folder.resolve("sites");
  }

  private void write() throws IOException {
    Files.createDirectory(sites());
    int number = 0;
    for (byte[] site : Corpus.sites(FILES, 20)) {
      Files.write(sites().resolve("site-" + number++ + ".yaml"), site);
    }
    Files.writeString(folder.resolve("device-types.yaml"), Corpus.DEVICE_TYPES);
  }

  @SuppressWarnings("SystemOut")
  private void compare() throws IOException, InterruptedException {
    String bench = System.getProperty("java.class.path");
    List<String> events =
        java(command + File.pathSeparator + bench, BareEvents.class.getName(), sites().toString());
    List<String> check = java(command, "org.headhouse.linter.command.Main", "--threads=2");
    run(events, new Times()); // what the disk must be asked for
    run(check, new Times());
    Times floor = new Times();
    Times whole = new Times();
    for (int pair = 0; pair < PAIRS; pair++) {
      run(events, floor);
      run(check, whole);
    }
    System.out.printf(
        Locale.ROOT,
        "%d sites by cold processes, medians of %d: check %.2f s, events %.2f s: %.2f times as long"
            + "%s%n",
        FILES,
        PAIRS,
        median(whole.wall),
        median(floor.wall),
        ratio(whole.wall, floor.wall),
        floor.processor.isEmpty()
            ? ""
            : String.format(
                Locale.ROOT,
                "; processor time %.2f s, %.2f s: %.2f times as much",
                median(whole.processor),
                median(floor.processor),
                ratio(whole.processor, floor.processor)));
  }

  /** A call of Java, for which both kinds have the same options. */
  private static List<String> java(String classPath, String main, String argument) {
    return List.of(
        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
        "-XX:TieredStopAtLevel=1",
        "-XX:+UseSerialGC",
        "-classpath",
        classPath,
        main,
        argument);
  }

  private void run(List<String> call, Times times) throws IOException, InterruptedException {
    Path said = folder.resolve("said.txt");
    double processor = processorSeconds();
    long start = System.nanoTime();
    int code =
        new ProcessBuilder(call)
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start()
            .waitFor();
    times.wall.add((System.nanoTime() - start) / 1e9);
    if (Files.exists(PROCESS_ACCOUNT)) {
      times.processor.add(processorSeconds() - processor);
    }
    if (code != 0) {
      throw new IllegalStateException(call + " ended with " + code + ": " + Files.readString(said));
    }
  }

  /** What the processes that ended took of all processors; 0 where Linux does not tell. */
  private static double processorSeconds() throws IOException {
    if (!Files.exists(PROCESS_ACCOUNT)) {
      return 0;
    }
    // The name of the program in parentheses may have spaces; of what follows, the 14th and 15th
    // are the hundredths of seconds of children in user mode and in the kernel (proc(5)).
    String account = Files.readString(PROCESS_ACCOUNT);
    String[] fields = account.substring(account.lastIndexOf(')') + 2).split(" ", -1);
    return (Long.parseLong(fields[13]) + Long.parseLong(fields[14])) / 100.0;
  }

  /** The median of the pairs. */
  private static double ratio(List<Double> whole, List<Double> floor) {
    List<Double> ratios = new ArrayList<>();
    for (int pair = 0; pair < PAIRS; pair++) {
      ratios.add(whole.get(pair) / floor.get(pair));
    }
    return median(ratios);
  }

  private static double median(List<Double> values) {
    return values.stream().sorted().skip(values.size() / 2).findFirst().orElseThrow();
  }

  private void delete() throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : (Iterable<Path>) files.sorted(Comparator.reverseOrder())::iterator) {
        Files.delete(file);
      }
    }
  }
}
