/** The vocabulary: all that the texts declare, checked, in the order units, kinds, workpiece, tables, operations, rules. */
package org.ricasso.dsl.vocabulary;
