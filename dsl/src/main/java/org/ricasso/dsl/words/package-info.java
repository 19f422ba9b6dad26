/**
 * Words: what stands for the texts that a house prints in other languages than the one that they are written in.
 *
 * <p>{@link org.ricasso.dsl.words.PrintedTexts} finds the texts, {@link org.ricasso.dsl.words.WordsLoader} joins them to
 * the words that are given for them, and {@link org.ricasso.dsl.words.Words} answers what stands for a text. Words that
 * are out of date are not answered with: the text itself is better than what it said once.
 */
package org.ricasso.dsl.words;
