package org.headhouse.linter.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;

/**
 * A line in a storm, told event by event: who sends, how long each byte takes, what is lost, and
 * what a follower does with what it gets. It has no sum of worst cases in it.
 */
final class StormLine {

  /** What somebody reads from units, one after the other. */
  record Poller(
      int units,
      int registers,
      double periodSeconds,
      double phaseSeconds,
      double processingSeconds,
      double timeoutSeconds,
      int retries,
      int silentUnit) {}

  /** The weather, and what goes wrong. */
  record Trouble(double gustAt, Set<Integer> lostBroadcasts, double deadFrom) {}

  /** A transaction that wants the line. */
  private record Wish(double due, Poller poller, int unit) {}

  private final double byteSeconds;
  private final double silenceSeconds;
  private final int broadcastBytes;
  private final double turnaroundSeconds;
  private final double periodSeconds;
  private final double averagingSeconds;
  private final double staleAfterSeconds;
  private final double closeSeconds;

  /** When each broadcast was due and when its last bit was there, once it ran. */
  private final List<double[]> broadcasts = new ArrayList<>();

  private double oldestReadingSeconds;
  private double closedAt = Double.NaN;
  private double lineFreeAt;

  StormLine(
      int baud,
      int registers,
      double turnaroundSeconds,
      double periodSeconds,
      double averagingSeconds,
      double staleAfterSeconds,
      double closeSeconds) {
    byteSeconds = 11.0 / baud;
    silenceSeconds = baud > 19_200 ? 0.00175 : 3.5 * byteSeconds;
    // Address, function, start 2, count 2, bytes 1, registers, check 2.
    broadcastBytes = 9 + 2 * registers;
    this.turnaroundSeconds = turnaroundSeconds;
    this.periodSeconds = periodSeconds;
    this.averagingSeconds = averagingSeconds;
    this.staleAfterSeconds = staleAfterSeconds;
    this.closeSeconds = closeSeconds;
  }

  /** Runs the line until its vents are shut, or to an end. */
  void run(List<Poller> pollers, Trouble trouble, double until) {
    PriorityQueue<Wish> wishes =
        new PriorityQueue<>(Comparator.comparingDouble(Wish::due).thenComparing(Wish::unit));
    for (Poller poller : pollers) {
      for (double at = poller.phaseSeconds; at < until; at += poller.periodSeconds) {
        for (int unit = 0; unit < poller.units; unit++) {
          wishes.add(new Wish(at, poller, unit));
        }
      }
    }
    Follower follower = new Follower();
    int broadcast = 0;
    while (lineFreeAt < until) {
      double broadcastDue = broadcast * periodSeconds;
      Wish wish = wishes.peek();
      double nextDue = wish == null ? broadcastDue : Math.min(broadcastDue, wish.due);
      double now = Math.max(lineFreeAt, nextDue);
      if (broadcastDue <= now || wish == null) {
        send(broadcast, broadcastDue, now, trouble, follower);
        broadcast++;
      } else {
        wishes.poll();
        lineFreeAt = now + transactionSeconds(wish);
      }
    }
    follower.waitUntil(until);
  }

  private void send(int number, double due, double now, Trouble trouble, Follower follower) {
    double heard = now + broadcastBytes * byteSeconds;
    broadcasts.add(new double[] {due, heard});
    if (!trouble.lostBroadcasts.contains(number) && heard < trouble.deadFrom) {
      // The mean is over the limit only once the gust fills all of it.
      boolean over = due - trouble.gustAt >= averagingSeconds;
      follower.hear(heard, due, over);
    }
    lineFreeAt = heard + silenceSeconds + turnaroundSeconds;
  }

  private double transactionSeconds(Wish wish) {
    Poller poller = wish.poller;
    double request = 8 * byteSeconds;
    double seconds = 0;
    if (wish.unit == poller.silentUnit) {
      for (int attempt = 0; attempt <= poller.retries; attempt++) {
        seconds += request + poller.timeoutSeconds;
      }
      return seconds;
    }
    double answer = (5 + 2 * poller.registers) * byteSeconds;
    return request + silenceSeconds + poller.processingSeconds + answer + silenceSeconds;
  }

  /** A unit with vents that closes on wind, and where readings stay away. */
  private final class Follower {
    private double lastHeard;
    private double lastTaken;
    private boolean closing;

    void hear(double now, double taken, boolean over) {
      waitUntil(now);
      oldestReadingSeconds = Math.max(oldestReadingSeconds, now - lastTaken);
      lastHeard = now;
      lastTaken = taken;
      if (over) {
        close(now);
      }
    }

    void waitUntil(double now) {
      if (now - lastHeard > staleAfterSeconds) {
        close(lastHeard + staleAfterSeconds);
      }
    }

    private void close(double now) {
      if (!closing) {
        closing = true;
        closedAt = now + closeSeconds;
      }
    }
  }

  /** When the vents were shut; not a number where they never were. */
  double closedAt() {
    return closedAt;
  }

  /** The oldest reading that a follower had before the next came. */
  double oldestReadingSeconds() {
    return oldestReadingSeconds;
  }

  /** When the last bit of a broadcast was there. */
  double heardAt(int broadcast) {
    return broadcasts.get(broadcast)[1];
  }
}
