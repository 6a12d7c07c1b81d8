package org.headhouse.linter.draft;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.draft.ValueEdits.Edited;
import org.headhouse.linter.draft.ValueEdits.Wanted;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.source.Utf8;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * Brings a site up to date with a list: what the list says otherwise is changed where it is
 * written, items join, leave and move as whole lines, and all else stays. What a list does not say
 * is left alone, and a record of commissioning is never touched.
 */
@Internal
public final class SiteUpdating {
  private final DeviceTypes types;
  private final SitePolicy policy;
  private final Limits limits;

  public SiteUpdating(DeviceTypes types, SitePolicy policy, Limits limits) {
    this.types = types;
    this.policy = policy;
    this.limits = limits;
  }

  /**
   * What a list changes in a site; whatever the bytes, this returns.
   *
   * @param listPath how the list is called in faults
   * @param sitePath how the site is called in faults
   */
  public SiteUpdate update(String listPath, byte[] list, String sitePath, byte[] site) {
    ListBytes.Read read = ListBytes.read(listPath, list, limits);
    if (read.refused() != null) {
      return new SiteUpdate.Refused(read.refused().faults());
    }
    Faults faults = new Faults(read.source());
    ListedChain chain = ListReader.read(read.source(), Set.of(Column.NAME), types, faults);
    if (!faults.isEmpty()) {
      return new SiteUpdate.Refused(faults.refused().faults());
    }
    Utf8.Decoded decoded = Utf8.decode(sitePath, site);
    SiteFile file =
        decoded instanceof Utf8.Decoded.Text text && site.length <= limits.bytes()
            ? read(text.text())
            : null;
    if (file == null || file.chain() == null) {
      return refused(
          new SourceText(sitePath, ""),
          "the site cannot be read",
          "nobody can tell what the list changes in it",
          "check it first, and correct what the check reports");
    }
    return update(chain, file, site);
  }

  private @Nullable SiteFile read(SourceText source) {
    return SiteFile.of(source, types, limits);
  }

  private static SiteUpdate refused(SourceText source, String fact, String why, String fix) {
    Faults faults = new Faults(source);
    faults.add(Region.START_OF_FILE, fact, why, fix);
    return new SiteUpdate.Refused(faults.refused().faults());
  }

  private SiteUpdate update(ListedChain list, SiteFile file, byte[] before) {
    ItemPairs pairs = ItemPairs.of(file.site(), list, types, limits);
    Edited renamed = ValueEdits.of(file, now -> renames(now, pairs), this::read);
    Edited edited = ValueEdits.of(renamed.file(), now -> values(now, pairs), this::read);
    List<Wanted> left = new ArrayList<>(renamed.left());
    left.addAll(edited.left());
    NewChain chain = new NewChain(list, pairs, edited.file(), policy);
    SiteFile after = edited.file();
    if (chain.differs()) {
      SourceText text = chain.text();
      after = text == null ? null : read(text);
      if (after == null || !names(after).equals(chain.names())) {
        return refused(
            file.source(),
            "the items of the chain cannot be moved as whole lines",
            "the list adds, removes or moves items, and some share a line, or use each other's anchors",
            "write each item on lines of its own, without anchors that others use, and draft again");
      }
    }
    return new SiteUpdate.Made(
        file.site().id().optional().orElse(file.source().path()),
        file.source().path(),
        before.clone(),
        bytes(before, file, after),
        UpdateRemarks.of(file, list, pairs, chain, left));
  }

  private static List<@Nullable String> names(SiteFile file) {
    return ChainItem.names(file.site().items());
  }

  /** A byte order mark stays. */
  private static byte[] bytes(byte[] before, SiteFile file, SiteFile after) {
    byte[] text = after.source().text().getBytes(UTF_8);
    int mark = before.length - file.source().text().getBytes(UTF_8).length;
    byte[] all = Arrays.copyOf(before, mark + text.length);
    System.arraycopy(text, 0, all, mark, text.length);
    return all;
  }

  /** All at once: two may have swapped their names. */
  private static List<Wanted> renames(SiteFile file, ItemPairs pairs) {
    List<Edit> all = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (ChainItem item : file.site().items()) {
      ListedItem row = pairs.rowOf(item.index());
      if (row != null && !item.name().is(row.name())) {
        all.addAll(new ItemEdits(file, item).renamed(row.name()));
        names.add("\"" + row.name() + "\"");
      }
    }
    return ValueEdits.wanted("the name of " + String.join(", ", names), all);
  }

  private static List<Wanted> values(SiteFile file, ItemPairs pairs) {
    List<Wanted> wanted = new ArrayList<>();
    List<ItemPairs.Slot> slots = pairs.slots();
    for (int at = 0; at < slots.size(); at++) {
      ItemPairs.Slot slot = slots.get(at);
      if (slot.joins() || file.isAlias(file.site().items().get(slot.item()))) {
        continue;
      }
      ChainItem item = file.site().items().get(slot.item());
      ItemEdits edits = new ItemEdits(file, item);
      boolean last = at == slots.size() - 1;
      if (last) {
        wanted.addAll(ValueEdits.wanted("the end of the chain", edits.endsTheChain()));
      }
      ListedItem row = pairs.rowOf(slot.item());
      if (row != null) {
        boolean toListed = last || slots.get(at + 1).isListed();
        row.values()
            .forEach(
                (column, value) -> {
                  if (toListed || column != Column.LENGTH) {
                    wanted.addAll(
                        ValueEdits.wanted(
                            column.heading() + " of " + item.called() + ": " + value,
                            edits.set(column, value)));
                  }
                });
      }
    }
    return wanted;
  }
}
