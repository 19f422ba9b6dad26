/** Joining handle and blade: rivets, glue, welds, and how joined materials move against each other. */
package org.ricasso.shared.joining;
