package org.headhouse.linter.draft;

import java.util.Set;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.stability.Internal;

/** From the bytes of a list to the text of a site. */
@Internal
public final class Drafting {
  private final DraftSettings settings;
  private final DeviceTypes types;
  private final SitePolicy policy;
  private final Limits limits;

  public Drafting(DraftSettings settings, DeviceTypes types, SitePolicy policy, Limits limits) {
    this.settings = settings;
    this.types = types;
    this.policy = policy;
    this.limits = limits;
  }

  /**
   * Makes a site of a list; whatever the bytes, this returns.
   *
   * @param path how the list is called in faults
   */
  public Draft draft(String path, byte[] bytes) {
    ListBytes.Read read = ListBytes.read(path, bytes, limits);
    return read.refused() == null ? draft(read.source()) : read.refused();
  }

  private Draft draft(SourceText source) {
    Faults faults = new Faults(source);
    ListedChain list = ListReader.read(source, Set.of(Column.NAME, Column.LENGTH), types, faults);
    ListedChain addressed = Addresses.of(list, policy.keptFree(), faults);
    return faults.isEmpty()
        ? new Draft.Made(SiteWriter.text(addressed, !list.hasAddresses(), settings, policy))
        : faults.refused();
  }
}
