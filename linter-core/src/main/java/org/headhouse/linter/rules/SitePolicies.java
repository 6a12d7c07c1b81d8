package org.headhouse.linter.rules;

import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.figures.TransactionTimes;
import org.headhouse.linter.figures.UsualInterface;
import org.headhouse.linter.line.Tolerances;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rules.address.AddressKeptFree;
import org.headhouse.linter.rules.bias.BiasWeak;
import org.headhouse.linter.rules.commissioning.CommissioningMeasuredOff;
import org.headhouse.linter.rules.conductors.ConductorsGround;
import org.headhouse.linter.rules.outdoor.OutdoorTooOld;
import org.headhouse.linter.rules.signal.SignalDisturbed;
import org.headhouse.linter.rules.signal.SignalWeak;
import org.headhouse.linter.rules.stub.StubTooLong;
import org.headhouse.linter.rules.traffic.TrafficBusy;
import org.headhouse.linter.site.ExcludedAddresses;

/**
 * Collects the parameters that hold beyond the rule that declares them. They hold also where that
 * rule is off.
 */
public final class SitePolicies {
  private SitePolicies() {}

  /** The values of parameters: what the policy says, else the default. */
  @FunctionalInterface
  public interface Values {
    <T> T of(RuleDescriptor rule, Parameter<T> parameter);
  }

  /** The record of some values. */
  public static SitePolicy of(Values values) {
    return new SitePolicy(
        new TransactionTimes(
            values.of(TrafficBusy.DESCRIPTOR, TrafficBusy.TURNAROUND).seconds(),
            values.of(TrafficBusy.DESCRIPTOR, TrafficBusy.PROCESSING).seconds()),
        values.of(TrafficBusy.DESCRIPTOR, TrafficBusy.MOST),
        values.of(OutdoorTooOld.DESCRIPTOR, OutdoorTooOld.LOST),
        new ExcludedAddresses(values.of(AddressKeptFree.DESCRIPTOR, AddressKeptFree.RANGES)),
        values
            .of(ConductorsGround.DESCRIPTOR, ConductorsGround.LANDED)
            .equals(ConductorsGround.EVERY_UNIT),
        values.of(BiasWeak.DESCRIPTOR, BiasWeak.MARGIN).volts(),
        values.of(SignalWeak.DESCRIPTOR, SignalWeak.MARGIN).volts(),
        values.of(CommissioningMeasuredOff.DESCRIPTOR, CommissioningMeasuredOff.TOLERANCE),
        new Tolerances(
            values.of(BiasWeak.DESCRIPTOR, BiasWeak.RESISTORS),
            values.of(BiasWeak.DESCRIPTOR, BiasWeak.SUPPLY),
            values.of(BiasWeak.DESCRIPTOR, BiasWeak.TERMINATORS),
            values.of(BiasWeak.DESCRIPTOR, BiasWeak.CABLE)),
        values.of(StubTooLong.DESCRIPTOR, StubTooLong.VELOCITY_FACTOR),
        new UsualInterface(
            values.of(SignalDisturbed.DESCRIPTOR, SignalDisturbed.RISE_TIME).seconds(),
            values.of(SignalDisturbed.DESCRIPTOR, SignalDisturbed.CAPACITANCE).farads()));
  }
}
