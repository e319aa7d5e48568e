/** Sentences: their templates, what fills them, and who reads them. */
package org.footwell.calculation.text;
