package org.headhouse.linter.rule;

import java.util.Objects;

/**
 * A setting of a rule that the policy may change.
 *
 * @param name lower-case with hyphens
 * @param description one clause: what it is
 * @param type how it is written
 * @param fallback its value where the policy says nothing, as the policy would write it
 */
public record Parameter<T>(
    String name, String description, ParameterType<T> type, String fallback) {

  public Parameter {
    Objects.requireNonNull(name, "a parameter without a name");
    Objects.requireNonNull(description, "a parameter without a description");
    if (type.parse(fallback).isEmpty()) {
      throw new IllegalArgumentException(
          "parameter " + name + ": the default " + fallback + " is not " + type.describe());
    }
  }

  /** The value where the policy says nothing. */
  public T defaultValue() {
    return type.parse(fallback).orElseThrow();
  }
}
