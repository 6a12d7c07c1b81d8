package org.headhouse.linter.fuzz;

import java.io.IOException;
import org.headhouse.linter.fix.MendingProperty;
import org.headhouse.linter.result.FixKind;

/** Mending does no harm; the sites are faulty ones that the input chooses, or the input itself. */
final class FixProperty implements Property {
  private final MendingProperty mending;
  private final boolean generated;

  FixProperty(boolean generated) throws IOException {
    this.mending = new MendingProperty(CheckProperty.linter(1));
    this.generated = generated;
  }

  @Override
  public void tryWith(byte[] input) {
    byte[] site = generated ? MendingProperty.faultySite(new Choices(input)) : input;
    mending.tryWith(site, input.length % 2 == 0 ? FixKind.SAFE : FixKind.PROPOSED);
  }
}
