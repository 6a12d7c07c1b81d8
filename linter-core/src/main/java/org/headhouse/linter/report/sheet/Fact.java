package org.headhouse.linter.report.sheet;

/** A name and its value, as a sheet prints them. */
record Fact(String name, String value) {}
