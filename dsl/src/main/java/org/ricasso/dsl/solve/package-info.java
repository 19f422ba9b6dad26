/** Settings that are solved for: the search for one, and the lock that keeps what was found. */
package org.ricasso.dsl.solve;
