package org.headhouse.linter.report;

import java.util.List;
import java.util.stream.Collectors;
import org.headhouse.linter.change.Difference;
import org.headhouse.linter.change.ValueChange;
import org.headhouse.linter.site.ItemKind;
import org.jspecify.annotations.Nullable;

/** Puts the differences between two states of a site into sentences. */
final class ChangeWords {
  private ChangeWords() {}

  static String of(Difference difference) {
    if (difference instanceof Difference.Added added) {
      return item(added.kind(), added.item())
          + " is new, "
          + (added.previous() == null
              ? "at the start of the chain"
              : "after " + quoted(added.previous()));
    }
    if (difference instanceof Difference.Removed removed) {
      return item(removed.kind(), removed.item())
          + " is gone; it was "
          + (removed.previous() == null
              ? "at the start of the chain"
              : "after " + quoted(removed.previous()));
    }
    if (difference instanceof Difference.Exchanged exchanged) {
      return item(exchanged.kind(), exchanged.item()) + " is exchanged: " + set(exchanged.device());
    }
    if (difference instanceof Difference.Renamed renamed) {
      return quoted(renamed.item()) + " was called " + quoted(renamed.from());
    }
    if (difference instanceof Difference.Readdressed moved) {
      return quoted(moved.item()) + ": address from " + moved.from() + " to " + moved.to();
    }
    return change(difference);
  }

  private static String change(Difference difference) {
    if (difference instanceof Difference.RoleChanged one) {
      return at(one.item(), one.role());
    }
    if (difference instanceof Difference.Rewired one) {
      return at(one.item(), one.wiring());
    }
    if (difference instanceof Difference.Terminated one) {
      return at(one.item(), one.termination());
    }
    if (difference instanceof Difference.Rebiased one) {
      return at(one.item(), one.bias());
    }
    if (difference instanceof Difference.Resourced one) {
      return at(one.item(), one.source());
    }
    if (difference instanceof Difference.ItemSet one) {
      return at(one.item(), one.setting());
    }
    if (difference instanceof Difference.TypeSet one) {
      return "the device type " + quoted(one.type()) + ": " + of(one.setting());
    }
    if (difference instanceof Difference.LineSet one) {
      return "the line: " + of(one.setting());
    }
    return "the site: " + of(((Difference.SiteSet) difference).setting());
  }

  private static String at(String item, ValueChange change) {
    return quoted(item) + ": " + of(change);
  }

  /** {@code baud from 9600 to 19200}. */
  static String of(ValueChange change) {
    return change.what() + " from " + value(change.from()) + " to " + value(change.to());
  }

  private static String value(@Nullable String value) {
    return value == null ? "nothing" : value;
  }

  /** {@code baud from 9600 to 19200, vents: roof}. */
  static String set(List<ValueChange> changes) {
    return changes.stream().map(ChangeWords::setOne).collect(Collectors.joining(", "));
  }

  private static String setOne(ValueChange change) {
    if (change.to() == null) {
      return "no " + change.what() + " any more (was " + change.from() + ")";
    }
    return change.from() == null
        ? change.what() + ": " + change.to()
        : change.what() + " from " + change.from() + " to " + change.to();
  }

  private static String item(ItemKind kind, String name) {
    return kind == ItemKind.UNIT ? quoted(name) : "the " + kind.word() + " " + quoted(name);
  }

  static String quoted(String name) {
    return "\"" + name + "\"";
  }

  static String quoted(List<String> names) {
    return names.stream().map(ChangeWords::quoted).collect(Collectors.joining(", "));
  }
}
