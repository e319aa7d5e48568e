package org.footwell.parts.plan;

import org.footwell.calculation.text.Words;

/** Where in the sound stage a channel plays. */
public enum ChannelRole implements Words {
  FRONT,
  CENTRE,
  REAR,
  SUBWOOFER
}
