package org.headhouse.linter.site;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * The day of a record.
 *
 * @param day null where a question mark still holds its place
 */
public record RecordDate(@Nullable LocalDate day) {
  /** What a record that nobody has signed yet has in place of a day. */
  public static final String OPEN = "?";
}
