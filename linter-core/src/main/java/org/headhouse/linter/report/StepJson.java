package org.headhouse.linter.report;

import java.util.List;
import org.headhouse.linter.change.Check;
import org.headhouse.linter.change.FieldAction;
import org.headhouse.linter.change.PlannedStep;
import org.headhouse.linter.change.Step;
import org.headhouse.linter.change.ValueChange;
import org.headhouse.linter.change.WiringPlace;
import org.jspecify.annotations.Nullable;

/** Writes a step of the field work as JSON: its kind, its values, and the sentence for people. */
final class StepJson {
  private final JsonWriter json;

  StepJson(JsonWriter json) {
    this.json = json;
  }

  void write(PlannedStep planned) {
    Step step = planned.work();
    json.writeStartObject();
    if (step instanceof Step.Prepare prepare) {
      at("prepare", prepare.unit());
      number("from", prepare.delivered());
      json.writeNumberProperty("to", prepare.address());
      settings(prepare.settings());
      json.writeBooleanProperty("instead", prepare.instead());
    } else if (step instanceof Step.StopSoftware) {
      json.writeStringProperty("kind", "stop-software");
    } else if (step instanceof Step.ResumeSoftware) {
      json.writeStringProperty("kind", "resume-software");
    } else if (step instanceof Step.Separate one) {
      at("separate", one.unit());
      json.writeNumberProperty("from", one.from());
      json.writeNumberProperty("to", one.to());
      json.writeBooleanProperty("spare", one.spare());
    } else if (step instanceof Step.SwitchOff off) {
      at("switch-off", off.unit());
      json.writeNumberProperty("from", off.address());
    } else if (step instanceof Step.SetAddress set) {
      at("set-address", set.unit());
      json.writeNumberProperty("from", set.from());
      json.writeNumberProperty("to", set.to());
      json.writeBooleanProperty("spare", set.spare());
      settings(set.settings());
    } else if (step instanceof Step.SetAside aside) {
      at("set-aside", aside.unit());
      json.writeNumberProperty("from", aside.from());
      json.writeNumberProperty("to", aside.to());
    } else if (step instanceof Step.BringBack back) {
      at("bring-back", back.unit());
      json.writeNumberProperty("to", back.address());
      settings(back.settings());
    } else if (step instanceof Step.SetUnit set) {
      at("set-unit", set.unit());
      settings(set.settings());
    } else if (step instanceof Step.SetLine line) {
      json.writeStringProperty("kind", "set-line");
      names("units", line.units());
      settings(line.settings());
    } else if (step instanceof Step.Wire wire) {
      json.writeStringProperty("kind", "wire");
      json.writeArrayPropertyStart("places");
      wire.places().forEach(this::place);
      json.writeEndArray();
      names("isolated", wire.isolated());
    }
    names("withoutReadings", planned.withoutReadings());
    names("ventsStill", planned.ventsStill());
    names("pollingFirst", SafeguardWords.polling(planned.pollingFirst()));
    names("pollingLast", SafeguardWords.polling(planned.pollingLast()));
    json.writeArrayPropertyStart("checks");
    planned.checks().forEach(this::check);
    json.writeEndArray();
    json.writeStringProperty("wayBack", SafeguardWords.wayBack(planned));
    json.writeStringProperty("text", StepWords.of(step));
    json.writeEndObject();
  }

  private void check(Check check) {
    json.writeStartObject();
    json.writeStringProperty("kind", check.kind().word());
    names("at", check.at());
    number("address", check.address());
    text("side", check.side() == null ? null : check.side().word());
    json.writeStringProperty("text", SafeguardWords.of(check));
    json.writeEndObject();
  }

  private void at(String kind, String unit) {
    json.writeStringProperty("kind", kind);
    json.writeStringProperty("unit", unit);
  }

  private void names(String name, List<String> names) {
    json.writeArrayPropertyStart(name);
    names.forEach(json::writeString);
    json.writeEndArray();
  }

  private void settings(List<ValueChange> settings) {
    json.writeArrayPropertyStart("settings");
    for (ValueChange change : settings) {
      json.writeStartObject();
      change(change);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void place(WiringPlace place) {
    json.writeStartObject();
    json.writeStringProperty("item", place.item());
    json.writeArrayPropertyStart("acts");
    place.actions().forEach(this::act);
    json.writeEndArray();
    json.writeEndObject();
  }

  private void act(FieldAction act) {
    json.writeStartObject();
    if (act instanceof FieldAction.TakeOff off) {
      cable("take-off", off.onward(), off.other());
    } else if (act instanceof FieldAction.Land land) {
      cable("land", land.onward(), land.other());
      text("length", land.length());
    } else if (act instanceof FieldAction.Terminate terminate) {
      json.writeStringProperty("kind", "terminate");
      change(terminate.termination());
    } else if (act instanceof FieldAction.Replace replace) {
      cable("replace", replace.onward(), replace.other());
      change(replace.cable());
    } else if (act instanceof FieldAction.Protect protect) {
      cable("protect", protect.onward(), protect.other());
      json.writeBooleanProperty("fitted", protect.fitted());
    } else if (act instanceof FieldAction.Fit fit) {
      json.writeStringProperty("kind", "fit");
      change(fit.change());
    } else if (act instanceof FieldAction.Exchange exchange) {
      json.writeStringProperty("kind", "exchange");
      number("address", exchange.address());
      settings(exchange.device());
    } else if (act instanceof FieldAction.Set set) {
      json.writeStringProperty("kind", "set");
      json.writeBooleanProperty("first", set.first());
      settings(set.settings());
    } else if (act instanceof FieldAction.SwitchOn on) {
      json.writeStringProperty("kind", "switch-on");
      json.writeNumberProperty("address", on.address());
    } else {
      json.writeStringProperty("kind", "take-out");
    }
    json.writeEndObject();
  }

  private void cable(String kind, boolean onward, String other) {
    json.writeStringProperty("kind", kind);
    json.writeStringProperty("cable", onward ? "to" : "from");
    json.writeStringProperty("other", other);
  }

  private void change(ValueChange change) {
    json.writeStringProperty("what", change.what());
    text("from", change.from());
    text("to", change.to());
  }

  private void number(String name, @Nullable Integer value) {
    if (value == null) {
      json.writeNullProperty(name);
    } else {
      json.writeNumberProperty(name, value);
    }
  }

  private void text(String name, @Nullable String value) {
    if (value == null) {
      json.writeNullProperty(name);
    } else {
      json.writeStringProperty(name, value);
    }
  }
}
