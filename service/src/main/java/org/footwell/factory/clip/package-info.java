/** Where an output begins to clip: distortion by volume step, and what to set by it. */
package org.footwell.factory.clip;
