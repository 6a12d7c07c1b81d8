package org.headhouse.linter.draft;

import org.headhouse.linter.result.Location;
import org.headhouse.linter.result.Message;

/** Something in a list that is not understood, or that no line can have. */
public record ListFault(Location location, Message message) {}
