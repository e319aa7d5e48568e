/** What an amplifier delivers: from its rails or its published ratings, into a load. */
package org.footwell.electrical.amplifier;
