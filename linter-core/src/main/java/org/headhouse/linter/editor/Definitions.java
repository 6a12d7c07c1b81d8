package org.headhouse.linter.editor;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.site.DeviceType;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Alias;
import org.headhouse.linter.yaml.Node;
import org.jspecify.annotations.Nullable;

/** Where what is named at one place is written: an item of the chain, a device type, an anchor. */
final class Definitions {
  private final Workspace workspace;
  private final OpenText text;
  private final Positions positions;

  Definitions(Workspace workspace, OpenText text) {
    this.workspace = workspace;
    this.text = text;
    this.positions = text.positions();
  }

  /** The places; several where two items have one name. */
  List<Location> of(Position asked) throws UserError {
    Node.Valued root = YamlPath.tree(positions.source());
    YamlPath path = YamlPath.at(root, positions.region(asked));
    if (path == null) {
      return List.of();
    }
    List<Location> places = new ArrayList<>();
    if (path.node() instanceof Alias alias) {
      Node.Anchor anchor = alias.target().anchor();
      places.add(here(anchor == null ? alias.target().region() : anchor.region()));
      return places;
    }
    String named = path.text();
    if (named == null || path.isKey()) {
      return List.of();
    }
    if (path.takesName()) {
      for (ChainNames.Named one : ChainNames.of(root)) {
        if (one.name().text().equals(named)) {
          places.add(here(one.name().region()));
        }
      }
    } else if (path.key().equals("device-type")) {
      Location type = type(named);
      if (type != null) {
        places.add(type);
      }
    }
    return places;
  }

  private Location here(Region region) {
    return new Location(text.uri(), positions.range(region));
  }

  private @Nullable Location type(String id) throws UserError {
    DeviceTypes types = workspace.found(text).linter().deviceTypes();
    DeviceType type = types.get(id);
    SourceText source = types.source();
    if (source == null || !type.id().isGiven()) {
      return null;
    }
    Range range = new Positions(source, 0).range(type.id().place().region());
    return new Location(workspace.uri(source.path()), range);
  }
}
