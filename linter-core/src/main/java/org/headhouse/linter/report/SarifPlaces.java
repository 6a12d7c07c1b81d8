package org.headhouse.linter.report;

import org.headhouse.linter.result.Location;
import org.headhouse.linter.source.Region;

/** Places in files, as SARIF 2.1.0 has them (chapters 3.4, 3.29 and 3.30). */
record SarifPlaces(RepositoryPaths paths) {
  /** What names of files start at: the root of the repository. */
  private static final String ROOT = "SRCROOT";

  /** Says what the names of files start at, but not where that is on this machine. */
  void bases(JsonWriter json) {
    if (paths.root() != null) {
      json.writeObjectPropertyStart("originalUriBaseIds");
      json.writeObjectPropertyStart(ROOT);
      text(json, "description", "The root of the git repository.");
      json.writeEndObject();
      json.writeEndObject();
    }
  }

  /** Says which commit of which repository the root has (chapters 3.14.16 and 3.23). */
  void provenance(JsonWriter json) {
    VersionControl known =
        paths.root() == null ? null : VersionControl.of(paths.root()).orElse(null);
    if (known == null) {
      return;
    }
    json.writeArrayPropertyStart("versionControlProvenance");
    json.writeStartObject();
    json.writeStringProperty("repositoryUri", known.repository());
    if (known.revision() != null) {
      json.writeStringProperty("revisionId", known.revision());
    }
    if (known.branch() != null) {
      json.writeStringProperty("branch", known.branch());
    }
    json.writeObjectPropertyStart("mappedTo");
    json.writeStringProperty("uriBaseId", ROOT);
    json.writeEndObject();
    json.writeEndObject();
    json.writeEndArray();
  }

  void physical(JsonWriter json, Location location) {
    json.writeObjectPropertyStart("physicalLocation");
    artifact(json, location.file());
    region(json, "region", location.region());
    json.writeEndObject();
  }

  void artifact(JsonWriter json, String file) {
    json.writeObjectPropertyStart("artifactLocation");
    json.writeStringProperty("uri", UriText.of(paths.of(file)));
    if (paths.isFromRoot(file)) {
      json.writeStringProperty("uriBaseId", ROOT);
    }
    json.writeEndObject();
  }

  static void region(JsonWriter json, String property, Region region) {
    json.writeObjectPropertyStart(property);
    json.writeNumberProperty("startLine", region.startLine());
    json.writeNumberProperty("startColumn", region.startColumn());
    json.writeNumberProperty("endLine", region.endLine());
    json.writeNumberProperty("endColumn", region.endColumn());
    json.writeEndObject();
  }

  static void text(JsonWriter json, String property, String text) {
    json.writeObjectPropertyStart(property);
    json.writeStringProperty("text", text);
    json.writeEndObject();
  }
}
