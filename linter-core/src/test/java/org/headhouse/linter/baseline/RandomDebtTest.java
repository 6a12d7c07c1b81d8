package org.headhouse.linter.baseline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.result.Level;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever faults sites have: taken, none is new, and each that is mended is gone by itself. */
class RandomDebtTest {
  private static final int ROUNDS = 40;

  /** One thing wrong in a site: the text that it has, and the one that it should have. */
  private record Fault(String text, String mended) {}

  private static final List<Fault> OF_A_SITE =
      List.of(
          new Fault("shielded: false", "shielded: true"),
          new Fault("parity: none", "parity: even"),
          new Fault("gauge: 26 AWG", "gauge: 24 AWG"));

  private static final List<Fault> OF_A_UNIT =
      List.of(
          new Fault("comm-module: absent", "comm-module: fitted"),
          new Fault("conductors: [A]", "conductors: [A, B]"),
          new Fault("conductors: [B]", "conductors: [A, B]"),
          new Fault("termination: 120 ohm # spare", "termination: none"),
          new Fault("temperature: none", "temperature: head"),
          new Fault("light: local", "light: head"),
          new Fault("vents: roof", "vents: none"),
          new Fault("run-to-next: between-buildings", "run-to-next: inside"));

  /** A site of some units, and what is wrong with it, by the line that it is written in. */
  private static final class Faulty {
    private final List<String> lines = new ArrayList<>();
    private final TreeMap<Integer, Fault> faults = new TreeMap<>();

    Faulty(String id, Random random) {
      lines.add("format: 1");
      lines.add("site: " + id);
      lines.add("stage: planned");
      lines.add("weather-station: {at: Head House, readings: [light, temperature]}");
      lines.add("line:");
      line("  baud: 9600");
      line("  stop-bits: 1");
      for (String key : List.of("  parity: even")) {
        line(key, OF_A_SITE, random);
      }
      line("  cable:");
      for (String key : List.of("    gauge: 24 AWG", "    shielded: true")) {
        line(key, OF_A_SITE, random);
      }
      line("    impedance: 120 ohm");
      line("chain:");
      unit("Head House", "head", 1, "[A, B, G]", "local");
      line("    termination: 120 ohm");
      line("    cable-to-next: 20 m");
      int units = 3 + random.nextInt(6);
      for (int address = 2; address < units; address++) {
        follower("House " + "ABCDEFGHJ".charAt(address), address, random);
      }
      unit("Last House", "follower", units, "[A, B]", "head");
      line("    termination: 120 ohm");
    }

    private void unit(String name, String role, int address, String conductors, String source) {
      line("  - unit: " + name);
      line("    role: " + role);
      line("    address: " + address);
      line("    comm-module: fitted");
      line("    conductors: " + conductors);
      line("    outdoor: {light: " + source + ", temperature: " + source + "}");
    }

    private void follower(String name, int address, Random random) {
      line("  - unit: " + name);
      line("    role: follower");
      line("    address: " + address);
      line("    outdoor:");
      for (String key :
          List.of(
              "      light: head",
              "      temperature: head",
              "    comm-module: fitted",
              "    conductors: [A, B]",
              "    termination: none",
              "    vents: none",
              "    run-to-next: inside")) {
        line(key, OF_A_UNIT, random);
      }
      line("    cable-to-next: 20 m");
    }

    private void line(String text) {
      lines.add(text);
    }

    private void line(String text, List<Fault> possible, Random random) {
      List<Fault> fitting =
          possible.stream().filter(fault -> text.strip().equals(fault.mended)).toList();
      if (!fitting.isEmpty() && random.nextInt(3) == 0) {
        Fault fault = fitting.get(random.nextInt(fitting.size()));
        faults.put(lines.size(), fault);
        lines.add(text.replace(fault.mended, fault.text));
      } else {
        lines.add(text);
      }
    }

    /** The text with one fault mended, or none for a line without a fault. */
    String text(int mendedLine) {
      List<String> all = new ArrayList<>(lines);
      Fault fault = faults.get(mendedLine);
      if (fault != null) {
        all.set(mendedLine, all.get(mendedLine).replace(fault.text, fault.mended));
      }
      return String.join("\n", all) + "\n";
    }
  }

  @TempDir private Path folder = Path.of("");

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void takenFaultsAreKnownAndMendedOnesAreGone(long seed) throws IOException {
    Random random = new Random(seed);
    OldDebt debt = new OldDebt(folder);
    int mended = 0;
    for (int round = 0; round < ROUNDS; round++) {
      TreeMap<String, Faulty> sites = new TreeMap<>();
      for (String id : List.of("alder", "birch", "cedar")) {
        sites.put("sites/" + id + ".yaml", new Faulty(id, random));
      }
      Map<String, String> texts = new TreeMap<>();
      sites.forEach((file, site) -> texts.put(file, site.text(-1)));
      String written = debt.take(texts);
      assertThat(debt.take(texts)).isEqualTo(written);
      int faults = sites.values().stream().mapToInt(site -> site.faults.size()).sum();
      CheckReport same = debt.check(texts, 1 + random.nextInt(4));
      assertThat(same.at(Level.NOTE)).isEmpty();
      assertThat(same.absent()).isEmpty();
      assertThat(same.known()).hasSize(faults);
      for (Map.Entry<String, Faulty> site : sites.entrySet()) {
        for (int line : site.getValue().faults.keySet()) {
          Map<String, String> after = new TreeMap<>(texts);
          after.put(site.getKey(), site.getValue().text(line));
          CheckReport report = debt.check(after);
          assertThat(report.at(Level.NOTE)).as(after.get(site.getKey())).isEmpty();
          assertThat(report.absent()).as(after.get(site.getKey())).hasSize(1);
          assertThat(report.known()).hasSize(faults - 1);
          mended++;
        }
      }
    }
    assertThat(mended).isGreaterThan(ROUNDS);
  }
}
