/** How a calculation in Java is made callable from the language: one registration with source, units, range and sense. */
package org.ricasso.shared.calculation;
