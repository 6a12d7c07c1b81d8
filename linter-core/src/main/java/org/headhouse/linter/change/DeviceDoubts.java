package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.headhouse.linter.proof.Proof;
import org.headhouse.linter.proof.ProofWords;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/**
 * Says what a plan takes for one device, or for two, where the file alone cannot show it. A device
 * that is set while another answers at its address, or that is never proved, can hurt somebody: so
 * people are asked.
 */
final class DeviceDoubts {
  private DeviceDoubts() {}

  /** A few sentences for each doubt. */
  static List<String> remarks(Site before, Site after, ChainStates chains) {
    List<String> remarks = new ArrayList<>();
    for (TrackedItem item : chains.all().items()) {
      if (isRenamed(item)) {
        remarks.add(renamed(item));
      }
      TrackedItem leaving = item.before() == null ? leftAddressOf(item, chains) : null;
      if (leaving != null) {
        remarks.add(joins(item, leaving));
      }
    }
    List<TrackedItem> numbered = before.wasCommissioned() ? numbered(chains) : List.of();
    if (!numbered.isEmpty()) {
      remarks.add(numbered(numbered, after));
    }
    return remarks;
  }

  /** Whether nothing but its place, and perhaps its address, shows that it is the same device. */
  private static boolean isRenamed(TrackedItem item) {
    ChainItem was = item.before();
    ChainItem is = item.after();
    return was != null
        && is != null
        && (TrackedItem.isLive(was) || TrackedItem.isLive(is))
        && SettingComparison.differ(was.name(), is.name())
        && !(was.device().serialNumber().isGiven()
            && is.device().serialNumber().is(was.device().serialNumber().or("")));
  }

  private static String renamed(TrackedItem item) {
    String from = quoted(item.before() == null ? "" : item.before().name().or(""));
    String to = quoted(item.name());
    return to
        + " is taken for the device that was called "
        + from
        + ", since it has its place. If it is another device, do not work in this order: plan two"
        + " changes, first without "
        + from
        + ", then with "
        + to
        + ".";
  }

  /**
   * A device that leaves, of the same kind and address; it has another name, or there is no plan.
   */
  private static @Nullable TrackedItem leftAddressOf(TrackedItem joining, ChainStates chains) {
    ChainItem is = joining.after();
    Integer address = is == null ? null : is.address().orNull();
    if (is == null || address == null) {
      return null;
    }
    return chains.before().items().stream()
        .filter(item -> item.after() == null && item.liveBefore())
        .filter(item -> item.latest().kind() == is.kind())
        .filter(item -> item.latest().address().is(address))
        .filter(item -> !TrackedItem.isAnotherDevice(item.latest(), is))
        .findFirst()
        .orElse(null);
  }

  private static String joins(TrackedItem joining, TrackedItem leaving) {
    return quoted(joining.name())
        + " is taken for a new device, though it has the address of "
        + quoted(leaving.name())
        + ", which leaves. If it is the same device, moved, plan two changes: first the new name,"
        + " then the new place.";
  }

  /** The devices of a line in operation whose serial number the earlier state does not have. */
  private static List<TrackedItem> numbered(ChainStates chains) {
    List<TrackedItem> numbered = new ArrayList<>();
    for (TrackedItem item : chains.after().items()) {
      if (item.before() != null
          && item.after() != null
          && !item.isExchanged()
          && item.before().device().serialNumber().isMissing()
          && item.after().device().serialNumber().isGiven()) {
        numbered.add(item);
      }
    }
    return numbered;
  }

  private static String numbered(List<TrackedItem> items, Site after) {
    boolean one = items.size() == 1;
    List<Difference> exchanged = new ArrayList<>();
    for (TrackedItem item : items) {
      exchanged.add(new Difference.Exchanged(item.name(), item.latest().kind(), List.of()));
    }
    List<Proof> due = DueProofs.of(after, exchanged);
    return items.stream().map(item -> quoted(item.name())).collect(Collectors.joining(", "))
        + (one
            ? ": its serial number is entered for the first time, so nothing shows whether the device"
                + " is another. If it was exchanged: before the pair of the new one is landed, set"
            : ": their serial numbers are entered for the first time, so nothing shows whether the"
                + " devices are others. Of each that was exchanged: before the pair of the new one is"
                + " landed, set")
        + " it as the file"
        + (items.stream().allMatch(item -> item.latest() instanceof Unit)
            ? " and its set-up card say"
            : " says")
        + (one ? address(items.get(0)) : "")
        + (due.isEmpty()
            ? "."
            : "; prove again "
                + ProofWords.of(due)
                + "; and add it to renewed in the record of commissioning.");
  }

  private static String address(TrackedItem item) {
    return item.latest().address().optional().map(it -> ", with address " + it).orElse("");
  }

  private static String quoted(String name) {
    return "\"" + name + "\"";
  }
}
