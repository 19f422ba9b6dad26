/** Judging rules, and running their examples. */
package org.ricasso.dsl.rules;
