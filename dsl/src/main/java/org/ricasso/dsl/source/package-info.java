/** Texts and places in them. */
package org.ricasso.dsl.source;
