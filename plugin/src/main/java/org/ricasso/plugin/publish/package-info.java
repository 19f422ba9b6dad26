/** How a set of pages replaces the one before it. */
package org.ricasso.plugin.publish;
