package org.headhouse.linter.report;

import java.io.OutputStream;
import java.util.List;
import org.headhouse.linter.change.AddressingWay;
import org.headhouse.linter.change.Consequence;
import org.headhouse.linter.change.Difference;
import org.headhouse.linter.change.FieldWork;
import org.headhouse.linter.change.SiteChange;
import org.headhouse.linter.change.ValueChange;
import org.headhouse.linter.materials.BillOfMaterials;
import org.headhouse.linter.materials.MaterialChange;
import org.headhouse.linter.materials.Slack;
import org.headhouse.linter.result.Result;
import org.jspecify.annotations.Nullable;

/** Changes and the order of the field work as JSON, for programs. */
public final class ChangeJson {
  private final JsonWriter json;

  private final Slack slack;

  private final OpenResults open;

  private ChangeJson(JsonWriter json, Slack slack, OpenResults open) {
    this.json = json;
    this.slack = slack;
    this.open = open;
  }

  /** Writes all changes with the usual slack of cable; the stream is left open. */
  public static void write(String compared, List<SiteChange> changes, OutputStream out) {
    write(compared, changes, Slack.USUAL, OpenResults.NONE, out);
  }

  /**
   * Writes all changes; the stream is left open.
   *
   * @param compared what the sites are compared with, such as a revision
   * @param slack the cable that is ordered beyond the measured lengths
   * @param open what a check finds in the later state
   */
  public static void write(
      String compared, List<SiteChange> changes, Slack slack, OpenResults open, OutputStream out) {
    try (JsonWriter json = PrettyJson.to(out)) {
      ChangeJson writer = new ChangeJson(json, slack, open);
      json.writeStartObject();
      json.writeStringProperty("since", compared);
      json.writeArrayPropertyStart("cautions");
      ChangeDocument.CAUTIONS.forEach(json::writeString);
      json.writeEndArray();
      json.writeArrayPropertyStart("sites");
      changes.forEach(writer::site);
      json.writeEndArray();
      json.writeEndObject();
      json.writeRaw('\n');
    }
  }

  private void site(SiteChange change) {
    json.writeStartObject();
    json.writeStringProperty("site", change.site());
    json.writeStringProperty("file", change.file());
    if (change instanceof SiteChange.Added added) {
      json.writeStringProperty("kind", "added");
      json.writeNumberProperty("units", added.units());
      json.writeName("materials");
      materials(added.materials(), MaterialChange.NONE.removed());
    } else if (change instanceof SiteChange.Removed removed) {
      json.writeStringProperty("kind", "removed");
      json.writeNumberProperty("units", removed.units());
    } else if (change instanceof SiteChange.Unreadable unreadable) {
      json.writeStringProperty("kind", "unreadable");
      json.writeStringProperty("reason", unreadable.reason());
    } else if (change instanceof SiteChange.Changed changed) {
      json.writeStringProperty("kind", "changed");
      json.writeStringProperty("earlierFile", changed.earlierFile());
      json.writeArrayPropertyStart("differences");
      changed.differences().forEach(this::difference);
      json.writeEndArray();
      json.writeArrayPropertyStart("results");
      open.of(changed.file()).forEach(this::result);
      json.writeEndArray();
      work(changed.work());
      json.writeName("materials");
      materials(changed.materials().needed(), changed.materials().removed());
      json.writeArrayPropertyStart("consequences");
      changed.consequences().forEach(this::consequence);
      json.writeEndArray();
    }
    json.writeEndObject();
  }

  private void result(Result result) {
    json.writeStartObject();
    json.writeStringProperty("rule", result.rule());
    json.writeStringProperty("level", result.level().word());
    json.writeNumberProperty("line", result.location().region().startLine());
    json.writeNumberProperty("column", result.location().region().startColumn());
    json.writeStringProperty("text", result.message().text());
    json.writeEndObject();
  }

