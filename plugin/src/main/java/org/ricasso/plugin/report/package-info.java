/**
 * What other tools read: findings as SARIF 2.1.0 and as XML with a case a product, and the resolved house as JSON with its
 * schema.
 */
package org.ricasso.plugin.report;
