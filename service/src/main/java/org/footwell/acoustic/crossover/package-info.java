/** Where to part the bands: how low and how high each way may be used, and with which slope. */
package org.footwell.acoustic.crossover;
