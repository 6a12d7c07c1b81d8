package org.headhouse.linter.source;

/**
 * Limits that keep one file from using up the machine: reading stops at the first that is passed.
 *
 * @param bytes the largest file, less than 2 GiB
 * @param depth the deepest nesting, aliases followed
 * @param nodes the most values after every alias is written out
 */
public record Limits(int bytes, int depth, int nodes) {

  /** 1 MiB, 64 levels, 200 000 values: a site of 255 units has about 64 KiB, 5 levels, 6000. */
  public static final Limits DEFAULT = new Limits(1 << 20, 64, 200_000);

  public Limits {
    if (bytes < 1 || depth < 1 || nodes < 1) {
      throw new IllegalArgumentException("a limit must be at least 1");
    }
    if (bytes == Integer.MAX_VALUE) {
      throw new IllegalArgumentException("a file must be smaller than 2 GiB");
    }
  }
}
