/** What can be asked about any calculation as a whole: knows the core and no calculation by name. */
package org.footwell.analysis;
