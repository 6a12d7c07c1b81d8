package org.headhouse.linter.report;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import java.util.TreeMap;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.headhouse.linter.source.Sha256;
import org.headhouse.linter.stability.Internal;

/**
 * Writes a bundle as a ZIP file (APPNOTE.TXT of the ZIP format, version 2.0), in a folder of its
 * name. The same content gives the same bytes: entries are in the order of their names, have one
 * fixed time, and are stored, as what compresses differs from one Java to the next.
 */
@Internal
public final class BundleZip {
  /** The digest of every other file, as {@code sha256sum --check} reads it. */
  public static final String DIGESTS = "SHA256SUMS.txt";

  /** Times of ZIP files start in 1980; its first day stands for none with some readers. */
  private static final LocalDateTime TIME = LocalDateTime.of(1980, 2, 1, 0, 0);

  private BundleZip() {}

  /** Reads what was written before. */
  @FunctionalInterface
  public interface Sheets {
    /**
     * The content of one file.
     *
     * @param name of a file of the sheets, as it was handed over
     */
    byte[] read(String name) throws IOException;
  }

  /**
   * Writes the bundle; the stream is left open. One file at a time is in memory.
   *
   * @param sheets has the files that the bundle names
   */
  public static void write(SiteBundle bundle, Sheets sheets, OutputStream out) throws IOException {
    TreeMap<String, Content> contents = new TreeMap<>();
    bundle.sheets().forEach(name -> contents.put(name, () -> sheets.read(name)));
    bundle.further().forEach(file -> contents.put(file.name(), file::content));
    StringBuilder digests = new StringBuilder();
    ZipOutputStream zip = new ZipOutputStream(out, UTF_8);
    for (var file : contents.entrySet()) {
      byte[] bytes = file.getValue().read();
      digests.append(Sha256.hex(bytes)).append("  ").append(file.getKey()).append('\n');
      add(zip, bundle.name() + "/" + file.getKey(), bytes);
    }
    add(zip, bundle.name() + "/" + DIGESTS, digests.toString().getBytes(UTF_8));
    zip.finish();
  }

  private interface Content {
    byte[] read() throws IOException;
  }

  private static void add(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
    CRC32 crc = new CRC32();
    crc.update(bytes);
    ZipEntry entry = new ZipEntry(name);
    entry.setMethod(ZipEntry.STORED);
    entry.setSize(bytes.length);
    entry.setCrc(crc.getValue());
    entry.setTimeLocal(TIME);
    zip.putNextEntry(entry);
    zip.write(bytes);
    zip.closeEntry();
  }
}
