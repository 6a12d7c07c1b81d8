package org.headhouse.linter.files;

/** How users write the parameters of a run, which are called alike everywhere. */
@FunctionalInterface
public interface ParameterNames {
  /** How a parameter such as {@code sites} is called. */
  String of(String parameter);

  /** What to type for a parameter, before its value. */
  default String typed(String parameter) {
    return of(parameter);
  }

  /** What to type to give a parameter a value. */
  default String typed(String parameter, String value) {
    return typed(parameter) + "=" + value;
  }

  /** What to type to turn something on. */
  default String turnedOn(String parameter) {
    return typed(parameter, "true");
  }
}
