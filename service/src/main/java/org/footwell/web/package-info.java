/**
 * The service as callers meet it: routes, formats, problem answers, limits, pages. Handlers are all
 * alike: read, compute, render. The only package that knows HTTP and JSON.
 */
package org.footwell.web;
