/** What load a network of voice coils is to the amplifier, and what the speaker cable does to it. */
package org.footwell.electrical.load;
