/**
 * What each finding means, by its name: texts by theme, each entry with what gives the finding, what is then printed, and the
 * same mended. How entries and messages are written is told in {@code guideline.md} beside them; tests hold all entries and
 * all messages to it.
 *
 * <p><b>To add a finding</b>: give it its name in the sources (as the first argument of {@code Diagnostic.error}), write its entry into
 * {@code src/main/resources/…/catalogue/<theme>.md} with {@code gives} and {@code mended}, and run the tests of this package with
 * {@code -Dricasso.golden=write}: what is printed is written into the fence {@code prints} (the tests then fail once, so that
 * somebody reads it). <b>To add a case of anything else</b> that a text does or gives, such as a way of overriding, write it into
 * {@code src/test/resources/…/catalogue/cases/<theme>.md} in the same form: see the head of {@code GoldenCasesTest}.
 */
package org.ricasso.dsl.catalogue;
