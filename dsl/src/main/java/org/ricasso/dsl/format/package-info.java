/**
 * The one layout of a text. It looks at braces, colons, bars and line ends, hardly at words, and checks its own result:
 * only blanks, line ends and signs with two spellings may differ from what was written.
 */
package org.ricasso.dsl.format;
