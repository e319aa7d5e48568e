package org.footwell.calculation;

import java.util.List;

/**
 * What every calculation answers with.
 *
 * @param request what was asked, where it was read from a document; otherwise null
 * @param result the numbers, unrounded
 * @param findings what a fitter should know, worst first
 * @param verdict the worst finding
 * @param safety usual cautions
 * @param workings every step, when asked for; otherwise null
 */
public record Answer<R>(
    Record request,
    R result,
    List<Finding> findings,
    Verdict verdict,
    List<String> safety,
    List<Step> workings) {}
