package org.footwell.calculation;

import java.util.List;

/**
 * An answer without its sentences, as the row of a table has room for.
 *
 * @param result the numbers, unrounded
 * @param codes codes of the findings, each once, worst first
 * @param verdict the worst finding
 */
public record Brief<R>(R result, List<String> codes, Verdict verdict) {}
