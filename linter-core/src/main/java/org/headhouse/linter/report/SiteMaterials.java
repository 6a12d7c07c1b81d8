package org.headhouse.linter.report;

import org.headhouse.linter.materials.BillOfMaterials;

/**
 * The materials of one site.
 *
 * @param customer empty where the file names none
 * @param site its id, or the path of its file where it has none
 * @param stage as the file has it; empty where it is not known
 */
public record SiteMaterials(String customer, String site, String stage, BillOfMaterials bill) {}
