package org.headhouse.linter.fuzz;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;

/** A day that does not pass, so that an input that was kept stays what it was. */
final class Today {
  static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T00:00:00Z"), ZoneOffset.UTC);

  private Today() {}
}
