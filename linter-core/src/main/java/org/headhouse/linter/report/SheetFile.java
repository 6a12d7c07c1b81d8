package org.headhouse.linter.report;

/**
 * A page that belongs beside the page of a site, without references but for links.
 *
 * @param name without a folder
 */
@SuppressWarnings("ArrayRecordComponent") // Written to a file, and never compared.
public record SheetFile(String name, byte[] content) {}
