package org.ricasso.templates.page;

/**
 * A step with the place of its instruction.
 *
 * @param number its number
 * @param title its title
 * @param centre the name of its work centre, or empty
 * @param href where its instruction lies, seen from the page that holds this
 * @param fingerprint the fingerprint of its instruction, or empty where it does not matter
 */
public record StepLink(String number, String title, String centre, String href, String fingerprint) {}
