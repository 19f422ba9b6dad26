/** The trade's knowledge: calculations in Java, and texts, found through {@link org.ricasso.shared.Shipped}. */
package org.ricasso.shared;
