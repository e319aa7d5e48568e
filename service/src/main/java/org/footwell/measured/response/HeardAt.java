package org.footwell.measured.response;

import org.footwell.recording.Recording;

/**
 * What one microphone position heard of a channel.
 *
 * @param weight how much the position counts
 */
public record HeardAt(Recording recording, double weight) {}
