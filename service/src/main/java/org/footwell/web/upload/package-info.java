/** Requests with recordings: files and long rows of numbers, within the memory there is. */
package org.footwell.web.upload;
