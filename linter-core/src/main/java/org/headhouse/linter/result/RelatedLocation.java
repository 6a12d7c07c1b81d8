package org.headhouse.linter.result;

import java.io.Serializable;

/** Another location of a result, and what is to be seen there. */
public record RelatedLocation(Location location, String text) implements Serializable {}
