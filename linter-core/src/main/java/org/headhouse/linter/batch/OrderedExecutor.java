package org.headhouse.linter.batch;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Works on items by several threads, and hands the outcomes on in the order of the items.
 *
 * <p>Only some items are under way at a time, so that memory does not grow with their number.
 */
public final class OrderedExecutor implements AutoCloseable {
  private static final int BATCH_PER_THREAD = 16;
  private static final int BATCHES_UNDER_WAY = 4;

  /** One file takes less, but for one that is read from a disk which does not answer. */
  private static final int MOST_SECONDS_TO_END = 10;

  private final int threads;
  private final @Nullable ExecutorService pool;

  /** Starts as many threads; one is the calling thread itself. */
  public OrderedExecutor(int threads) {
    this.threads = threads;
    this.pool =
        threads == 1 ? null : Executors.newFixedThreadPool(threads, OrderedExecutor::worker);
  }

  private static Thread worker(Runnable work) {
    Thread thread = new Thread(work, "site-linter");
    thread.setDaemon(true);
    return thread;
  }

  /**
   * Works on items.
   *
   * @param taker gets the outcomes, on the calling thread
   * @throws IllegalStateException where the calling thread is interrupted, which it then still is
   */
  public <T, R> void run(Iterator<? extends T> items, Function<T, R> work, Consumer<R> taker) {
    if (pool == null) {
      while (items.hasNext()) {
        requireNotInterrupted();
        taker.accept(work.apply(items.next()));
      }
      return;
    }
    Deque<List<Future<R>>> underWay = new ArrayDeque<>();
    while (items.hasNext() || !underWay.isEmpty()) {
      while (items.hasNext() && underWay.size() < BATCHES_UNDER_WAY) {
        underWay.add(submitted(items, work, pool));
      }
      List<Future<R>> batch = underWay.remove();
      // Waiting for the last one of a batch first wakes this thread once, and not for each.
      outcome(batch.get(batch.size() - 1));
      batch.forEach(future -> taker.accept(outcome(future)));
    }
  }

  private <T, R> List<Future<R>> submitted(
      Iterator<? extends T> items, Function<T, R> work, ExecutorService workers) {
    List<Future<R>> batch = new ArrayList<>();
    while (items.hasNext() && batch.size() < BATCH_PER_THREAD * threads) {
      T item = items.next();
      batch.add(workers.submit(() -> work.apply(item)));
    }
    return batch;
  }

  private static <R> R outcome(Future<R> future) {
    // The outcome of one that is done is returned even to a thread that is interrupted.
    requireNotInterrupted();
    try {
      return future.get();
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw interrupted(interrupted);
    } catch (ExecutionException failure) {
      throw asByOneThread(failure);
    }
  }

  /** The same failure whatever the number of threads. */
  private static RuntimeException asByOneThread(ExecutionException failure) {
    if (failure.getCause() instanceof Error error) {
      throw error;
    }
    return failure.getCause() instanceof RuntimeException exception
        ? exception
        : new IllegalStateException("the check failed", failure.getCause());
  }

  private static void requireNotInterrupted() {
    if (Thread.currentThread().isInterrupted()) {
      throw interrupted(null);
    }
  }

  private static IllegalStateException interrupted(@Nullable Throwable cause) {
    return new IllegalStateException("the check was interrupted", cause);
  }

  /** Ends the threads, and waits for what they are in the middle of. */
  @Override
  public void close() {
    if (pool == null) {
      return;
    }
    pool.shutdownNow();
    boolean interrupted = Thread.interrupted();
    try {
      pool.awaitTermination(MOST_SECONDS_TO_END, TimeUnit.SECONDS);
    } catch (InterruptedException again) {
      interrupted = true;
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
