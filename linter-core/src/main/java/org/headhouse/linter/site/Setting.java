package org.headhouse.linter.site;

import java.util.Objects;
import java.util.Optional;
import org.headhouse.linter.source.Place;
import org.jspecify.annotations.Nullable;

/**
 * What a file says under one key: a value, nothing, or something that is no value.
 *
 * <p>A rule looks only at what is given. What is faulty was already reported, so a rule treats it
 * as unknown: neither as missing nor as any value.
 */
public sealed interface Setting<T> {

  /** Where the value stands; for a missing one, where its owner stands. */
  Place place();

  /** A value that is written and understood. */
  record Given<T>(T value, Place place) implements Setting<T> {}

  /** The key is not there. */
  record Missing<T>(Place place) implements Setting<T> {}

  /** The key is there, but what follows it is not understood. */
  record Faulty<T>(Place place) implements Setting<T> {}

  /** The value, or null where none is given. */
  default @Nullable T orNull() {
    return this instanceof Given<T> given ? given.value() : null;
  }

  /** The value, where one is given. */
  default Optional<T> optional() {
    return Optional.ofNullable(orNull());
  }

  /** The value, or another where none is given. */
  default T or(T other) {
    return this instanceof Given<T> given ? given.value() : other;
  }

  /** Whether this value is given. */
  default boolean is(T value) {
    return this instanceof Given<T> given && Objects.equals(given.value(), value);
  }

  /** Whether a value is given. */
  default boolean isGiven() {
    return this instanceof Given;
  }

  /** Whether the key is not there. */
  default boolean isMissing() {
    return this instanceof Missing;
  }

  /** Whether something is there that is not understood. */
  default boolean isFaulty() {
    return this instanceof Faulty;
  }
}
