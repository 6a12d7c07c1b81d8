package org.headhouse.linter.baseline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.RandomCases;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.rule.Rule;
import org.headhouse.linter.rules.BuiltInRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever faults sites have: taken, none is new, and each that is mended is gone by itself. */
class RandomDebtTest {
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

  /**
   * The rules that the faults break: a rule that joins them shall not change what is counted here.
   */
  private static final Set<String> RULES =
      Set.of(
          "cable.too-thin",
          "cable.unshielded",
          "conductors.pair-missing",
          "module.absent",
          "outdoor.not-from-head",
          "outdoor.unsafe-fallback",
          "run.unprotected",
          "serial.framing",
          "termination.mid-line");

  private static SiteInput policy() {
    String others =
        BuiltInRules.all().stream()
            .map(Rule::descriptor)
            .filter(rule -> !rule.foundation() && !RULES.contains(rule.id()))
            .map(rule -> "  " + rule.id() + ": {level: none}\n")
            .collect(Collectors.joining());
    return SiteInput.text("linter.yaml", "format: 1\nrule-set: 1\nrules:\n" + others);
  }

  @TempDir private Path folder = Path.of("");

  @Test
  void takenFaultsAreKnownAndMendedOnesAreGone() throws IOException {
    OldDebt debt = new OldDebt(folder, policy());
    Set<String> broken = new TreeSet<>();
    double faulty =
        RandomCases.share(
            200,
            random -> {
              TreeMap<String, Faulty> sites = new TreeMap<>();
              for (String id : List.of("alder", "birch", "cedar")) {
                sites.put("sites/" + id + ".yaml", new Faulty(id, random));
              }
              int threads = 1 + random.nextInt(4);
              List<Result> known = mendOneByOne(debt, sites, threads);
              known.forEach(result -> broken.add(result.rule()));
              return !known.isEmpty();
            });
    assertThat(faulty).isGreaterThan(0.9);
    assertThat(broken).isEqualTo(RULES);
  }

  /** What is known of the sites before any of it is mended. */
  private static List<Result> mendOneByOne(OldDebt debt, Map<String, Faulty> sites, int threads)
      throws IOException {
    Map<String, String> texts = new TreeMap<>();
    sites.forEach((file, site) -> texts.put(file, site.text(-1)));
    String written = debt.take(texts);
    assertThat(debt.take(texts)).isEqualTo(written);
    int faults = sites.values().stream().mapToInt(site -> site.faults.size()).sum();
    CheckReport same = debt.check(texts, threads);
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
      }
    }
    return same.known();
  }
}
