/** Answers to questions about a house: one expression evaluated, one name explained. */
package org.ricasso.dsl.answer;
