package org.headhouse.linter.yaml;

import java.util.Collection;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.source.SpellingSuggester;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.reader.ReaderException;
import org.yaml.snakeyaml.reader.StreamReader;

/** The findings for text that is not valid YAML. */
final class SyntaxFaults {
  static final String SYNTAX = "yaml.syntax";
  private static final String TOO_LARGE = "file.too-large";
  static final String NOT_READ = "nothing in the file can be checked";

  private SyntaxFaults() {}

  /**
   * The finding for an exception of the parser.
   *
   * @param reached how far the parser has read
   */
  static Finding of(YAMLException exception, SourceText source, Region reached) {
    if (exception instanceof MarkedYAMLException marked && marked.getProblemMark() != null) {
      return new ParserWords(marked, source).finding();
    }
    return exception instanceof ReaderException
        ? unprintable(source, exception)
        : behindValue(reached);
  }

  /** A backslash, a letter and too few digits, or too high a number. */
  static Finding escape(Region reached) {
    return Finding.of(
        SYNTAX,
        reached,
        new Message(
            "the backslash in front of this place and what follows it stand for no character",
            NOT_READ,
            "write two backslashes for one, or put the text in single quotes"));
  }

  /** The one fault that the parser reports without a place: {@code ] c} where a key could start. */
  private static Finding behindValue(Region reached) {
    return Finding.of(
        SYNTAX,
        reached,
        new Message(
            "something follows the end of the value",
            NOT_READ,
            "write it on a line of its own, or delete it"));
  }

  private static Finding unprintable(SourceText source, YAMLException exception) {
    String text = source.text();
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      int c = text.codePointAt(i);
      if (!StreamReader.isPrintable(c)) {
        Region at = source.at(i);
        return Finding.of(
            SYNTAX,
            Region.onLine(at.startLine(), at.startColumn(), 1),
            new Message(
                String.format("the character U+%04X is not allowed in YAML", c),
                NOT_READ,
                "delete it, or write it as an escape in double quotes"));
      }
    }
    throw exception; // not a fault of the text: the caller reports it as one of the program
  }

  static Finding severalDocuments(Region region) {
    return Finding.of(
        "yaml.several-documents",
        region,
        new Message(
            "a second document starts here",
            "a file has only one definition, and nothing after this line is read",
            "move it into a file of its own, or delete the line \"---\""));
  }

  static Finding duplicateKey(Scalar key, Scalar first) {
    return Finding.of(
            "yaml.duplicate-key",
            key.region(),
            new Message(
                "the key \"" + key.text() + "\" is written twice",
                "readers of YAML differ on which value they use",
                "keep one of the two"))
        .related(first.region(), "\"" + key.text() + "\" is first written here");
  }

  static Finding keyIsNoText(Region region) {
    return Finding.of(
        SYNTAX,
        region,
        new Message(
            "this key is not a plain word",
            "every key of a definition is a word",
            "write the key as a word, and put a text that starts with a bracket in quotes"));
  }

  static Finding mergedNoMapping(Region region) {
    return Finding.of(
        SYNTAX,
        region,
        new Message(
            "the merge key \"<<\" takes keys from something that has none",
            "it can only take the keys of a mapping",
            "write an alias of a mapping, or a list of such aliases"));
  }

  static Finding unknownAlias(String name, Collection<String> anchors, Region region) {
    String remedy =
        SpellingSuggester.suggest(name, anchors)
            .map(near -> "write *" + near)
            .orElse(
                "write \"*"
                    + name
                    + "\" in quotes if it is text; else write &"
                    + name
                    + " before the value that is meant");
    return Finding.of(
        SYNTAX,
        region,
        new Message(
            "the alias *" + name + " has no anchor &" + name + " above it", NOT_READ, remedy));
  }

  static Finding recursiveAlias(String name, Region region) {
    return Finding.of(
        SYNTAX,
        region,
        new Message(
            "the alias *" + name + " is inside the value that it names",
            "the value would never end, and " + NOT_READ,
            "write the value out here"));
  }

  static Finding foreignTag(String tag, Region region) {
    return Finding.of(
        SYNTAX,
        region,
        new Message(
            "the tag " + tag + " has no meaning here",
            "only the types of YAML's core schema are read",
            "delete the tag"));
  }

  static Finding tooDeep(int limit, Region region) {
    return Finding.of(
        TOO_LARGE,
        region,
        new Message(
            "the nesting is deeper than " + limit + " levels",
            "a definition never needs that many, and " + NOT_READ,
            "take out what does not belong here"));
  }

  static Finding tooManyNodes(int limit, Region region) {
    return Finding.of(
        TOO_LARGE,
        region,
        new Message(
            "the file has more than " + limit + " values once its aliases are expanded",
            "a definition never needs that many, and " + NOT_READ,
            "use fewer aliases, or split the file"));
  }
}