  private void work(FieldWork work) {
    if (work instanceof FieldWork.None none) {
      json.writeNullProperty("steps");
      json.writeStringProperty("noSteps", none.reason());
    } else if (work instanceof FieldWork.Plan plan) {
      json.writeArrayPropertyStart("steps");
      plan.steps().forEach(step -> new StepJson(json).write(step));
      json.writeEndArray();
      json.writeArrayPropertyStart("remarks");
      plan.remarks().forEach(json::writeString);
      json.writeEndArray();
      json.writeArrayPropertyStart("addressing");
      plan.addressing().forEach(this::addressing);
      json.writeEndArray();
    }
  }

  private void addressing(AddressingWay way) {
    json.writeStartObject();
    json.writeStringProperty("way", way.kind().word());
    json.writeObjectPropertyStart("addresses");
    way.addresses().forEach(json::writeNumberProperty);
    json.writeEndObject();
    json.writeNumberProperty("settings", way.settings());
    json.writeNumberProperty("visits", way.visits());
    json.writeBooleanProperty("asWritten", way.asWritten());
    json.writeEndObject();
  }

  private void materials(BillOfMaterials needed, BillOfMaterials removed) {
    MaterialsJson materials = new MaterialsJson(json, slack);
    json.writeStartObject();
    materials.write("needed", needed);
    materials.write("removed", removed);
    json.writeEndObject();
  }

  private void consequence(Consequence consequence) {
    json.writeStartObject();
    json.writeStringProperty("kind", consequence.kind().word());
    json.writeStringProperty("text", consequence.text());
    json.writeEndObject();
  }

  private void difference(Difference difference) {
    json.writeStartObject();
    if (difference instanceof Difference.Added added) {
      item("added", added.item());
      json.writeStringProperty("what", added.kind().word());
      text("previous", added.previous());
    } else if (difference instanceof Difference.Removed removed) {
      item("removed", removed.item());
      json.writeStringProperty("what", removed.kind().word());
      text("previous", removed.previous());
    } else if (difference instanceof Difference.Exchanged exchanged) {
      item("exchanged", exchanged.item());
      json.writeArrayPropertyStart("device");
      for (ValueChange change : exchanged.device()) {
        json.writeStartObject();
        json.writeStringProperty("what", change.what());
        text("from", change.from());
        text("to", change.to());
        json.writeEndObject();
      }
      json.writeEndArray();
    } else if (difference instanceof Difference.Renamed renamed) {
      item("renamed", renamed.item());
      json.writeStringProperty("from", renamed.from());
      json.writeStringProperty("to", renamed.item());
    } else if (difference instanceof Difference.Readdressed moved) {
      item("readdressed", moved.item());
      json.writeNumberProperty("from", moved.from());
      json.writeNumberProperty("to", moved.to());
    } else if (difference instanceof Difference.RoleChanged one) {
      change("role", one.item(), one.role());
    } else if (difference instanceof Difference.Rewired one) {
      change("rewired", one.item(), one.wiring());
    } else if (difference instanceof Difference.Terminated one) {
      change("terminated", one.item(), one.termination());
    } else if (difference instanceof Difference.Rebiased one) {
      change("re-biased", one.item(), one.bias());
    } else if (difference instanceof Difference.Resourced one) {
      change("re-sourced", one.item(), one.source());
    } else if (difference instanceof Difference.ItemSet one) {
      change("unit", one.item(), one.setting());
    } else if (difference instanceof Difference.TypeSet one) {
      change("device-type", one.type(), one.setting());
    } else if (difference instanceof Difference.LineSet one) {
      change("line", null, one.setting());
    } else if (difference instanceof Difference.SiteSet one) {
      change("site", null, one.setting());
    }
    json.writeEndObject();
  }

  private void item(String kind, @Nullable String item) {
    json.writeStringProperty("kind", kind);
    if (item != null) {
      json.writeStringProperty("item", item);
    }
  }

  private void change(String kind, @Nullable String item, ValueChange change) {
    item(kind, item);
    json.writeStringProperty("what", change.what());
    text("from", change.from());
    text("to", change.to());
  }

  private void text(String name, @Nullable String value) {
    if (value == null) {
      json.writeNullProperty(name);
    } else {
      json.writeStringProperty(name, value);
    }
  }
}
