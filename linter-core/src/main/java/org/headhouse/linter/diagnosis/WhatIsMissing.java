package org.headhouse.linter.diagnosis;

import java.util.List;
import java.util.stream.Collectors;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.site.ChainItem;

/** Why a segment cannot be judged. */
final class WhatIsMissing {
  private WhatIsMissing() {}

  /** The first reason that is found, in words. */
  static String of(SegmentLine line, LineFigures figures) {
    List<ChainItem> withoutLength = line.withoutLength();
    if (!withoutLength.isEmpty()) {
      return "the cable length after " + called(withoutLength) + " is missing";
    }
    if (line.wire() == null) {
      return "the gauge of the cable is missing";
    }
    if (!figures.knowsPlacesOfBias()) {
      return "the place of a bias is unknown";
    }
    List<ChainItem> undeclared =
        line.segment().items().stream()
            .filter(item -> !line.segment().termination(item).isGiven())
            .toList();
    return undeclared.isEmpty()
        ? "a length, a terminator, a bias or a load is not understood: check the file first"
        : "the file does not say whether " + called(undeclared) + " has a terminator";
  }

  private static String called(List<ChainItem> items) {
    return items.stream().map(ChainItem::called).collect(Collectors.joining(", "));
  }
}
