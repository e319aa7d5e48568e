/** How the balance of a sound changes with its level, by equal-loudness contours. */
package org.footwell.acoustic.loudness;
