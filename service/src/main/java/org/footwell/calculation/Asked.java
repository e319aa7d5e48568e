package org.footwell.calculation;

import java.util.List;

/**
 * A request that was read from a document, as far as the document has it.
 *
 * @param request its parts and figures; null where the document has none
 * @param places where they stand in the document
 * @param missing JSON Pointers to what the document would need for it
 * @param posed whether the document has what the question is about, such as a box for that of a driver
 */
public record Asked<Q extends Record>(
    Q request, Rebase places, List<String> missing, boolean posed) {}
