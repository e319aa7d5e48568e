/** What is not a calculation: reference, contract, problem pages, metrics. */
package org.footwell.web.pages;
