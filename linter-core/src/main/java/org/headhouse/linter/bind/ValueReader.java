package org.headhouse.linter.bind;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.site.RecordDate;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Word;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.yaml.CoreType;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;
import org.jspecify.annotations.Nullable;

/** One value on its way from the tree to the model. */
final class ValueReader {
  private static final Message ZERO =
      new Message(
          "the value is zero", "nothing can be computed with it", "write a value above zero");

  private final @Nullable Cursor cursor;
  private final Place key;
  private final BindingIssues issues;
  private final boolean isMisspelt;

  /**
   * @param cursor at the value, or null where it is missing
   * @param key where the key stands, or for a missing one its owner
   */
  ValueReader(@Nullable Cursor cursor, Place key, BindingIssues issues) {
    this(cursor, key, issues, false);
  }

  private ValueReader(
      @Nullable Cursor cursor, Place key, BindingIssues issues, boolean isMisspelt) {
    this.isMisspelt = isMisspelt;
    this.cursor = cursor;
    this.key = key;
    this.issues = issues;
  }

  /** A value that is there under a key which is not known; that key is reported. */
  static ValueReader misspelt(Place owner, BindingIssues issues) {
    return new ValueReader(null, owner, issues, true);
  }

  boolean isMissing() {
    return cursor == null;
  }

  private <T> Setting<T> faulty(Cursor at) {
    issues.askSchema();
    return new Setting.Faulty<>(at.place());
  }

  private <T> Setting<T> given(T value, Cursor at) {
    return new Setting.Given<>(value, at.place());
  }

  private <T> Setting<T> missing() {
    return isMisspelt ? new Setting.Faulty<>(key) : new Setting.Missing<>(key);
  }

  private @Nullable Scalar scalar(CoreType type) {
    return cursor != null && cursor.node() instanceof Scalar scalar && scalar.type() == type
        ? scalar
        : null;
  }

  /** Text that a function understands; null from the function is a fault. */
  <T> Setting<T> parsed(Function<String, @Nullable T> parser) {
    if (cursor == null) {
      return missing();
    }
    Scalar scalar = scalar(CoreType.TEXT);
    T value = scalar == null ? null : parser.apply(scalar.text());
    return value == null ? faulty(cursor) : given(value, cursor);
  }

  /** Text of some length in code points. */
  Setting<String> text(int least, int most) {
    if (cursor == null) {
      return missing();
    }
    Scalar scalar = scalar(CoreType.TEXT);
    return scalar == null || !isLong(scalar.text(), least, most)
        ? faulty(cursor)
        : given(scalar.text(), cursor);
  }

  private static boolean isLong(String text, int least, int most) {
    int length = text.codePointCount(0, text.length());
    return length >= least && length <= most;
  }

  /** Whether the value is just this text. */
  boolean isText(String text) {
    Scalar scalar = scalar(CoreType.TEXT);
    return scalar != null && scalar.text().equals(text);
  }

  /** A word out of a closed set. */
  <E extends Word> Setting<E> word(List<E> words) {
    if (cursor == null) {
      return missing();
    }
    Scalar scalar = scalar(CoreType.TEXT);
    if (scalar != null) {
      for (int i = 0; i < words.size(); i++) {
        E word = words.get(i);
        if (word.word().equals(scalar.text())) {
          return given(word, cursor);
        }
      }
    }
    return faulty(cursor);
  }

  /** Text that a function understands, and that stands for more than nothing. */
  <T> Setting<T> positive(Function<String, @Nullable T> parser, Function<T, Double> size) {
    return above(0, parser, size, ZERO);
  }

  /**
   * Text that a function understands, and whose size is above a limit. The schema's patterns bound
   * no numbers, so this is reported here.
   */
  <T> Setting<T> above(
      double limit,
      Function<String, @Nullable T> parser,
      Function<T, Double> size,
      Message otherwise) {
    Setting<T> setting = parsed(parser);
    T value = setting.orNull();
    if (value == null || size.apply(value) > limit) {
      return setting;
    }
    issues.report("schema.out-of-range", setting.place(), otherwise);
    return new Setting.Faulty<>(setting.place());
  }

  Setting<Boolean> bool() {
    if (cursor == null) {
      return missing();
    }
    Scalar scalar = scalar(CoreType.BOOLEAN);
    return scalar == null ? faulty(cursor) : given(scalar.text().equalsIgnoreCase("true"), cursor);
  }

  /** A whole number in a range. */
  Setting<Integer> integer(int least, int most) {
    if (cursor == null) {
      return missing();
    }
    Integer value = cursor.node() instanceof Scalar scalar ? Numbers.whole(scalar) : null;
    return value == null || value < least || value > most ? faulty(cursor) : given(value, cursor);
  }

