/** Inspection: hardness tests and what a sample can find. */
package org.ricasso.shared.quality;
