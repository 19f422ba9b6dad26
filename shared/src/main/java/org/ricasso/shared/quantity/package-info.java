/**
 * Quantities: dimensions, units, bands and how they are shown. The units themselves are text, in
 * {@code ricasso/vocabulary/units.ricasso}.
 */
package org.ricasso.shared.quantity;
