package org.headhouse.linter.draft;

/**
 * One cell of a list.
 *
 * @param text without quotes, and without spaces around it
 * @param start the index of its first character in the file, a quote included
 * @param end the index after its last character
 */
record Cell(String text, int start, int end) {

  boolean isEmpty() {
    return text.isEmpty();
  }

  /** The text as messages quote it. */
  String shown() {
    int most = Math.min(text.length(), 60);
    boolean cutsPair = most < text.length() && Character.isHighSurrogate(text.charAt(most - 1));
    String part = text.substring(0, cutsPair ? most - 1 : most);
    return "\"" + part + (part.length() < text.length() ? "…" : "") + "\"";
  }
}
