package org.headhouse.linter.proof;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Measured;
import org.headhouse.linter.site.MeasuredAt;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.StormResponse;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.source.SpellingSuggester;
import org.jspecify.annotations.Nullable;

/**
 * What records prove, whatever the values are. A name that is misspelt is reported where it stands,
 * and counts as the one that it is nearly spelt like; so does a value that is not understood.
 */
public final class GivenProofs {
  private final Site site;
  private final Map<String, ChainItem> items = new LinkedHashMap<>();
  private final Function<String, Optional<String>> nowCalled;
  private final Set<Proof> given = new LinkedHashSet<>();
  private @Nullable SpellingSuggester nearest;

  private GivenProofs(Site site, Function<String, Optional<String>> nowCalled) {
    this.site = site;
    this.nowCalled = nowCalled;
    for (ChainItem item : site.items()) {
      item.name().optional().ifPresent(name -> items.putIfAbsent(name, item));
    }
  }

  /** All that some records of a site prove. */
  public static Set<Proof> of(Site site, Collection<ProvingRecord> records) {
    return of(site, records, name -> Optional.empty());
  }

  /**
   * The same where items may have been renamed since.
   *
   * @param nowCalled what an item is certain to be called now, by a name that no item has
   */
  public static Set<Proof> of(
      Site site, Collection<ProvingRecord> records, Function<String, Optional<String>> nowCalled) {
    GivenProofs proofs = new GivenProofs(site, nowCalled);
    records.forEach(proofs::add);
    return proofs.given;
  }

  private void add(ProvingRecord one) {
    seen(Proof.Kind.READINGS, one.outdoorReadingsSeen());
    seen(Proof.Kind.STALE_RESPONSE, one.staleResponseSeen());
    for (Setting<StormResponse> storm : one.stormResponseSeen().or(List.of())) {
      storm.optional().ifPresent(it -> seenAt(Proof.Kind.STORM_RESPONSE, it.unit()));
    }
    Measured measured = one.measured().orNull();
    if (measured != null) {
      measured(measured);
    }
  }

  private void seen(Proof.Kind kind, Setting<List<Setting<String>>> names) {
    names.or(List.of()).forEach(name -> seenAt(kind, name));
  }

  private void seenAt(Proof.Kind kind, Setting<String> written) {
    String name = meant(written);
    if (name != null) {
      given.add(Proof.seen(kind, name));
    }
  }

  private void measured(Measured measured) {
    Unit head = site.head();
    String name = head == null ? null : head.name().orNull();
    if (name != null) {
      measured(name, null, measured.pairResistance(), measured.idleVoltage());
    }
    for (Setting<MeasuredAt> one : measured.elsewhere().or(List.of())) {
      MeasuredAt place = one.orNull();
      String at = place == null ? null : meant(place.at());
      if (place != null && at != null) {
        // As for bias: at a repeater, the side away from the head unit where none is written.
        Side side = items.get(at) instanceof Repeater ? place.side().or(Side.OUT) : null;
        measured(at, side, place.pairResistance(), place.idleVoltage());
      }
    }
  }

  private void measured(String at, @Nullable Side side, Setting<?> resistance, Setting<?> voltage) {
    if (!resistance.isMissing()) {
      given.add(new Proof(Proof.Kind.PAIR_RESISTANCE, at, side));
    }
    if (!voltage.isMissing()) {
      given.add(new Proof(Proof.Kind.IDLE_VOLTAGE, at, side));
    }
  }

  private @Nullable String meant(Setting<String> written) {
    String name = written.orNull();
    if (name == null || items.containsKey(name)) {
      return name;
    }
    Optional<String> now = nowCalled.apply(name);
    if (now.isPresent()) {
      return now.get();
    }
    SpellingSuggester suggester = nearest;
    if (suggester == null) {
      suggester = new SpellingSuggester(items.keySet());
      nearest = suggester;
    }
    return suggester.suggest(name).orElse(null);
  }
}
