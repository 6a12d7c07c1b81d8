package org.headhouse.linter.line;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.figures.SiteFigures;
import org.headhouse.linter.line.StormLine.Poller;
import org.junit.jupiter.api.Test;

/**
 * Whole sites as their files say them, against a line that is simulated event by event: polls by
 * software over the line or through the head unit, units of two types, equipment, a converter.
 */
class StormSitesTest {

  /** A site, and who sends on its line. */
  private record Case(LineCheck check, StormSearch line) {}

  private static Case random(Random random) {
    int baud = random.nextBoolean() ? 9600 : 19_200;
    boolean throughHead = random.nextBoolean();
    boolean polledBySoftware = random.nextBoolean();
    int registers = 6 + random.nextInt(20);
    int period = 3 + random.nextInt(10);
    int lost = random.nextInt(3);
    int averaging = random.nextInt(20);
    int staleAfter = period * (lost + 1) + 1 + random.nextInt(60);
    int close = 20 + random.nextInt(80);
    int fast = 2 + random.nextInt(4);
    int slow = 1 + random.nextInt(3);
    int zoneRegisters = 10 + random.nextInt(60);
    int retries = random.nextInt(3);
    int timeoutMillis = 500 + 100 * random.nextInt(10);
    int every = 20 + random.nextInt(20);
    int rigRegisters = 4 + random.nextInt(100);
    int rigEvery = 15 + random.nextInt(40);
    double latency = throughHead ? 0 : 0.016;

    SiteText site =
        new SiteText()
            .line("baud", String.valueOf(baud))
            .station("[light, wind-speed], averaging: " + averaging + " s, close-within: 60 min")
            .broadcast(registers, period + " s")
            .unit("120 ohm", "10 m");
    if (!throughHead) {
      site.converter("Office", "16 ms", "10 m");
    }
    site.equipment(
        "Dosing Rig",
        "by: "
            + (polledBySoftware ? "supervision" : "head")
            + ", registers: "
            + rigRegisters
            + ", every: "
            + rigEvery
            + " s",
        "10 m");
    site.units(fast - 1, "10 m").units(slow, "10 m", "device-type: slow");
    site.unit(
        "120 ohm",
        "",
        "vents: roof",
        "on-stale-readings: close",
        "stale-after: " + staleAfter + " s",
        "close-time: " + close + " s");
    site.polls(
        throughHead ? "through-head" : "serial",
        "every: "
            + every
            + " s, registers: "
            + zoneRegisters
            + ", timeout: "
            + timeoutMillis
            + " ms, retries: "
            + retries);
    LineCheck check =
        LineCheck.of(site)
            .types("id: slow, processing: 150 ms")
            .parameter("outdoor.too-old", "lost", String.valueOf(lost));

    double timeout = timeoutMillis / 1e3;
    List<Poller> pollers = new ArrayList<>();
    // The head unit and the last one are of the usual type, too.
    pollers.add(
        new Poller(fast + 1, zoneRegisters, every, 0.3, 0.02 + latency, timeout, retries, -1));
    pollers.add(new Poller(slow, zoneRegisters, every, 1.7, 0.15 + latency, timeout, retries, -1));
    pollers.add(
        polledBySoftware
            ? new Poller(1, rigRegisters, rigEvery, 0.9, 0.02 + latency, timeout, retries, -1)
            : new Poller(1, rigRegisters, rigEvery, 0.9, 0.02, 1, 1, -1));
    Poller patient =
        pollers.stream()
            .max(
                Comparator.comparingDouble(
                    poller -> (1 + poller.retries()) * poller.timeoutSeconds()))
            .orElseThrow();
    pollers.remove(patient);
    Poller silent =
        new Poller(
            patient.units(),
            patient.registers(),
            patient.periodSeconds(),
            0,
            patient.processingSeconds(),
            patient.timeoutSeconds(),
            patient.retries(),
            random.nextInt(patient.units()));
    return new Case(
        check,
        new StormSearch(
            baud, registers, period, averaging, staleAfter, close, lost, silent, pollers));
  }

  @Test
  void noRunOfASiteIsLaterThanItsFiguresSayAndTheWorstIsNearThem() {
    Random random = new Random(73);
    for (int number = 0; number < 40; number++) {
      Case one = random(random);
      SiteFigures figures = one.check.figures();
      ReadingAge age = requireNonNull(requireNonNull(figures.traffic()).ageOneSilent());
      ClosingTime time = requireNonNull(figures.storm()).units().get(0).time();
      assertThat(time.isComplete()).as("%s", one).isTrue();
      StormSearch.Worst worst = one.line.worst(random, 200);
      assertThat(worst.age)
          .as("%s", one)
          .isBetween(0.9 * age.totalSeconds(), age.totalSeconds() + 1e-9);
      assertThat(worst.closed)
          .as("%s", one)
          .isBetween(0.9 * time.totalSeconds(), time.totalSeconds() + 1e-9);
    }
  }

  /** What is allowed is judged by the very sum: a limit above the worst run is kept, none below. */
  @Test
  void theRuleIsSilentOnlyWhereNoRunIsLater() {
    Random random = new Random(74);
    for (int number = 0; number < 20; number++) {
      Case one = random(random);
      double worst = one.line.worst(random, 100).closed;
      String under = "close-within: " + Math.floor(worst * 10) / 10 + " s";
      assertThat(one.check.with("close-within: 60 min", under).rules())
          .as("%s", one)
          .contains("outdoor.closes-too-late");
      String over = "close-within: " + Math.ceil(worst * 1.12) + " s";
      assertThat(one.check.with("close-within: 60 min", over).rules())
          .as("%s", one)
          .doesNotContain("outdoor.closes-too-late");
    }
  }
}
