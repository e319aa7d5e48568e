package org.footwell.calculation;

import org.footwell.calculation.text.Reader;

/**
 * What a view draws: names and wishes stand in the request, numbers in the answer.
 *
 * @param reader for whom
 */
public record Shown<Q extends Record, R extends Record>(
    Q request, Answer<R> answer, Reader reader) {}
