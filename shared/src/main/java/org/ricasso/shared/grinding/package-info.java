/** Grinding with wheels and belts. */
package org.ricasso.shared.grinding;
