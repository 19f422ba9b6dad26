/** The grammar's tree: records with spans, and the parser that makes them. No ANTLR type leaves this package. */
package org.ricasso.dsl.syntax;
