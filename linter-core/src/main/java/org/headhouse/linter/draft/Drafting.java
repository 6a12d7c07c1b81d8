package org.headhouse.linter.draft;

import java.util.Set;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.source.Utf8;
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
    if (bytes.length > limits.bytes()) {
      Faults faults = new Faults(new SourceText(path, ""));
      faults.add(
          Region.START_OF_FILE,
          "the file is larger than " + limits.bytes() + " bytes",
          "no list of units is as long, and the file is not read",
          "write one row for each unit of one line");
      return faults.refused();
    }
    Utf8.Decoded decoded = Utf8.decode(path, bytes);
    return decoded instanceof Utf8.Decoded.Malformed malformed
        ? notUtf8(malformed)
        : draft(((Utf8.Decoded.Text) decoded).text());
  }

  private static Draft notUtf8(Utf8.Decoded.Malformed malformed) {
    Faults faults = new Faults(malformed.readable());
    faults.add(
        malformed.region(),
        "byte "
            + malformed.offset()
            + " (hexadecimal "
            + Integer.toHexString(malformed.value())
            + ") is not UTF-8",
        "letters with accents would come out wrong, and the file is not read",
        "save the list as CSV in UTF-8");
    return faults.refused();
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
