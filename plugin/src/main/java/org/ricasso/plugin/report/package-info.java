/** Findings for other tools: SARIF 2.1.0. */
package org.ricasso.plugin.report;
