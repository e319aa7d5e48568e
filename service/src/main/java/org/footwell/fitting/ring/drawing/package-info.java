/** Rings as geometry, as a solid and as drawings; what fits is judged elsewhere. */
package org.footwell.fitting.ring.drawing;
