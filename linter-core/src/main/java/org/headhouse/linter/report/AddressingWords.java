package org.headhouse.linter.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.headhouse.linter.change.AddressingWay;

/** Puts the ways of giving addresses to new units into words, with what each costs. */
final class AddressingWords {
  private AddressingWords() {}

  static List<String> of(List<AddressingWay> ways) {
    List<String> words = new ArrayList<>();
    ways.forEach(way -> words.add(of(way)));
    if (ways.stream().noneMatch(AddressingWay::asWritten)) {
      words.add("The file has neither; the order below is for the addresses in the file.");
    }
    return words;
  }

  private static String of(AddressingWay way) {
    String addresses =
        way.addresses().entrySet().stream()
            .map(one -> ChangeWords.quoted(one.getKey()) + " " + one.getValue())
            .collect(Collectors.joining(", "));
    return switch (way.kind()) {
          case NEXT_FREE -> "Next free address above the highest in use: ";
          case CHAIN_ORDER -> "Numbered in the order of the chain: ";
        }
        + (addresses.isEmpty() ? "as before" : addresses)
        + ". "
        + counted(way.settings(), "setting")
        + " of live units, "
        + counted(way.visits(), "visit")
        + " in all."
        + (way.asWritten() ? " The file has this." : "");
  }

  private static String counted(int number, String what) {
    return (number == 0 ? "No" : number) + " " + what + (number == 1 ? "" : "s");
  }
}
