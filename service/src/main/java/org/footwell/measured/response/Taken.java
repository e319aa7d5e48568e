package org.footwell.measured.response;

import org.footwell.recording.Recording;

/** What one microphone position heard of one channel. */
public interface Taken {

  /** Id of the channel that played. */
  String channel();

  /** Id of the microphone position. */
  String microphone();

  Recording recording();
}
