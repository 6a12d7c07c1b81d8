package org.headhouse.linter.fuzz;

import java.io.IOException;
import java.util.Optional;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.ContractExample;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.check.RuleCatalogue;
import org.headhouse.linter.policy.Policy;
import org.headhouse.linter.policy.PolicyReader;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rules.BuiltInRules;
import org.headhouse.linter.schema.FileKind;
import org.headhouse.linter.schema.SchemaCheck;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.Utf8;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.YamlReader;
import org.jspecify.annotations.Nullable;

/**
 * What the schema has against a policy is told; of a policy of which nothing is told, all that is
 * written has its effect; and no policy makes a rule fail.
 */
final class PolicyProperty implements Property {
  private static final String FILE = "linter.yaml";

  private final SchemaCheck schema = new SchemaCheck(FileKind.POLICY);
  private final RuleCatalogue rules = new RuleCatalogue(BuiltInRules.all());

  @Override
  public void tryWith(byte[] input) throws IOException {
    CheckReport report =
        SiteLinter.builder()
            .policy(new SiteInput(FILE, most -> input))
            .withoutBaseline()
            .clock(Today.CLOCK)
            .build()
            .checkText("alder-brook.yaml", ContractExample.SITE);
    Told.noTrouble(report.notifications());
    new Told(FILE, input).results(report.results());
    boolean told =
        report.results().stream().anyMatch(result -> result.location().file().equals(FILE));
    Cursor root = root(input);
    if (root != null && !told) {
      Demand.that(schema.explain(root.node()).isEmpty(), "what the schema refuses is not told");
      effects(root);
    }
  }

  private static @Nullable Cursor root(byte[] input) {
    if (Utf8.decode(FILE, input) instanceof Utf8.Decoded.Text decoded) {
      var root = new YamlReader(Limits.DEFAULT).read(decoded.text()).root();
      return root == null ? null : new Cursor(root, null);
    }
    return null;
  }

  private void effects(Cursor root) {
    Policy policy = new PolicyReader(rules.descriptors()).read(root);
    Cursor written = root.get("rules");
    if (written == null || !(written.node() instanceof Mapping mapping)) {
      return;
    }
    for (Mapping.Entry entry : mapping.entries()) {
      RuleDescriptor rule = rule(entry.key().text());
      Cursor value = written.valueOf(entry);
      String level = text(value.get("level"));
      Demand.that(
          level == null || policy.level(rule).word().equals(level), "the level of %s", rule.id());
      for (Parameter<?> parameter : rule.parameters()) {
        Cursor parameters = value.get("parameters");
        effect(
            policy, rule, parameter, parameters == null ? null : parameters.get(parameter.name()));
      }
    }
  }

  private static void effect(
      Policy policy, RuleDescriptor rule, Parameter<?> parameter, @Nullable Cursor written) {
    String text = text(written);
    Demand.that(
        text == null
            || parameter.type().parse(text).equals(Optional.of(policy.value(rule, parameter))),
        "the parameter %s of %s",
        parameter.name(),
        rule.id());
  }

  private RuleDescriptor rule(String id) {
    RuleDescriptor rule = rules.get(id);
    if (rule == null) {
      throw new AssertionError("the unknown rule " + id + " is not told");
    }
    return rule;
  }

  private static @Nullable String text(@Nullable Cursor cursor) {
    return cursor != null && cursor.node() instanceof Scalar scalar ? scalar.text() : null;
  }
}
