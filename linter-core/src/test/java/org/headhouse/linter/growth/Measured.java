package org.headhouse.linter.growth;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;

/**
 * What a piece of work took of the thread that did it.
 *
 * @param bytes of the input
 * @param allocated in bytes
 * @param nanoseconds of the processor
 */
record Measured(int bytes, long allocated, long nanoseconds) {
  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  static Measured of(Work work) {
    long time = THREADS.getCurrentThreadCpuTime();
    long allocated = THREADS.getCurrentThreadAllocatedBytes();
    work.run();
    return new Measured(
        work.bytes(),
        THREADS.getCurrentThreadAllocatedBytes() - allocated,
        THREADS.getCurrentThreadCpuTime() - time);
  }
}
