/**
 * Heat treatment of blade steels: transformation, hardness, tempering, diffusion, corrosion. Compositions are plain
 * fractions (0.005 for 0.5 %) of what is <em>dissolved in the austenite</em>: the ladle's carbon in a formula for
 * martensite is the commonest mistake, since part of it stays in carbides.
 */
package org.ricasso.shared.metallurgy;
