package org.footwell.client;

import java.util.List;
import org.footwell.client.model.Finding;
import org.footwell.client.model.Step;
import org.footwell.client.model.Verdict;

/** The answer to a calculation put to a plan, with the request that was read from it. */
public record OfPlan<Q, R>(
    Q request,
    R result,
    List<Finding> findings,
    Verdict verdict,
    List<String> safety,
    List<Step> workings) {}
