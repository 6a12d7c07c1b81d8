package org.headhouse.linter.report.sheet;

/** A thing and what is said of it. */
record Fact(String name, String value) {}
