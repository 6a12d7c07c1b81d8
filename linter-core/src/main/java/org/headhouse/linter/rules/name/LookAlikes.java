package org.headhouse.linter.rules.name;

/**
 * What a name looks like: letters and digits that the eye takes for one another become one.
 *
 * <p>The table is a small part of the confusables data of UTS 39, for the characters that names on
 * the displays of controllers are written with.
 */
final class LookAlikes {
  private LookAlikes() {}

  /** Equal for names that look the same. Case is kept, since it shows. */
  static String shape(String name) {
    StringBuilder shape = new StringBuilder(name.length());
    for (int i = 0; i < name.length(); i++) {
      switch (name.charAt(i)) {
        case '0' -> shape.append('O');
        case '1', 'I', '|' -> shape.append('l');
        case 'm' -> shape.append("rn");
        default -> shape.append(name.charAt(i));
      }
    }
    return shape.toString();
  }
}
