/** The house: texts in, things and routes out, names resolved, inheritance done, every value typed. */
package org.ricasso.dsl.house;
