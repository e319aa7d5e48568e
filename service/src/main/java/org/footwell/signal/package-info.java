/** Digital signals: spectra, windows, envelopes, deconvolution, sections. No calculation of its own. */
package org.footwell.signal;
