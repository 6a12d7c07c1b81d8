package org.headhouse.linter.check;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.bind.Bound;
import org.headhouse.linter.bind.DeviceTypesBinder;
import org.headhouse.linter.policy.Policy;
import org.headhouse.linter.policy.PolicyForm;
import org.headhouse.linter.policy.PolicyReader;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.schema.FileKind;
import org.headhouse.linter.schema.SchemaCheck;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Document;

/** Reads and checks the two files that hold for all sites: device types and policy. */
public final class SettingsCheck {
  private final RuleCatalogue rules;
  private final Limits limits;
  private final List<Result> results = new ArrayList<>();

  public SettingsCheck(RuleCatalogue rules, Limits limits) {
    this.rules = rules;
    this.limits = limits;
  }

  /** What is wrong with the files read so far. */
  public List<Result> results() {
    return List.copyOf(results);
  }

  /** Reads a policy; what is wrong in it has no effect. */
  public Policy policy(String path, byte[] bytes) {
    Document document = SourceDecoder.read(path, bytes, limits);
    PolicyReader reader = new PolicyReader(rules.descriptors());
    Policy policy = Policy.DEFAULT;
    List<Finding> faults = new ArrayList<>();
    var root = document.root();
    if (root != null) {
      Cursor whole = new Cursor(root, null);
      if (!PolicyForm.isRight(whole)) {
        faults.addAll(new SchemaCheck(FileKind.POLICY).explain(root));
      }
      policy = reader.read(whole);
      faults.addAll(reader.findings());
    }
    report(document, faults);
    return policy.withCauses(rules.descriptors());
  }

  /** Reads the device types; what is wrong in them counts as missing. */
  public DeviceTypes deviceTypes(String path, byte[] bytes) {
    Document document = SourceDecoder.read(path, bytes, limits);
    var root = document.root();
    if (root == null) {
      report(document, List.of());
      return new DeviceTypes(document.source(), List.of(), false);
    }
    Bound<DeviceTypes> bound = DeviceTypesBinder.bind(document.source(), root);
    List<Finding> faults = new ArrayList<>(bound.findings());
    if (bound.needsSchemaCheck()) {
      faults.addAll(new SchemaCheck(FileKind.DEVICE_TYPES).explain(root));
    }
    report(document, faults);
    return bound.model();
  }

  private void report(Document document, List<Finding> faults) {
    List<Finding> findings = new ArrayList<>(document.findings());
    findings.addAll(AmbiguousScalars.addTo(faults, document));
    findings.addAll(CommentCuts.of(document));
    Locations locations = new Locations(document.source(), document.root(), findings);
    // Levels are the rules' own here: a policy must not switch off what is wrong in itself.
    results.addAll(new LevelAssigner(rules, Policy.DEFAULT, false).results(findings, locations));
  }
}
