/**
 * Expressions: checked against the vocabulary into {@link org.ricasso.dsl.evaluate.Node nodes}, and evaluated over bands
 * with three-valued comparisons, derivations on demand.
 */
package org.ricasso.dsl.evaluate;
