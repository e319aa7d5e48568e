package org.footwell.analysis;

/**
 * A path as a caller wrote it.
 *
 * @param path dotted or a JSON Pointer
 * @param at where it stands in the request of the analysis, as a JSON Pointer
 */
public record Said(String path, String at) {}
