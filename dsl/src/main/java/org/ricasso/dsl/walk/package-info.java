/**
 * The walk: a workpiece is carried through a route, step by step, with needs, rules and what each step leaves; then
 * characteristics are judged, remedies tried by walking again, and findings on one value put together.
 */
package org.ricasso.dsl.walk;
