package org.headhouse.linter.rules;

import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.rule.Rule;
import org.headhouse.linter.rules.address.AddressBeyondLimit;
import org.headhouse.linter.rules.address.AddressDuplicate;
import org.headhouse.linter.rules.address.AddressGap;
import org.headhouse.linter.rules.address.AddressKeptFree;
import org.headhouse.linter.rules.address.AddressOrder;
import org.headhouse.linter.rules.address.AddressReserved;
import org.headhouse.linter.rules.bias.BiasMissing;
import org.headhouse.linter.rules.bias.BiasOutOfRange;
import org.headhouse.linter.rules.bias.BiasSeveral;
import org.headhouse.linter.rules.bias.BiasSupply;
import org.headhouse.linter.rules.bias.BiasWeak;
import org.headhouse.linter.rules.cable.CableBeyondEnd;
import org.headhouse.linter.rules.cable.CableLengthUnknown;
import org.headhouse.linter.rules.cable.CableTooLong;
import org.headhouse.linter.rules.cable.CableTooThin;
import org.headhouse.linter.rules.cable.CableUnshielded;
import org.headhouse.linter.rules.change.ChangeCommissionedReaddressed;
import org.headhouse.linter.rules.change.ChangeCommissionedRemoved;
import org.headhouse.linter.rules.change.ChangeRecordKept;
import org.headhouse.linter.rules.commissioning.CommissioningDate;
import org.headhouse.linter.rules.commissioning.CommissioningMeasuredOff;
import org.headhouse.linter.rules.commissioning.CommissioningMeterExpired;
import org.headhouse.linter.rules.commissioning.CommissioningMissing;
import org.headhouse.linter.rules.commissioning.CommissioningPlaceholder;
import org.headhouse.linter.rules.commissioning.CommissioningResponseUnseen;
import org.headhouse.linter.rules.commissioning.CommissioningRetestDue;
import org.headhouse.linter.rules.commissioning.CommissioningSameReadings;
import org.headhouse.linter.rules.commissioning.CommissioningUnitUnseen;
import org.headhouse.linter.rules.commissioning.CommissioningUnmeasured;
import org.headhouse.linter.rules.conductors.ConductorsCommon;
import org.headhouse.linter.rules.conductors.ConductorsGround;
import org.headhouse.linter.rules.conductors.ConductorsPairMissing;
import org.headhouse.linter.rules.conductors.ConductorsPolarity;
import org.headhouse.linter.rules.driver.DriverOverloaded;
import org.headhouse.linter.rules.equipment.EquipmentBroadcast;
import org.headhouse.linter.rules.firmware.FirmwareMixed;
import org.headhouse.linter.rules.head.HeadAddress;
import org.headhouse.linter.rules.head.HeadDuplicate;
import org.headhouse.linter.rules.head.HeadMissing;
import org.headhouse.linter.rules.head.HeadNotFirst;
import org.headhouse.linter.rules.module.ModuleAbsent;
import org.headhouse.linter.rules.name.NameConfusable;
import org.headhouse.linter.rules.name.NameDuplicate;
import org.headhouse.linter.rules.name.NamePattern;
import org.headhouse.linter.rules.name.NamePlaceholder;
import org.headhouse.linter.rules.name.NameTooLong;
import org.headhouse.linter.rules.name.NameUnreadable;
import org.headhouse.linter.rules.network.NetworkBadAddress;
import org.headhouse.linter.rules.network.NetworkDuplicateIp;
import org.headhouse.linter.rules.network.NetworkOutsideSubnet;
import org.headhouse.linter.rules.network.NetworkUnsupported;
import org.headhouse.linter.rules.outdoor.OutdoorAgeUnknown;
import org.headhouse.linter.rules.outdoor.OutdoorClosesTooLate;
import org.headhouse.linter.rules.outdoor.OutdoorHeadNotLocal;
import org.headhouse.linter.rules.outdoor.OutdoorNotFromHead;
import org.headhouse.linter.rules.outdoor.OutdoorNotMeasured;
import org.headhouse.linter.rules.outdoor.OutdoorStaleTime;
import org.headhouse.linter.rules.outdoor.OutdoorTooOld;
import org.headhouse.linter.rules.outdoor.OutdoorUnsafeFallback;
import org.headhouse.linter.rules.reference.ReferenceUnknown;
import org.headhouse.linter.rules.run.RunNotIsolated;
import org.headhouse.linter.rules.run.RunUnprotected;
import org.headhouse.linter.rules.segment.SegmentOverloaded;
import org.headhouse.linter.rules.serial.SerialFraming;
import org.headhouse.linter.rules.serial.SerialUnsupported;
import org.headhouse.linter.rules.signal.SignalWeak;
import org.headhouse.linter.rules.site.SiteDuplicateId;
import org.headhouse.linter.rules.site.SiteFileName;
import org.headhouse.linter.rules.station.StationNotAtHead;
import org.headhouse.linter.rules.stub.StubTooLong;
import org.headhouse.linter.rules.supervision.SupervisionTimeoutShort;
import org.headhouse.linter.rules.supervision.SupervisionUnreachable;
import org.headhouse.linter.rules.supervision.SupervisionZoneDuplicate;
import org.headhouse.linter.rules.supervision.SupervisionZoneMissing;
import org.headhouse.linter.rules.supervision.SupervisionZoneUnknown;
import org.headhouse.linter.rules.termination.TerminationMidLine;
import org.headhouse.linter.rules.termination.TerminationMismatch;
import org.headhouse.linter.rules.termination.TerminationMissingAtEnd;
import org.headhouse.linter.rules.termination.TerminationUndeclared;
import org.headhouse.linter.rules.traffic.TrafficBusy;
import org.headhouse.linter.rules.traffic.TrafficOverrun;
import org.headhouse.linter.rules.traffic.TrafficTwoClients;

