/** Tests of the service over HTTP; every exchange is held against the contract. */
package org.footwell.web;
