package org.headhouse.linter.report;

/**
 * A file that belongs beside the sheets.
 *
 * @param name without a folder
 */
@SuppressWarnings("ArrayRecordComponent") // Written to a file, and never compared.
public record SheetFile(String name, byte[] content) {}
