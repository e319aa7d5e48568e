package org.footwell.parts.plan;

import org.footwell.calculation.text.Words;

/** What an id is looked for among. */
enum OutputsOf implements Words {
  OF_AMPLIFIER
}
