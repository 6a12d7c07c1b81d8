package org.headhouse.linter.schema;

/** The kinds of file that have a published schema. */
public enum FileKind {
  SITE("site.schema.json"),
  DEVICE_TYPES("device-types.schema.json"),
  POLICY("policy.schema.json");

  private final String schema;

  FileKind(String schema) {
    this.schema = schema;
  }

  /** The name of the schema's file. */
  public String schemaFile() {
    return schema;
  }
}
