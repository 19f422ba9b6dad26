/** Cutting the blank from sheet: press tools and laser. */
package org.ricasso.shared.blanking;
