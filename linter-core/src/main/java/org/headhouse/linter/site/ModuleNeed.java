package org.headhouse.linter.site;

/** Whether a type of device needs a communication module to be fitted. */
public enum ModuleNeed implements Word {
  NEEDED("needed"),
  BUILT_IN("built-in");

  private final String word;

  ModuleNeed(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
