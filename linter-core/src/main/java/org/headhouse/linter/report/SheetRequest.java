package org.headhouse.linter.report;

import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.materials.Slack;
import org.headhouse.linter.stability.Internal;

/**
 * What sheets are made with.
 *
 * @param measure the units that lengths are shown in
 * @param paper what the sheets are printed on
 * @param slack the cable that is ordered beyond the measured lengths
 * @param history what is known of earlier states of the files, so that a certificate has earlier
 *     proofs, and says where the line was changed after its record
 * @param bundles whether bundles for customers are wanted
 */
@Internal
public record SheetRequest(
    Measure measure, Paper paper, Slack slack, SiteHistory history, boolean bundles) {}
