package org.footwell.client;

import java.util.List;
import org.footwell.client.model.Finding;
import org.footwell.client.model.Step;
import org.footwell.client.model.Verdict;

/** The answer to a single request; workings are there when they were asked for. */
public record Answer<R>(
    R result, List<Finding> findings, Verdict verdict, List<String> safety, List<Step> workings) {}
