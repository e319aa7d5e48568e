/** When, with which polarity and how far above noise the sound of each channel arrives. */
package org.footwell.measured.arrival;
