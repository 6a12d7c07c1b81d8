package org.headhouse.linter.schema;

import org.headhouse.linter.source.Place;
import org.headhouse.linter.yaml.Cursor;

/**
 * Where an error points.
 *
 * @param cursor at the value
 * @param owner the key of the value; for an item of a list its first key
 * @param called what the value is called in a sentence
 */
record ErrorLocation(Cursor cursor, Place owner, String called) {}
