package org.headhouse.linter.rule;

import java.util.Optional;

/** A regular expression, with what is wrong in one that is none. */
final class PatternType implements ParameterType<TextPattern> {
  @Override
  public Optional<TextPattern> parse(String written) {
    return TextPattern.read(written) instanceof TextPattern.Good good
        ? Optional.of(good.pattern())
        : Optional.empty();
  }

  @Override
  public long size(String written) {
    return PatternSize.of(written);
  }

  @Override
  public String describe() {
    return "a regular expression such as [A-Z][a-z]+ [0-9]";
  }

  @Override
  public String whyNot(String written) {
    return TextPattern.read(written) instanceof TextPattern.Bad bad
        ? bad.reason()
        : ParameterType.super.whyNot(written);
  }

  @Override
  public Optional<String> remedy(String written) {
    return TextPattern.read(written) instanceof TextPattern.Bad bad
        ? Optional.of(bad.remedy())
        : Optional.empty();
  }
}
