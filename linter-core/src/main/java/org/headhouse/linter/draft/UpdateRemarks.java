package org.headhouse.linter.draft;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.draft.SiteUpdate.Remark;
import org.headhouse.linter.draft.ValueEdits.Wanted;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.CommModule;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.Vents;
import org.headhouse.linter.source.Place;
import org.jspecify.annotations.Nullable;

/** What somebody has to know before the difference is taken. */
final class UpdateRemarks {
  private final SiteFile file;
  private final Site site;
  private final ItemPairs pairs;
  private final List<Remark> remarks = new ArrayList<>();

  private UpdateRemarks(SiteFile file, ItemPairs pairs) {
    this.file = file;
    this.site = file.site();
    this.pairs = pairs;
  }

  /**
   * All remarks, what can hurt first.
   *
   * @param file the site before the list
   * @param left what could not be written
   */
  static List<Remark> of(
      SiteFile file, ListedChain list, ItemPairs pairs, NewChain chain, List<Wanted> left) {
    UpdateRemarks remarks = new UpdateRemarks(file, pairs);
    remarks.removed();
    remarks.renamed();
    remarks.exchanged();
    if (chain.moves()) {
      remarks.warn(
          "The list has the items in another order: see that it is the order of the cable, and that"
              + " each length is that to the item that follows");
    }
    remarks.warnOf(chain.stale(), "The length after ", " was measured to another item; measure it");
    remarks.warnOf(
        chain.lengthsLeft(), "The length after ", " is left: what follows is not in the list");
    left.forEach(
        one ->
            remarks.warn(
                "Not written, since other places share the value or its lines: "
                    + one.what()
                    + "; change it by hand"));
    remarks.noteOf(pairs.leftAlone(), "Not in the list, and left as they are: ");
    if (!list.unread().isEmpty()) {
      remarks.note(
          "Columns of the list that were not read: "
              + list.unread().stream().map(YamlScalar::of).collect(joining(", ")));
    }
    return List.copyOf(remarks.remarks);
  }

  private void removed() {
    boolean live = site.wasCommissioned();
    ChainBlocks blocks = pairs.removed().isEmpty() ? null : ChainBlocks.of(file);
    for (ChainItem item : pairs.removed()) {
      warn(
          item.called()
              + described(item)
              + " is not in the list, and the difference removes it"
              + (blocks != null && blocks.hasComment(item.index())
                  ? " with the comment above it"
                  : "")
              + (live
                  ? ". It is on the live line: isolate the supply and take it off before you take"
                      + " the difference"
                  : ""));
    }
  }

  private static String described(ChainItem item) {
    List<String> parts = new ArrayList<>();
    parts.add(item.kind().word());
    item.address().optional().ifPresent(address -> parts.add("address " + address));
    if (item instanceof Unit unit) {
      Vents vents = unit.vents().orNull();
      if (vents != null && vents != Vents.NONE) {
        parts.add("vents: " + vents.word());
      }
      if (unit.commModule().is(CommModule.ABSENT)) {
        parts.add("no communication module");
      }
    }
    return parts.stream().collect(joining(", ", " (", ")"));
  }

  private void renamed() {
    for (ChainItem item : site.items()) {
      ListedItem row = pairs.rowOf(item.index());
      String old = item.name().orNull();
      if (row == null || old == null || old.equals(row.name())) {
        continue;
      }
      String names = "\"" + old + "\" is \"" + row.name() + "\" in the list";
      if (site.references(old).stream().anyMatch(this::isProof)) {
        warn(
            names
                + "; its record and its suppressions keep the old name: change them where it is the"
                + " same unit, and prove it again where it is another");
      } else {
        note(names);
      }
    }
  }

  /** What the list does not say of the new device is still that of the old one. */
  private void exchanged() {
    for (ChainItem item : site.items()) {
      ListedItem row = pairs.rowOf(item.index());
      if (row != null
          && (isOther(item.deviceType(), row.value(Column.TYPE))
              || isOther(item.device().serialNumber(), row.value(Column.SERIAL)))) {
        warn(
            item.called()
                + " is another device in the list; all that the list does not say of it is that of"
                + " the old one: compare it with the new one, and prove it again");
      }
    }
  }

  private static boolean isOther(Setting<String> setting, @Nullable String listed) {
    return listed != null && setting.isGiven() && !setting.is(listed);
  }

  private boolean isProof(Place place) {
    return file.isUnder(place.region(), "commissioning", "suppressions");
  }

  private void warnOf(List<ChainItem> items, String before, String after) {
    if (!items.isEmpty()) {
      warn(before + called(items) + after);
    }
  }

  private void noteOf(List<ChainItem> items, String before) {
    if (!items.isEmpty()) {
      note(before + called(items));
    }
  }

  private static String called(List<ChainItem> items) {
    return items.stream().map(ChainItem::called).collect(joining(", "));
  }

  private void warn(String text) {
    remarks.add(new Remark(Level.WARNING, text));
  }

  private void note(String text) {
    remarks.add(new Remark(Level.NOTE, text));
  }
}
