package org.headhouse.linter.check;

import java.io.Serializable;
import java.util.List;
import java.util.function.Supplier;
import org.headhouse.linter.result.Identity;
import org.headhouse.linter.result.Location;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.result.Suppression;
import org.jspecify.annotations.Nullable;

/**
 * The outcome of the check of one file.
 *
 * @param keys what rules over all sites keep of it
 * @param units how many units its chain has
 * @param site the id of the site, or null where it has none or none is needed
 * @param isStranger whether it was compared with an earlier state in which it was not found
 */
public record FileOutcome(
    List<Result> results,
    List<Notification> notifications,
    List<Key> keys,
    int units,
    @Nullable String site,
    boolean isStranger)
    implements Serializable {

  public FileOutcome {
    results = List.copyOf(results);
    notifications = List.copyOf(notifications);
    keys = List.copyOf(keys);
  }

  /** An outcome without an earlier state. */
  public FileOutcome(
      List<Result> results, List<Notification> notifications, List<Key> keys, int units) {
    this(results, notifications, keys, units, null, false);
  }

  /** The same outcome with nothing left to be found, so that it can go to another process. */
  public FileOutcome complete() {
    return new FileOutcome(
        results,
        notifications.stream().map(Notification::withoutCause).toList(),
        keys.stream().map(Key::complete).toList(),
        units,
        site,
        isStranger);
  }

  /**
   * A text that a rule allows in one file only.
   *
   * @param site the id of the site, or null where the file does not say
   * @param suppression what suppresses a result here, or null
   * @param identity finds what makes a result here the same one later; few keys are ever shared, so
   *     it is not looked for before that
   */
  public record Key(
      String rule,
      String text,
      Location location,
      @Nullable String site,
      @Nullable Suppression suppression,
      Supplier<Identity> identity)
      implements Serializable {

    Key complete() {
      return new Key(rule, text, location, site, suppression, new Found(identity.get()));
    }
  }

  private record Found(Identity get) implements Supplier<Identity>, Serializable {}
}
