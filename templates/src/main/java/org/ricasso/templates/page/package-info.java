/**
 * The pages of a house: view models made from a checked house, and the renderer that lays them out.
 *
 * <p>{@link org.ricasso.templates.page.PageRenderer} is the door. A view model is a record of texts, truths and lists;
 * a template only lays it out. Entries of the shipped vocabulary are named in {@link
 * org.ricasso.templates.page.KnownEntries} alone; whatever that class does not know is shown as a plain table.
 */
package org.ricasso.templates.page;
