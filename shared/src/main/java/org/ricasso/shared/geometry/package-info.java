/** Geometry of the blade: flank, edge, scallops and serrations, outline and mass, angles at wheel and stone. */
package org.ricasso.shared.geometry;
