package org.headhouse.linter.yaml;

import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.scanner.Scanner;
import org.yaml.snakeyaml.scanner.ScannerImpl;
import org.yaml.snakeyaml.tokens.Token;

/**
 * The parser's own scanner with the kind of the next token kept.
 *
 * <p>The parser asks four times and more what kind of token comes next, and the scanner looks anew
 * each time whether that is settled. It is from the first answer on until the token is taken, so
 * the answer is kept.
 */
final class TokenAhead implements Scanner {
  private final ScannerImpl scanner;
  private @Nullable Token ahead;
  private Token.@Nullable ID kind;

  private TokenAhead(ScannerImpl scanner) {
    this.scanner = scanner;
  }

  /** A parser of the text that a reader gives. */
  static Parser parser(StreamReader reader, LoaderOptions options) {
    return new ParserImpl(new TokenAhead(new ScannerImpl(reader, options)));
  }

  @Override
  public boolean checkToken(Token.ID choice) {
    if (ahead == null) {
      look();
    }
    return kind == choice;
  }

  @Override
  public boolean checkToken(Token.ID... choices) {
    if (ahead == null) {
      look();
    }
    for (Token.ID choice : choices) {
      if (kind == choice) {
        return true;
      }
    }
    return choices.length == 0;
  }

  @Override
  public Token peekToken() {
    Token known = ahead;
    return known == null ? look() : known;
  }

  private Token look() {
    Token token = scanner.peekToken();
    ahead = token;
    kind = token.getTokenId();
    return token;
  }

  @Override
  public Token getToken() {
    ahead = null;
    return scanner.getToken();
  }

  @Override
  public void resetDocumentIndex() {
    scanner.resetDocumentIndex();
  }
}
