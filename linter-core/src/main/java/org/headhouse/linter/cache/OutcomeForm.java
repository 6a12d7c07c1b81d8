package org.headhouse.linter.cache;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.List;
import org.headhouse.linter.check.FileOutcome;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Identity;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Location;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.RelatedLocation;
import org.headhouse.linter.result.Replacement;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.result.Suppression;
import org.headhouse.linter.source.Region;
import org.jspecify.annotations.Nullable;

/**
 * The outcome of one file as bytes. Each record is written as its parts, in their order; a test
 * holds that none is forgotten.
 */
final class OutcomeForm {
  private OutcomeForm() {}

  /**
   * Writes an outcome.
   *
   * @param outcome one without notifications: what kept the tool from its work may be gone next
   *     time
   */
  static void write(FileOutcome outcome, DataOutputStream out) throws IOException {
    Parts.list(outcome.results(), out, OutcomeForm::result);
    Parts.list(outcome.keys(), out, OutcomeForm::key);
    out.writeInt(outcome.units());
  }

  /** Reads an outcome. */
  static FileOutcome read(DataInputStream in) throws IOException {
    List<Result> results = Parts.list(in, OutcomeForm::result);
    List<FileOutcome.Key> keys = Parts.list(in, OutcomeForm::key);
    return new FileOutcome(results, List.of(), keys, in.readInt());
  }

  private static void result(Result result, DataOutputStream out) throws IOException {
    Parts.text(result.rule(), out);
    Parts.text(result.level().name(), out);
    message(result.message(), out);
    location(result.location(), out);
    Parts.text(result.logical(), out);
    Parts.text(result.unit(), out);
    Parts.list(result.related(), out, OutcomeForm::related);
    Parts.optional(result.suppression(), out, OutcomeForm::suppression);
    Parts.optional(result.identity(), out, OutcomeForm::identity);
    Parts.optional(result.fix(), out, OutcomeForm::fix);
  }

  private static Result result(DataInputStream in) throws IOException {
    return new Result(
        Parts.text(in),
        Level.valueOf(Parts.text(in)),
        message(in),
        location(in),
        Parts.text(in),
        Parts.textOrNull(in),
        Parts.list(in, OutcomeForm::related),
        Parts.optional(in, OutcomeForm::suppression),
        Parts.optional(in, OutcomeForm::identity),
        null,
        Parts.optional(in, OutcomeForm::fix));
  }

  private static void key(FileOutcome.Key key, DataOutputStream out) throws IOException {
    Parts.text(key.rule(), out);
    Parts.text(key.text(), out);
    location(key.location(), out);
    Parts.optional(key.suppression(), out, OutcomeForm::suppression);
    identity(key.identity(), out);
  }

  private static FileOutcome.Key key(DataInputStream in) throws IOException {
    return new FileOutcome.Key(
        Parts.text(in),
        Parts.text(in),
        location(in),
        Parts.optional(in, OutcomeForm::suppression),
        identity(in));
  }

  private static void message(Message message, DataOutputStream out) throws IOException {
    Parts.text(message.fact(), out);
    Parts.text(message.reason(), out);
    Parts.text(message.remedy(), out);
  }

  private static Message message(DataInputStream in) throws IOException {
    return new Message(Parts.text(in), Parts.text(in), Parts.text(in));
  }

  private static void location(Location location, DataOutputStream out) throws IOException {
    Parts.text(location.file(), out);
    region(location.region(), out);
    Parts.text(location.line(), out);
  }

  private static Location location(DataInputStream in) throws IOException {
    return new Location(Parts.text(in), region(in), Parts.text(in));
  }

  private static void region(Region region, DataOutputStream out) throws IOException {
    out.writeInt(region.startLine());
    out.writeInt(region.startColumn());
    out.writeInt(region.endLine());
    out.writeInt(region.endColumn());
  }

  private static Region region(DataInputStream in) throws IOException {
    return new Region(in.readInt(), in.readInt(), in.readInt(), in.readInt());
  }

  private static void related(RelatedLocation related, DataOutputStream out) throws IOException {
    location(related.location(), out);
    Parts.text(related.text(), out);
  }

  private static RelatedLocation related(DataInputStream in) throws IOException {
    return new RelatedLocation(location(in), Parts.text(in));
  }

  private static void suppression(Suppression suppression, DataOutputStream out)
      throws IOException {
    Parts.text(suppression.justification(), out);
    location(suppression.location(), out);
  }

  private static Suppression suppression(DataInputStream in) throws IOException {
    return new Suppression(Parts.text(in), location(in));
  }

  private static void identity(Identity identity, DataOutputStream out) throws IOException {
    Parts.text(identity.site(), out);
    Parts.text(identity.at(), out);
    Parts.text(identity.unit(), out);
    Parts.text(identity.value(), out);
    Level graded = identity.graded();
    Parts.text(graded == null ? null : graded.name(), out);
  }

  private static Identity identity(DataInputStream in) throws IOException {
    return new Identity(
        Parts.textOrNull(in),
        Parts.text(in),
        Parts.textOrNull(in),
        Parts.textOrNull(in),
        levelOrNull(Parts.textOrNull(in)));
  }

  private static void fix(Fix fix, DataOutputStream out) throws IOException {
    Parts.text(fix.kind().name(), out);
    Parts.text(fix.description(), out);
    Parts.list(fix.replacements(), out, OutcomeForm::replacement);
  }

  private static Fix fix(DataInputStream in) throws IOException {
    return new Fix(
        FixKind.valueOf(Parts.text(in)), Parts.text(in), Parts.list(in, OutcomeForm::replacement));
  }

  private static void replacement(Replacement replacement, DataOutputStream out)
      throws IOException {
    region(replacement.region(), out);
    Parts.text(replacement.text(), out);
  }

  private static Replacement replacement(DataInputStream in) throws IOException {
    return new Replacement(region(in), Parts.text(in));
  }

  private static @Nullable Level levelOrNull(@Nullable String name) {
    return name == null ? null : Level.valueOf(name);
  }
}
