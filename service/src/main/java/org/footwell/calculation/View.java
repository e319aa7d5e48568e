package org.footwell.calculation;

import java.util.function.Function;

/**
 * A result in another form than its numbers: a drawing, a solid, a sheet.
 *
 * @param format what a caller asks for, such as {@code stl}; also the ending of a file of it
 * @param mediaType what the answer is sent as; of its own among the views of a calculation
 * @param description what one gets
 * @param draw the form, of an answer with its request and reader; pure
 */
public record View<Q extends Record, R extends Record>(
    String format, String mediaType, String description, Function<Shown<Q, R>, byte[]> draw) {}
