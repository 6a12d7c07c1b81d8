package org.headhouse.linter.editor;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.Map;
import org.eclipse.lsp4j.jsonrpc.json.JsonRpcMethod;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;
import org.eclipse.lsp4j.jsonrpc.messages.Message;

/**
 * Reads each message to its end, also one that is not understood. The library goes on reading where
 * it gave up, and would take the rest of the message for the header of the next one: no message
 * after it would be answered.
 */
final class WholeMessages extends MessageJsonHandler {
  WholeMessages(Map<String, JsonRpcMethod> methods) {
    super(methods);
  }

  /**
   * @param input that ends where the message does
   */
  @Override
  public Message parseMessage(Reader input) {
    try {
      return super.parseMessage(input);
    } finally {
      skipRest(input);
    }
  }

  private static void skipRest(Reader input) {
    try {
      input.transferTo(Writer.nullWriter());
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
