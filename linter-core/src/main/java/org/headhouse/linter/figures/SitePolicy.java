package org.headhouse.linter.figures;

import org.headhouse.linter.line.Levels;
import org.headhouse.linter.line.MeterAccuracy;
import org.headhouse.linter.line.ReadingAge;
import org.headhouse.linter.line.StubLimit;
import org.headhouse.linter.line.Tolerances;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.stability.Internal;

/**
 * The policy for every site of a repository: rules check it, figures are computed with it, sheets
 * and drafts show it.
 *
 * @param times what the traffic is computed with
 * @param mostUtilisation the share of the time that the line may be in use
 * @param lostBroadcasts how many broadcasts in a row may be lost while readings stay young enough
 * @param keptFree the addresses that no unit may have
 * @param groundAtEveryUnit whether ground is landed at every unit, and not at the head unit only
 * @param idleMarginVolts what an idle line must have over the threshold of a receiver
 * @param signalMarginVolts what a received signal must have over the threshold of a receiver
 * @param meterShare how far a meter may be off, as a share of what it shows
 * @param tolerances by how much the parts of a line may differ from what is written on them
 * @param velocityFactor the speed of a signal in a cable that says nothing, as a share of that of
 *     light
 * @param usualInterface what a device has whose type says nothing
 */
public record SitePolicy(
    TransactionTimes times,
    double mostUtilisation,
    int lostBroadcasts,
    ExcludedAddresses keptFree,
    boolean groundAtEveryUnit,
    double idleMarginVolts,
    double signalMarginVolts,
    double meterShare,
    Tolerances tolerances,
    double velocityFactor,
    UsualInterface usualInterface) {
  @Internal
  public SitePolicy {}

  /** The values where the policy gives none (common practice, no source). */
  public static final SitePolicy DEFAULT =
      new SitePolicy(
          TransactionTimes.DEFAULT,
          0.7,
          ReadingAge.USUAL_LOST,
          ExcludedAddresses.NONE,
          false,
          0,
          0,
          MeterAccuracy.HAND_METER_OHMS.shareOfReading(),
          Tolerances.USUAL,
          StubLimit.LEAST_VELOCITY_FACTOR,
          UsualInterface.DEFAULT);

  /** The least idle voltage at any item, at the worst corner of its parts. */
  public double wantedIdleVolts() {
    return Levels.RECEIVER_THRESHOLD_VOLTS + idleMarginVolts;
  }

  /** What resistances are measured with. */
  public MeterAccuracy ohmmeter() {
    return new MeterAccuracy(meterShare, MeterAccuracy.HAND_METER_OHMS.fixed());
  }

  /** What voltages are measured with. */
  public MeterAccuracy voltmeter() {
    return new MeterAccuracy(meterShare, MeterAccuracy.HAND_METER_VOLTS.fixed());
  }

  /** The least voltage that any item receives from any other, at the worst corner. */
  public double wantedSignalVolts() {
    return Levels.RECEIVER_THRESHOLD_VOLTS + signalMarginVolts;
  }
}