  /** A whole number out of a list. */
  Setting<Integer> oneOf(List<Integer> numbers) {
    Setting<Integer> setting = integer(Integer.MIN_VALUE, Integer.MAX_VALUE);
    Integer value = setting.orNull();
    if (value == null || numbers.contains(value)) {
      return setting;
    }
    issues.askSchema();
    return new Setting.Faulty<>(setting.place());
  }

  /** A number above zero and up to a limit. */
  Setting<Double> positiveNumber(double most) {
    if (cursor == null) {
      return missing();
    }
    Double value =
        cursor.node() instanceof Scalar scalar && isNumber(scalar) ? Numbers.decimal(scalar) : null;
    return value == null || !(value > 0 && value <= most) ? faulty(cursor) : given(value, cursor);
  }

  private static boolean isNumber(Scalar scalar) {
    return scalar.type() == CoreType.INTEGER || scalar.type() == CoreType.FLOAT;
  }

  /** The day of a record, or the question mark that holds its place. */
  Setting<RecordDate> recordDate() {
    if (cursor != null && isText(RecordDate.OPEN)) {
      return given(new RecordDate(null), cursor);
    }
    Setting<LocalDate> day = date();
    if (day instanceof Setting.Given<LocalDate> given) {
      return new Setting.Given<>(new RecordDate(given.value()), day.place());
    }
    return day.isMissing() ? missing() : new Setting.Faulty<>(day.place());
  }

  /** A day of the calendar. */
  Setting<LocalDate> date() {
    if (cursor == null) {
      return missing();
    }
    Scalar scalar = scalar(CoreType.TEXT);
    if (scalar == null || !scalar.text().matches("[0-9]{4}-[0-9]{2}-[0-9]{2}")) {
      return faulty(cursor);
    }
    try {
      return given(LocalDate.parse(scalar.text()), cursor);
    } catch (DateTimeException noSuchDay) {
      issues.report(
          "schema.bad-value",
          cursor.place(),
          new Message(
              "the calendar has no day " + scalar.text(),
              "the date cannot be compared",
              "write the day that is meant as year-month-day"));
      return new Setting.Faulty<>(cursor.place());
    }
  }

  /** A mapping that a binder reads. */
  <T> Setting<T> mapping(BiFunction<MappingReader, Place, T> binder) {
    if (cursor == null) {
      return missing();
    }
    if (!(cursor.node() instanceof Mapping mapping)) {
      return faulty(cursor);
    }
    // What is missing behind an alias can be written at the alias only by doing without it.
    Place owner = cursor.via() == null ? key : cursor.place();
    MappingReader keys = new MappingReader(cursor, mapping, owner, issues);
    T value = binder.apply(keys, owner);
    keys.end();
    return given(
        keys.hasUnknown() && issues.seesMisspelt() ? binder.apply(keys.again(), owner) : value,
        cursor);
  }

  /** A list whose items are read one by one. */
  <T> Setting<List<T>> list(int least, int most, Function<ValueReader, T> item) {
    if (cursor == null) {
      return missing();
    }
    if (!(cursor.node() instanceof Sequence sequence)) {
      return faulty(cursor);
    }
    // A list that is empty or beyond all measure says nothing of what it should hold.
    if ((sequence.items().isEmpty() && least > 0) || sequence.items().size() > most) {
      return faulty(cursor);
    }
    if (sequence.items().size() < least) {
      issues.askSchema();
    }
    List<T> items = new ArrayList<>(sequence.items().size());
    for (var node : sequence.items()) {
      Cursor at = cursor.inside(node);
      items.add(item.apply(new ValueReader(at, at.place(), issues)));
    }
    return given(Collections.unmodifiableList(items), cursor);
  }

  /** A list of at least one value in which none may stand twice. */
  <T> Setting<List<Setting<T>>> set(Function<ValueReader, Setting<T>> item) {
    Setting<List<Setting<T>>> list = list(1, Integer.MAX_VALUE, item);
    Set<T> values = new HashSet<>();
    for (Setting<T> setting : list.or(List.of())) {
      T value = setting.orNull();
      if (value != null && !values.add(value)) {
        issues.askSchema();
      }
    }
    return list;
  }

  /** The value, or where it is missing its owner. */
  Place place() {
    return cursor == null ? key : cursor.place();
  }

  /** What lies under the cursor, for a binder that must look before it chooses. */
  @Nullable Cursor cursor() {
    return cursor;
  }

  BindingIssues issues() {
    return issues;
  }
}
