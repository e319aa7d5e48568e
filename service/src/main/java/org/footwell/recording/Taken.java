package org.footwell.recording;

/** What one microphone position heard of one channel. */
public interface Taken {

  /** Id of the channel that played. */
  String channel();

  /** Id of the microphone position. */
  String microphone();

  Recording recording();
}
