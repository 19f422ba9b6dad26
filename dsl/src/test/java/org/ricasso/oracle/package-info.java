/**
 * A second opinion on a route: a plain reading of the reference's rules of order and limits and of its windows of settings,
 * which stand beside it as tables. It works on lists of names and numbers and knows nothing of the language, of its texts or
 * of how they are checked; a test holds that it imports nothing of them.
 */
package org.ricasso.oracle;
