/** Sheets for people: figures, pages and the same on paper; knows no topic. */
package org.footwell.sheet;
