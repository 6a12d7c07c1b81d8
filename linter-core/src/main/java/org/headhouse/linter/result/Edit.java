package org.headhouse.linter.result;

import java.util.List;
import java.util.Objects;
import org.headhouse.linter.source.Place;

/**
 * One change to a definition, as a rule means it. How it looks in the file (style, indentation,
 * quotes, anchors) follows from what stands there.
 */
public sealed interface Edit {

  /** What is changed: the value, the key, the mapping or the list. */
  Place at();

  /** The same change, whatever the way that led there. */
  Edit at(Place other);

  /** How a value is written. */
  enum Style {
    /** As the old value was: in its quotes, or plain where that says the same. */
    AS_BEFORE,
    /** The characters as they are, for numbers and truth values. */
    PLAIN,
    /** In quotes, for text that looks like something else. */
    QUOTED
  }

  /**
   * Another value for a scalar, or another word for a key; with {@link Style#PLAIN} also another
   * list for one in brackets.
   */
  record Write(Place at, String value, Style style) implements Edit {
    public Write {
      Objects.requireNonNull(value, "an edit without a value");
      Objects.requireNonNull(style, "an edit without a style");
    }

    @Override
    public Edit at(Place other) {
      return new Write(other, value, style);
    }
  }

  /**
   * Keys that a mapping lacks, all with one value.
   *
   * @param at the mapping, or the key that it stands under
   * @param after the key behind which the new ones belong, where it is there
   * @param value as it is written in the file
   */
  record AddKeys(Place at, String after, List<String> keys, String value) implements Edit {
    public AddKeys {
      Objects.requireNonNull(value, "an edit without a value");
      keys = List.copyOf(keys);
    }

    @Override
    public Edit at(Place other) {
      return new AddKeys(other, after, keys, value);
    }
  }

  /**
   * Items that a list lacks.
   *
   * @param index how many items stay in front of the new ones
   */
  record AddItems(Place at, int index, List<String> values) implements Edit {
    public AddItems {
      if (index < 0) {
        throw new IllegalArgumentException("no list has an item " + index);
      }
      values = List.copyOf(values);
    }

    @Override
    public Edit at(Place other) {
      return new AddItems(other, index, values);
    }
  }

  /** An item that a list has for nothing. */
  record RemoveItem(Place at) implements Edit {
    @Override
    public Edit at(Place other) {
      return new RemoveItem(other);
    }
  }

  /** Another text for a scalar, in the quotes that it has. */
  static Edit write(Place at, String value) {
    return new Write(at, value, Style.AS_BEFORE);
  }

  /** A number or a truth value for a scalar. */
  static Edit plain(Place at, Object value) {
    return new Write(at, value.toString(), Style.PLAIN);
  }

  /** A key that a mapping lacks. */
  static Edit addKey(Place at, String after, String key, String value) {
    return new AddKeys(at, after, List.of(key), value);
  }

  /** A text in quotes for a scalar. */
  static Edit quote(Place at, String value) {
    return new Write(at, value, Style.QUOTED);
  }
}
