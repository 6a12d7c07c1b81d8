package org.headhouse.linter.growth;

import java.lang.management.ManagementFactory;

final class Explore {
  public static void main(String[] a) {
    var m = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
    int f = Integer.parseInt(a[0]);
    for (Growing g : Growing.values()) {
      if (a.length > 1 && !g.name().matches(a[1])) continue;
      int n = g.few();
      double[] t = new double[3];
      double[] b = new double[3];
      int[] z = new int[3];
      String err = "";
      g.work(n).run();
      g.work(2 * n).run();
      for (int i = 0; i < 3; i++) {
        int k = n * f / 1 << i;
        if (g.few() == 60 && f > 1 && !g.name().contains("SITE")) k = n << i;
        Work w = g.work(k);
        z[i] = w.bytes();
        long b0 = m.getCurrentThreadAllocatedBytes(), t0 = m.getCurrentThreadCpuTime();
        try {
          w.run();
        } catch (Throwable e) {
          err = e.toString();
        }
        t[i] = (m.getCurrentThreadCpuTime() - t0) / 1e6;
        b[i] = (m.getCurrentThreadAllocatedBytes() - b0) / 1e6;
      }
      System.out.printf(
          "%-22s %7d %8d B alloc %8.1f %8.1f %8.1f MB x%.1f  cpu %7.0f %7.0f %7.0f ms x%.1f %s%n",
          g,
          n * f,
          z[2],
          b[0],
          b[1],
          b[2],
          (b[2] - b[1]) / (b[1] - b[0]),
          t[0],
          t[1],
          t[2],
          (t[2] - t[1]) / Math.max(1, (t[1] - t[0])),
          err);
    }
  }
}
