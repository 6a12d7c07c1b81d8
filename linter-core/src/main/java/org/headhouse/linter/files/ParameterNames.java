package org.headhouse.linter.files;

/** How users write the parameters of a run, which are called alike everywhere. */
@FunctionalInterface
public interface ParameterNames {
  /** What to write for a parameter such as {@code sites}. */
  String of(String parameter);
}
