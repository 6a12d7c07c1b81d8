package org.headhouse.linter.draft;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.headhouse.linter.RandomCases;
import org.junit.jupiter.api.Test;

/** Random changes of a list: the site follows them, and nothing else of its text changes. */
class UpdateRoundTripTest {

  /** What a row says; empty for nothing. */
  private record Row(
      String name, String role, String address, String vents, String end, String cable) {
    String line() {
      return String.join(",", name, role, address, vents, end, cable);
    }
  }

  private static String list(List<Row> rows) {
    StringBuilder list = new StringBuilder("name,role,address,vents,termination,cable\n");
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      String cable = i == rows.size() - 1 ? "" : row.cable();
      list.append(
          new Row(row.name(), row.role(), row.address(), row.vents(), row.end(), cable).line());
      list.append('\n');
    }
    return list.toString();
  }

  @Test
  void theSiteFollowsTheList() {
    double structural =
        RandomCases.share(
            600,
            random -> {
              List<Row> rows = rows(random);
              String site = remarked(Lists.made(list(rows)), random);
              assertThat(SiteUpdateTest.after(list(rows), site)).isEqualTo(site);
              List<Row> later = changed(rows, random);
              SiteUpdate.Made update = SiteUpdateTest.made(list(later), site);
              String after = new String(update.after(), UTF_8);
              assertThat(drafted(after))
                  .as("%s\n%s", list(later), site)
                  .isEqualTo(drafted(Lists.made(list(later))));
              assertThat(SiteUpdateTest.after(list(later), after)).isEqualTo(after);
              remarksStay(site, after, rows, later);
              remarksLeave(site, after, update);
              return !names(rows).equals(names(later));
            });
    assertThat(structural).isGreaterThan(0.5);
  }

  private static List<String> names(List<Row> rows) {
    return rows.stream().map(Row::name).toList();
  }

  /** What is read of the units of a site, without what only a draft writes for a new one. */
  private static List<String> drafted(String text) {
    return ItemValues.of(text);
  }

  private static void remarksStay(String site, String after, List<Row> rows, List<Row> later) {
    List<String> kept = names(later);
    for (String line : site.lines().toList()) {
      String remark = line.replaceAll("^[^#]*#", "#");
      String of = remark.replaceAll(".*<(.*)>.*", "$1");
      boolean stays = !remark.contains("<") || kept.contains(of) || !names(rows).contains(of);
      if (line.contains("#") && stays && remark.contains("<")) {
        assertThat(after.lines())
            .as("%s in\n%s", remark, after)
            .anyMatch(one -> one.endsWith(remark));
      }
    }
  }

  /** The comment before an item is gone with it, which is said. */
  private static void remarksLeave(String site, String after, SiteUpdate.Made update) {
    for (SiteUpdate.Remark remark : update.remarks()) {
      Matcher removed =
          Pattern.compile("\"(.*)\" \\(.*the difference removes it(.*)").matcher(remark.text());
      if (removed.matches()) {
        String before = "# before <" + removed.group(1) + ">";
        assertThat(after).doesNotContain(before);
        assertThat(removed.group(2).startsWith(" with the comment"))
            .isEqualTo(site.contains(before));
      }
    }
  }

  /** Comments of people, before items, beside values and after them. */
  private static String remarked(String text, Random random) {
    List<String> lines = new ArrayList<>();
    String name = "";
    boolean inChain = false;
    for (String line : text.lines().toList()) {
      inChain |= line.equals("chain:");
      if (inChain && line.startsWith("  - ")) {
        name = line.replaceAll(".*: \"?(.*?)\"?$", "$1");
        if (random.nextInt(3) == 0) {
          lines.add("  # before <" + name + ">");
        }
      }
      boolean beside =
          inChain && random.nextInt(4) == 0 && line.contains(": ") && !line.contains("#");
      lines.add(beside && line.startsWith("    ") ? line + "  # of <" + name + ">" : line);
    }
    return String.join("\n", lines) + (random.nextBoolean() ? "\n" : "");
  }

  private static List<Row> rows(Random random) {
    List<Row> rows = new ArrayList<>();
    int number = 3 + random.nextInt(8);
    for (int i = 0; i < number; i++) {
      rows.add(row(random, i, i + 1));
    }
    return rows;
  }

  private static Row row(Random random, int index, int address) {
    boolean meter = index > 0 && random.nextInt(6) == 0;
    return new Row(
        "Bay " + address,
        meter ? "equipment" : index == 0 ? "head" : "follower",
        String.valueOf(address),
        meter ? "" : List.of("roof", "side", "none").get(random.nextInt(3)),
        random.nextBoolean() ? "none" : "120 ohm",
        1 + random.nextInt(90) + " m");
  }

  private static List<Row> changed(List<Row> rows, Random random) {
    List<Row> later = new ArrayList<>(rows);
    for (int n = random.nextInt(4); n > 0; n--) {
      int at = 1 + random.nextInt(later.size() - 1);
      Row row = later.get(at);
      switch (random.nextInt(6)) {
        case 0 -> {
          if (later.stream().filter(one -> !one.role().equals("equipment")).count() > 3) {
            later.remove(at);
          }
        }
        case 1 -> later.add(at, row(random, at, 100 + random.nextInt(50)));
        case 2 -> Collections.swap(later, at, later.size() - 1);
        case 3 ->
            later.set(
                at,
                new Row(
                    "Shed " + row.address(),
                    row.role(),
                    row.address(),
                    row.vents(),
                    row.end(),
                    row.cable()));
        case 4 ->
            later.set(
                at, new Row(row.name(), row.role(), row.address(), row.vents(), "68 ohm", "7 ft"));
        default -> {
          if (!row.role().equals("equipment")) {
            later.set(
                at,
                new Row(
                    row.name(),
                    row.role(),
                    row.address(),
                    "roof-and-side",
                    row.end(),
                    row.cable()));
          }
        }
      }
    }
    boolean twice = names(later).stream().distinct().count() < later.size();
    boolean few = later.stream().filter(row -> !row.role().equals("equipment")).count() < 2;
    // A list without rows of a kind says nothing of that kind.
    boolean silent = meters(later) == 0 && meters(rows) > 0;
    return twice || few || silent ? rows : later;
  }

  private static long meters(List<Row> rows) {
    return rows.stream().filter(row -> row.role().equals("equipment")).count();
  }

  /** The values of the items of a site that a list can say. */
  private static final class ItemValues {
    private static final Pattern KEPT =
        Pattern.compile("(unit|equipment|role|address|vents|termination|cable-to-next): .*");

    static List<String> of(String text) {
      List<String> values = new ArrayList<>();
      String inDefaults = "";
      boolean inChain = false;
      for (String line : text.lines().toList()) {
        String bare = line.replaceFirst("^ *(- )?", "").replaceFirst(" +#.*$", "");
        inChain |= line.startsWith("chain:");
        if (!inChain && bare.startsWith("vents: ")) {
          inDefaults = bare;
        }
        if (inChain && KEPT.matcher(bare).matches() && !bare.equals("cable-to-next: none")) {
          values.add(bare);
        }
      }
      return sorted(values, inDefaults);
    }

    /** Each item's values in one line, a default given to those followers that lack it. */
    private static List<String> sorted(List<String> values, String inDefaults) {
      List<List<String>> items = new ArrayList<>();
      for (String value : values) {
        if (value.startsWith("unit: ") || value.startsWith("equipment: ")) {
          items.add(new ArrayList<>());
        }
        items.get(items.size() - 1).add(value);
      }
      List<String> lines = new ArrayList<>();
      for (List<String> item : items) {
        boolean takes =
            item.contains("role: follower")
                && item.stream().noneMatch(one -> one.startsWith("vents"));
        if (takes && !inDefaults.isEmpty()) {
          item.add(inDefaults);
        }
        Collections.sort(item);
        lines.add(String.join("; ", item));
      }
      return lines;
    }
  }
}
