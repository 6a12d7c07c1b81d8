package org.headhouse.linter;

/** Is told how far a check is, on the thread that called for it. */
@FunctionalInterface
public interface CheckProgress {
  /** Nobody wants to know. */
  CheckProgress NONE = files -> {};

  /** So many files are checked. */
  void checked(int files);
}
