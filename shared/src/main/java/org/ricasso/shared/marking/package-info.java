/** Marking by electrolysis and laser. */
package org.ricasso.shared.marking;
