/**
 * The reference: the language, all that the texts declare, and all findings, as a set of pages that are linked with one
 * another. It knows no name of the vocabulary, so it holds whatever the texts of a works and its libraries declare.
 */
package org.ricasso.templates.reference;
