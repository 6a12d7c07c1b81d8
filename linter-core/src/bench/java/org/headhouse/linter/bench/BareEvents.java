package org.headhouse.linter.bench;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * The least that a program can do which reads a folder of YAML: each file read, decoded and parsed
 * into events by two threads, and nothing made of them.
 */
final class BareEvents {
  private BareEvents() {}

  /** Reads the files of the folder that is named, and prints how many events they have. */
  @SuppressWarnings("SystemOut")
  public static void main(String[] arguments)
      throws IOException, ExecutionException, InterruptedException {
    System.out.println(events(files(Path.of(arguments[0]))));
    System.exit(0);
  }

  /** The events of one file, decoded and parsed. */
  static int events(byte[] file) {
    Parser parser = new ParserImpl(new StreamReader(new String(file, UTF_8)), new LoaderOptions());
    int events = 0;
    while (!parser.checkEvent(Event.ID.StreamEnd)) {
      parser.getEvent();
      events++;
    }
    return events;
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    }
  }

  private static long events(List<Path> files)
      throws IOException, ExecutionException, InterruptedException {
    AtomicInteger next = new AtomicInteger();
    ExecutorService second = Executors.newSingleThreadExecutor();
    Future<Long> other = second.submit(() -> events(files, next));
    return events(files, next) + other.get();
  }

  private static long events(List<Path> files, AtomicInteger next) throws IOException {
    long events = 0;
    for (int i = next.getAndIncrement(); i < files.size(); i = next.getAndIncrement()) {
      events += events(Files.readAllBytes(files.get(i)));
    }
    return events;
  }
}
