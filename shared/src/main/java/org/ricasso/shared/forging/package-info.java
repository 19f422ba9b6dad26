/** Forging: stock, upsetting and press loads. */
package org.ricasso.shared.forging;
