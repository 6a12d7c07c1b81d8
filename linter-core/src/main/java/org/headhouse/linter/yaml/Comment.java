package org.headhouse.linter.yaml;

import org.headhouse.linter.source.Region;

/**
 * A comment.
 *
 * @param region from the number sign to the end of the line
 * @param text what follows the number sign, spaces around it stripped
 */
public record Comment(Region region, String text) {}
