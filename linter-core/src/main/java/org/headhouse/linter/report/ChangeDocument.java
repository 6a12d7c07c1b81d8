package org.headhouse.linter.report;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.change.FieldWork;
import org.headhouse.linter.change.PlannedStep;
import org.headhouse.linter.change.SiteChange;
import org.headhouse.linter.materials.Slack;

/** The changes of a site as titles, paragraphs and lists, for every form of text. */
final class ChangeDocument {

  /** The usual cautions of the trade. */
  static final List<String> CAUTIONS =
      List.of(
          "Isolate and lock off the supply before you open a unit.",
          "Keep line voltage and signal wiring apart.",
          "Have wiring done by licensed people, under the local electrical code.",
          "Protect a cable that leaves a building against surge and lightning.",
          "Before you test a storm response, prove that vents and screens can move without hurting"
              + " anyone.",
          "While a unit is without readings, watch the weather: its vents may stay open.",
          "This is a computed plan: it does not replace the code, the makers' manuals or the person"
              + " in charge.");

  /** A part of the document. */
  sealed interface Block {}

  record Title(int level, String text) implements Block {}

  record Paragraph(String text) implements Block {}

  record Bullets(List<String> items) implements Block {}

  /** Items in their order, each with what belongs under it. */
  record Numbered(List<Numbered.Item> items) implements Block {
    record Item(String text, List<String> details) {}
  }

  private final Slack slack;
  private final OpenResults open;
  private final List<Block> blocks = new ArrayList<>();

  private ChangeDocument(Slack slack, OpenResults open) {
    this.slack = slack;
    this.open = open;
  }

  /** The head of the document. */
  static List<Block> head(String compared) {
    return List.of(
        new Title(1, "Changes since " + compared), new Title(2, "Cautions"), new Bullets(CAUTIONS));
  }

  static List<Block> of(SiteChange change, Slack slack, OpenResults open) {
    ChangeDocument document = new ChangeDocument(slack, open);
    document.add(change);
    return document.blocks;
  }

  private void add(SiteChange change) {
    blocks.add(new Title(2, change.site() + " (" + change.file() + ")"));
    if (change instanceof SiteChange.Added added) {
      text("The site is new, with " + units(added.units()) + ".");
      materials(MaterialWords.needed(added.materials(), slack));
    } else if (change instanceof SiteChange.Removed removed) {
      text("The site is gone; it had " + units(removed.units()) + ".");
    } else if (change instanceof SiteChange.Unreadable unreadable) {
      text("Not compared: " + unreadable.reason() + ".");
    } else if (change instanceof SiteChange.Changed changed) {
      changed(changed);
    }
  }

  private static String units(int number) {
    return number + (number == 1 ? " unit" : " units");
  }

  private void changed(SiteChange.Changed changed) {
    if (!changed.earlierFile().equals(changed.file())) {
      text("Compared with " + changed.earlierFile() + ".");
    }
    if (changed.differences().isEmpty()) {
      text("Nothing that is read of the site differs.");
      return;
    }
    blocks.add(new Title(3, "What differs"));
    blocks.add(new Bullets(changed.differences().stream().map(ChangeWords::of).toList()));
    String verdict = open.verdict(changed.file());
    if (verdict != null) {
      blocks.add(new Title(3, "Results of the later state"));
      text(verdict);
      blocks.add(new Bullets(open.lines(changed.file())));
    }
    if (changed.work() instanceof FieldWork.Plan plan && !plan.addressing().isEmpty()) {
      blocks.add(new Title(3, "Two ways of giving addresses"));
      blocks.add(new Bullets(AddressingWords.of(plan.addressing())));
    }
    blocks.add(new Title(3, "Order of the field work"));
    work(changed.work());
    materials(MaterialWords.of(changed.materials(), slack));
    if (!changed.consequences().isEmpty()) {
      blocks.add(new Title(3, "Also to do"));
      blocks.add(
          new Bullets(changed.consequences().stream().map(one -> sentence(one.text())).toList()));
    }
  }

  private void materials(List<String> lines) {
    if (!lines.isEmpty()) {
      blocks.add(new Title(3, "Materials"));
      blocks.add(new Bullets(lines));
    }
  }

  private static String sentence(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1) + ".";
  }

  private void work(FieldWork work) {
    if (work instanceof FieldWork.None none) {
      text("None can be given: " + none.reason() + ".");
    } else if (work instanceof FieldWork.Plan plan) {
      plan.remarks().forEach(this::text);
      if (plan.steps().isEmpty() && plan.remarks().isEmpty()) {
        text("There is nothing to do on the line.");
      } else if (!plan.steps().isEmpty()) {
        blocks.add(new Numbered(plan.steps().stream().map(ChangeDocument::item).toList()));
      }
    }
  }

  private static Numbered.Item item(PlannedStep step) {
    List<String> details = new ArrayList<>(SafeguardWords.first(step));
    details.addAll(StepWords.details(step.work()));
    details.addAll(SafeguardWords.last(step));
    return new Numbered.Item(
        StepWords.of(step.work()) + SafeguardWords.withoutReadings(step), details);
  }

  private void text(String text) {
    blocks.add(new Paragraph(text));
  }
}