/** The list of all built-in rules, in the order of the reference. */
public final class BuiltInRules {
  private static final List<Rule> ON_SITES =
      List.of(
          new HeadMissing(),
          new HeadDuplicate(),
          new HeadNotFirst(),
          new HeadAddress(),
          new AddressDuplicate(),
          new AddressGap(),
          new AddressOrder(),
          new AddressReserved(),
          new AddressBeyondLimit(),
          new AddressKeptFree(),
          new NameDuplicate(),
          new NameConfusable(),
          new NameTooLong(),
          new NameUnreadable(),
          new NamePlaceholder(),
          new NamePattern(),
          new ModuleAbsent(),
          new StationNotAtHead(),
          new OutdoorNotFromHead(),
          new OutdoorHeadNotLocal(),
          new OutdoorNotMeasured(),
          new OutdoorTooOld(),
          new OutdoorAgeUnknown(),
          new OutdoorClosesTooLate(),
          new OutdoorStaleTime(),
          new OutdoorUnsafeFallback(),
          new TerminationUndeclared(),
          new TerminationMissingAtEnd(),
          new TerminationMidLine(),
          new TerminationMismatch(),
          new ConductorsPairMissing(),
          new ConductorsGround(),
          new ConductorsCommon(),
          new ConductorsPolarity(),
          new CableUnshielded(),
          new CableTooThin(),
          new CableLengthUnknown(),
          new CableBeyondEnd(),
          new CableTooLong(),
          new StubTooLong(),
          new SegmentOverloaded(),
          new DriverOverloaded(),
          new BiasMissing(),
          new BiasSeveral(),
          new BiasOutOfRange(),
          new BiasWeak(),
          new BiasSupply(),
          new SignalWeak(),
          new SerialFraming(),
          new SerialUnsupported(),
          new TrafficOverrun(),
          new TrafficBusy(),
          new TrafficTwoClients(),
          new EquipmentBroadcast(),
          new RunUnprotected(),
          new RunNotIsolated(),
          new SupervisionZoneMissing(),
          new SupervisionZoneUnknown(),
          new SupervisionZoneDuplicate(),
          new SupervisionUnreachable(),
          new SupervisionTimeoutShort(),
          new NetworkBadAddress(),
          new NetworkDuplicateIp(),
          new NetworkOutsideSubnet(),
          new NetworkUnsupported(),
          new FirmwareMixed(),
          new ReferenceUnknown(),
          new CommissioningMissing(),
          new CommissioningPlaceholder(),
          new CommissioningUnitUnseen(),
          new CommissioningResponseUnseen(),
          new CommissioningUnmeasured(),
          new CommissioningMeasuredOff(),
          new CommissioningMeterExpired(),
          new CommissioningDate(),
          new CommissioningRetestDue(),
          new CommissioningSameReadings(),
          new ChangeCommissionedReaddressed(),
          new ChangeCommissionedRemoved(),
          new ChangeRecordKept(),
          new SiteFileName(),
          new SiteDuplicateId());

  private static final List<Rule> ALL =
      Stream.of(EngineRules.OF_READING, ON_SITES, EngineRules.OF_SUPPRESSIONS)
          .flatMap(List::stream)
          .toList();

  private BuiltInRules() {}

  /** All built-in rules. */
  public static List<Rule> all() {
    return ALL;
  }
}
