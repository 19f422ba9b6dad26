/** Findings as data, and how they are printed. */
package org.ricasso.dsl.diagnostics;
