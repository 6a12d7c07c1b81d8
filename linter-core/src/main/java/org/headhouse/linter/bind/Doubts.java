package org.headhouse.linter.bind;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.source.Place;

/** Collects what one binding meets. */
final class Doubts {
  private boolean any;
  private final List<Finding> findings = new ArrayList<>();

  /** Something is there that the schema refuses. */
  void add() {
    any = true;
  }

  /** Something is there that only this stage can refuse. */
  void tell(String rule, Place place, Message message) {
    tell(Finding.of(rule, place, message));
  }

  void tell(Finding finding) {
    findings.add(finding);
  }

  <T> Bound<T> bound(T model) {
    return new Bound<>(model, any, List.copyOf(findings));
  }
}
