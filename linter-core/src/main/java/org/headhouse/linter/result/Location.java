package org.headhouse.linter.result;

import org.headhouse.linter.source.Region;

/**
 * A region of a file, with what is needed to show it when the file is no longer at hand.
 *
 * @param file how the file is called, with forward slashes
 * @param line the text of the region's first line, without its end, cut where it is very long
 */
public record Location(String file, Region region, String line) {}
