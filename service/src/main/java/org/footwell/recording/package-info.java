/** What a recording is: its samples and rate, the rules for both, and how they are read of WAV. */
package org.footwell.recording;
