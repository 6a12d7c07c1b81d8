package org.headhouse.linter.report;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.change.SiteChange;
import org.headhouse.linter.materials.Slack;
import org.headhouse.linter.report.ChangeDocument.Block;

/** Changes and the order of the field work, for people: as lines for a terminal, or as Markdown. */
public final class ChangeReport {
  private ChangeReport() {}

  /** Lines for a terminal, with the usual slack of cable. */
  public static List<String> text(String compared, List<SiteChange> changes) {
    return text(compared, changes, Slack.USUAL, OpenResults.NONE);
  }

  /**
   * Lines for a terminal.
   *
   * @param compared what the sites are compared with, such as a revision
   * @param slack the cable that is ordered beyond the measured lengths
   * @param open what a check finds in the later state
   */
  public static List<String> text(
      String compared, List<SiteChange> changes, Slack slack, OpenResults open) {
    List<String> lines = new ArrayList<>();
    for (Block block : blocks(compared, changes, slack, open)) {
      text(block, lines);
    }
    return lines.stream().map(TextReport::printable).toList();
  }

  /** A page in Markdown, with the usual slack of cable. */
  public static String markdown(String compared, List<SiteChange> changes) {
    return markdown(compared, changes, Slack.USUAL, OpenResults.NONE);
  }

  /**
   * A page in Markdown; the parameters are those of {@link #text(String, List, Slack,
   * OpenResults)}.
   */
  public static String markdown(
      String compared, List<SiteChange> changes, Slack slack, OpenResults open) {
    List<String> parts = new ArrayList<>();
    for (Block block : blocks(compared, changes, slack, open)) {
      parts.add(markdown(block));
    }
    return String.join("\n\n", parts) + "\n";
  }

  private static List<Block> blocks(
      String compared, List<SiteChange> changes, Slack slack, OpenResults open) {
    List<Block> blocks = new ArrayList<>(ChangeDocument.head(compared));
    if (changes.isEmpty()) {
      blocks.add(new ChangeDocument.Paragraph("No site differs."));
    }
    changes.forEach(change -> blocks.addAll(ChangeDocument.of(change, slack, open)));
    return blocks;
  }

  private static void text(Block block, List<String> lines) {
    if (block instanceof ChangeDocument.Title title) {
      if (title.level() == 2 && !lines.isEmpty()) {
        lines.add("");
      }
      lines.add("  ".repeat(Math.max(0, title.level() - 2)) + title.text());
    } else if (block instanceof ChangeDocument.Paragraph paragraph) {
      lines.add("    " + paragraph.text());
    } else if (block instanceof ChangeDocument.Bullets bullets) {
      bullets.items().forEach(item -> lines.add("    - " + item));
    } else if (block instanceof ChangeDocument.Numbered numbered) {
      int number = 0;
      for (ChangeDocument.Numbered.Item item : numbered.items()) {
        number++;
        lines.add("    " + number + ". " + item.text());
        item.details().forEach(detail -> lines.add("       - " + detail));
      }
    }
  }

  private static String markdown(Block block) {
    List<String> lines = new ArrayList<>();
    if (block instanceof ChangeDocument.Title title) {
      lines.add("#".repeat(title.level()) + " " + escaped(title.text()));
    } else if (block instanceof ChangeDocument.Paragraph paragraph) {
      lines.add(escaped(paragraph.text()));
    } else if (block instanceof ChangeDocument.Bullets bullets) {
      bullets.items().forEach(item -> lines.add("- " + escaped(item)));
    } else if (block instanceof ChangeDocument.Numbered numbered) {
      int number = 0;
      for (ChangeDocument.Numbered.Item item : numbered.items()) {
        number++;
        lines.add(number + ". " + escaped(item.text()));
        item.details().forEach(detail -> lines.add("    - " + escaped(detail)));
      }
    }
    return String.join("\n", lines);
  }

  /** Names of units must not become markup, links, mentions of people or formulas. */
  private static String escaped(String text) {
    return TextReport.printable(text)
        .replaceAll("[\\\\`*_\\[\\]<>&|#~]", "\\\\$0")
        .replace("$", "<span>$</span>")
        .replaceAll("@(?=\\w)|:(?=//)|(?i)www(?=\\.)", "$0<!-- -->");
  }
}
