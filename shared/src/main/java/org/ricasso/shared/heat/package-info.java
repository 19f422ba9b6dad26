/** Heating, cooling, thermal movement and the energy it takes. */
package org.ricasso.shared.heat;
