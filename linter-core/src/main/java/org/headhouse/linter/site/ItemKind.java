package org.headhouse.linter.site;

import java.util.List;
import java.util.stream.Stream;

/** What an item of the chain is. */
public enum ItemKind implements Word {
  UNIT("unit"),
  REPEATER("repeater"),
  EQUIPMENT("equipment"),
  CONVERTER("converter");

  /** The keys under which items of the chain have their names: one for each kind. */
  public static final List<String> KEYS = Stream.of(values()).map(ItemKind::word).toList();

  private final String word;

  ItemKind(String word) {
    this.word = word;
  }

  /** The word as the file has it, which is also the key of the item's name. */
  @Override
  public String word() {
    return word;
  }
}
