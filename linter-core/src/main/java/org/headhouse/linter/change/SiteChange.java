package org.headhouse.linter.change;

import java.util.List;
import org.headhouse.linter.materials.BillOfMaterials;
import org.headhouse.linter.materials.MaterialChange;
import org.headhouse.linter.stability.Internal;

/** How one site differs between two states of a repository. */
public sealed interface SiteChange {

  /** The id of the site, or the path of its file where it has none. */
  String site();

  /** The path of the file: the later one where there is one. */
  String file();

  /**
   * A site that was not there.
   *
   * @param materials of the whole line
   */
  record Added(String site, String file, int units, BillOfMaterials materials)
      implements SiteChange {}

  /** A site that is no longer there. */
  record Removed(String site, String file, int units) implements SiteChange {}

  /**
   * A site that is there in both states.
   *
   * @param earlierFile the path that it had
   * @param differences none where, for example, only comments differ
   * @param materials what the work needs; nothing where there is no plan for it
   */
  record Changed(
      String site,
      String file,
      String earlierFile,
      List<Difference> differences,
      FieldWork work,
      List<Consequence> consequences,
      MaterialChange materials)
      implements SiteChange {
    @Internal
    public Changed {
      differences = List.copyOf(differences);
      consequences = List.copyOf(consequences);
    }
  }

  /**
   * A file of which one of the states cannot be read as a site.
   *
   * @param reason a clause without a full stop
   */
  record Unreadable(String site, String file, String reason) implements SiteChange {}
}
