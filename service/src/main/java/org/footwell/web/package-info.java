/**
 * The service as callers meet it: routes, settings, start and stop. Handlers are all alike: read,
 * compute, render. The only room that knows HTTP and JSON.
 */
package org.footwell.web;
