package org.footwell.calculation;

import java.util.List;

/**
 * What a calculation came to, with nothing put into words.
 *
 * @param codes codes of the findings, each once, worst first
 * @param verdict the worst finding
 */
public record Outcome<R extends Record>(R result, List<String> codes, Verdict verdict) {}
