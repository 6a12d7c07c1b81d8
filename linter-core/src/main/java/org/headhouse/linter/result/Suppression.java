package org.headhouse.linter.result;

import java.io.Serializable;

/**
 * That a result was accepted on purpose, in the site's own file.
 *
 * @param justification why, in the words of the site's keeper
 * @param location where it is written
 */
public record Suppression(String justification, Location location) implements Serializable {}
