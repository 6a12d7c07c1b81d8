package org.headhouse.linter.rule;

import java.util.Optional;
import org.headhouse.linter.site.AddressRange;
import org.headhouse.linter.site.BusAddress;

/** Addresses from one to another that units can do without. */
final class AddressType implements ParameterType<AddressRange> {
  @Override
  public Optional<AddressRange> parse(String written) {
    return Optional.ofNullable(AddressRange.of(written.strip()))
        .filter(range -> range.from() > BusAddress.HEAD && range.to() <= BusAddress.SETTABLE.to());
  }

  @Override
  public String describe() {
    return "an address or a range of addresses from 2 to "
        + BusAddress.SETTABLE.to()
        + ", such as 100-109";
  }

  @Override
  public String whyNot(String written) {
    AddressRange range = AddressRange.of(written.strip());
    return range != null && range.contains(BusAddress.HEAD)
        ? "address 1 is that of the head unit"
        : ParameterType.super.whyNot(written);
  }

  @Override
  public Optional<String> remedy(String written) {
    AddressRange range = AddressRange.of(written.strip());
    if (range != null && range.contains(BusAddress.HEAD) && range.to() > BusAddress.HEAD) {
      return Optional.of("start with 2");
    }
    return turned(written)
        .map(right -> "write " + right)
        .or(() -> Optional.of("write for example 100-109"));
  }

  /** A range whose higher end was written first. */
  private Optional<String> turned(String written) {
    String[] ends = written.split("-", -1);
    return ends.length == 2
        ? Optional.of(ends[1].strip() + "-" + ends[0].strip())
            .filter(range -> parse(range).isPresent())
        : Optional.empty();
  }
}
