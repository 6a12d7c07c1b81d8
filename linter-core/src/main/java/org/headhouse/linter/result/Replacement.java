package org.headhouse.linter.result;

import java.io.Serializable;
import org.headhouse.linter.source.Region;

/**
 * Other text for a region.
 *
 * @param region may be empty: then the text is inserted
 * @param text may be empty: then the region is deleted
 */
public record Replacement(Region region, String text) implements Serializable {}
