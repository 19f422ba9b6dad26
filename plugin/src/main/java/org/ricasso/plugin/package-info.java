/** The goals of the Maven plugin, and how they read a house's texts and speak to the console. */
package org.ricasso.plugin;
