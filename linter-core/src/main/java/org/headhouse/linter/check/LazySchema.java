package org.headhouse.linter.check;

import org.headhouse.linter.schema.FileKind;
import org.headhouse.linter.schema.SchemaCheck;
import org.jspecify.annotations.Nullable;

/** The schema of sites, read once a file is in doubt: most runs never need it. */
final class LazySchema {
  private @Nullable SchemaCheck schema;

  synchronized SchemaCheck get() {
    SchemaCheck loaded = schema;
    if (loaded == null) {
      loaded = new SchemaCheck(FileKind.SITE);
      schema = loaded;
    }
    return loaded;
  }
}
