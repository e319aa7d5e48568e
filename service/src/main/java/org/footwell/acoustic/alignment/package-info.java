/** When each loudspeaker plays: delays, trims and crossovers at the listening positions. */
package org.footwell.acoustic.alignment;
