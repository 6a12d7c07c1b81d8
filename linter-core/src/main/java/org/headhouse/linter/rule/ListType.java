package org.headhouse.linter.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Any number of values of one type. */
record ListType<T>(ParameterType<T> type) implements ParameterType<List<T>> {
  private static final String NONE = "[]";

  @Override
  public Optional<List<T>> parse(String written) {
    return written.equals(NONE) ? Optional.of(List.of()) : parse(List.of(written));
  }

  @Override
  public Optional<List<T>> parse(List<String> written) {
    List<T> values = new ArrayList<>();
    for (String one : written) {
      Optional<T> value = type.parse(one);
      if (value.isEmpty()) {
        return Optional.empty();
      }
      values.add(value.get());
    }
    return Optional.of(List.copyOf(values));
  }

  @Override
  public Optional<ParameterType<?>> items() {
    return Optional.of(type);
  }

  @Override
  public String describe() {
    return type.describe() + ", or a list of them";
  }

  @Override
  public List<String> words() {
    return type.words();
  }

  @Override
  public String whyNot(String written) {
    return type.whyNot(written);
  }

  @Override
  public Optional<String> remedy(String written) {
    return type.remedy(written);
  }
}
