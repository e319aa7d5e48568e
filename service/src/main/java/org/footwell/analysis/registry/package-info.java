/** The analyses there are, one line each; above all of them. */
package org.footwell.analysis.registry;
