/** Digital signals: sections, their design and response. Shared by topics; no calculation. */
package org.footwell.signal;
