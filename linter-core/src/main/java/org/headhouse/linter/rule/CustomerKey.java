package org.headhouse.linter.rule;

import org.headhouse.linter.stability.Internal;

/** Keys of a {@link RepositoryRule} that only the sites of one customer may not share. */
@Internal
public final class CustomerKey {
  private CustomerKey() {}

  /**
   * The key of a text.
   *
   * @param customer an id, which has no space
   */
  public static String of(String customer, String text) {
    return customer + " " + text;
  }

  /** The text that a key was made of. */
  public static String text(String key) {
    return key.substring(key.indexOf(' ') + 1);
  }
}
