package org.headhouse.linter.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.figures.TransactionTimes;
import org.headhouse.linter.figures.UsualInterface;
import org.headhouse.linter.line.Tolerances;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.site.AddressRange;
import org.headhouse.linter.site.ExcludedAddresses;
import org.junit.jupiter.api.Test;

/**
 * What the parameters of single rules say of every site. The defaults: common practice, no source.
 */
class SitePoliciesTest {

  @Test
  void theDefaultsAreThoseOfTheRules() {
    SitePolicies.Values defaults =
        new SitePolicies.Values() {
          @Override
          public <T> T of(RuleDescriptor rule, Parameter<T> parameter) {
            return parameter.defaultValue();
          }
        };
    assertThat(SitePolicies.of(defaults)).isEqualTo(SitePolicy.DEFAULT);
  }

  @Test
  void eachParameterHasItsPlace() {
    SitePolicies.Values values =
        new SitePolicies.Values() {
          @Override
          public <T> T of(RuleDescriptor rule, Parameter<T> parameter) {
            assertThat(rule.parameters()).contains(parameter);
            String written =
                switch (rule.id() + " " + parameter.name()) {
                  case "traffic.busy turnaround" -> "200 ms";
                  case "traffic.busy processing" -> "50 ms";
                  case "traffic.busy most" -> "60 %";
                  case "outdoor.too-old lost" -> "2";
                  case "address.kept-free ranges" -> "100-109";
                  case "conductors.ground landed" -> "every-unit";
                  case "bias.weak margin" -> "30 mV";
                  case "bias.weak resistors" -> "1 %";
                  case "bias.weak supply" -> "4 %";
                  case "bias.weak terminators" -> "2 %";
                  case "bias.weak cable" -> "3 %";
                  case "stub.too-long velocity-factor" -> "0.7";
                  case "signal.disturbed rise-time" -> "12 ns";
                  case "signal.disturbed capacitance" -> "20 pF";
                  case "signal.weak margin" -> "150 mV";
                  case "commissioning.measured-off tolerance" -> "5 %";
                  default -> throw new AssertionError(rule.id() + " " + parameter.name());
                };
            return parameter.type().parse(written).orElseThrow();
          }
        };
    SitePolicy policy = SitePolicies.of(values);
    assertThat(policy)
        .isEqualTo(
            new SitePolicy(
                new TransactionTimes(0.2, 0.05),
                0.6,
                2,
                new ExcludedAddresses(List.of(new AddressRange(100, 109))),
                true,
                0.03,
                0.15,
                0.05,
                new Tolerances(0.01, 0.04, 0.02, 0.03),
                0.7,
                new UsualInterface(12e-9, 20e-12)));
    assertThat(policy.wantedIdleVolts()).isEqualTo(0.2 + 0.03);
    assertThat(policy.wantedSignalVolts()).isEqualTo(0.2 + 0.15);
  }
}
