package org.footwell.calculation;

import java.util.List;

/**
 * An answer without its sentences and lists, as the row of a table has room for.
 *
 * @param values the result's single values in the order of its {@link Shape#columns}, unrounded;
 *     null where there is none
 * @param codes codes of the findings, each once, worst first
 * @param verdict the worst finding
 */
public record Brief(List<Object> values, List<String> codes, Verdict verdict) {}
