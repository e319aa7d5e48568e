package org.footwell.web.request;

import org.footwell.calculation.Answer;

/** A request that was read, and its answer. */
public record Answered<Q extends Record, R extends Record>(Q request, Answer<R> answer) {}
