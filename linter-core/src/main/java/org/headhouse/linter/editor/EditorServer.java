package org.headhouse.linter.editor;

import java.io.InputStream;
import java.io.OutputStream;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.eclipse.lsp4j.jsonrpc.Launcher;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.eclipse.lsp4j.services.LanguageClient;
import org.headhouse.linter.run.SettingsRequest;
import org.jspecify.annotations.Nullable;

/** Serves one editor over a pair of streams. */
public final class EditorServer {
  /** The editor went away without asking for the end, or went on without order. */
  private static final int LOST = 1;

  private EditorServer() {}

  /**
   * Serves until the editor asks for the end, or its stream ends.
   *
   * @param asked what texts are checked with where nothing is found around them
   * @param version of the tool, or null where it is not known
   * @return 0 where the editor asked the server to shut down first, else 1
   */
  public static int serve(
      InputStream in, OutputStream out, SettingsRequest asked, @Nullable String version) {
    // The library logs with stack traces what a broken editor sends.
    Logger log = Logger.getLogger("org.eclipse.lsp4j");
    log.setLevel(Level.OFF);
    ExecutorService worker = thread("checks");
    ExecutorService listener = thread("messages");
    try {
      LineServer server = new LineServer(new Surroundings(asked), worker, version);
      Launcher<LanguageClient> launcher =
          new Launcher.Builder<LanguageClient>() {
            @Override
            protected MessageJsonHandler createJsonHandler() {
              return new WholeMessages(getSupportedMethods());
            }
          }.setLocalService(server)
              .setRemoteInterface(LanguageClient.class)
              .setInput(in)
              .setOutput(out)
              .setExecutorService(listener)
              .setExceptionHandler(EditorServer::error)
              .create();
      server.connect(launcher.getRemoteProxy());
      Future<Void> listening = launcher.startListening();
      CompletableFuture<Integer> lost =
          CompletableFuture.supplyAsync(() -> end(listening, worker), thread("end"));
      Object code = CompletableFuture.anyOf(server.ended(), lost).join();
      return server.ended().isDone() ? server.ended().join() : (Integer) code;
    } finally {
      worker.shutdownNow();
      listener.shutdownNow();
    }
  }

  /** An editor may close its stream right after it asked for the end, which the worker answers. */
  private static int end(Future<Void> listening, ExecutorService worker) {
    try {
      listening.get();
      worker.submit(() -> {}).get();
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    } catch (ExecutionException failed) {
      return LOST; // the stream makes no sense any more
    }
    return LOST;
  }

  /** One that ends with the program. */
  private static ExecutorService thread(String name) {
    return Executors.newSingleThreadExecutor(
        job -> {
          Thread thread = new Thread(job, "editor-" + name);
          thread.setDaemon(true);
          return thread;
        });
  }

  static ResponseError error(Throwable failure) {
    Throwable cause = failure;
    while (cause.getCause() != null) {
      cause = cause.getCause();
    }
    if (cause instanceof ResponseErrorException answered) {
      return answered.getResponseError();
    }
    if (cause instanceof UnsupportedOperationException && isOfProtocol(cause)) {
      return new ResponseError(ResponseErrorCode.MethodNotFound, "it is not supported", null);
    }
    return new ResponseError(
        ResponseErrorCode.InternalError, "the tool failed, please report it: " + cause, null);
  }

  /** The library throws where a method of the protocol is not there; elsewhere, we failed. */
  private static boolean isOfProtocol(Throwable cause) {
    StackTraceElement[] calls = cause.getStackTrace();
    return calls.length > 0 && calls[0].getClassName().startsWith("org.eclipse.lsp4j.");
  }
}
