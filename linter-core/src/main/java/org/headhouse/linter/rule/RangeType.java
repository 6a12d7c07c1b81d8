package org.headhouse.linter.rule;

import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The values of a type from one to another, both included. Beyond them a rule would say nothing, or
 * nothing that means something.
 *
 * @param measure what is compared
 * @param least as the policy would write it
 * @param most as the policy would write it
 */
record RangeType<T>(ParameterType<T> type, ToDoubleFunction<T> measure, String least, String most)
    implements ParameterType<T> {

  RangeType {
    if (type.parse(least).isEmpty() || type.parse(most).isEmpty()) {
      throw new IllegalArgumentException(
          "from " + least + " to " + most + " is not " + type.describe());
    }
  }

  @Override
  public Optional<T> parse(String written) {
    return type.parse(written).filter(this::isInside);
  }

  private boolean isInside(T value) {
    double measured = measure.applyAsDouble(value);
    return measured >= bound(least) && measured <= bound(most);
  }

  private double bound(String written) {
    return measure.applyAsDouble(type.parse(written).orElseThrow());
  }

  @Override
  public String describe() {
    return type.describe() + ", from " + least + " to " + most;
  }

  @Override
  public String whyNot(String written) {
    return type.parse(written).isPresent()
        ? "it must be from " + least + " to " + most
        : type.whyNot(written);
  }

  @Override
  public Optional<String> remedy(String written) {
    return type.remedy(written);
  }
}
