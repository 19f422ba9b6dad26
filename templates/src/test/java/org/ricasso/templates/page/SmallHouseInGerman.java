package org.ricasso.templates.page;

import java.util.Map;
import org.ricasso.dsl.words.TestWords;
import org.ricasso.dsl.words.Words;

/** German of the small house; its German lacks a line of the work and the names that begin with “s”. */
final class SmallHouseInGerman {
    static final Words WORDS = TestWords.of("de", Map.ofEntries(
            Map.entry("Cook's knife, 200 mm", "Kochmesser, 200 mm"),
            Map.entry("Paring knife, 90 mm", "Schälmesser, 90 mm"),
            Map.entry("zones A and B as LS-07", "Zonen A und B wie LS-07"),
            Map.entry("heel", "Ferse"),
            Map.entry("tip", "Spitze"),
            Map.entry("Quench", "Abschrecken"),
            Map.entry("Makes the blade hard.", "Macht die Klinge hart."),
            Map.entry("Temper", "Anlassen"),
            Map.entry("Gives the hardened blade toughness for a little of its hardness.",
                    "Gibt der gehärteten Klinge Zähigkeit für ein wenig ihrer Härte."),
            Map.entry("Test the hardness", "Härte prüfen"),
            Map.entry("Shows what the heat left.", "Zeigt, was die Wärme hinterlassen hat."),
            Map.entry("Open the valve.", "Das Ventil öffnen."),
            Map.entry("Set 180 ± 5 °C for 2 h.", "180 ± 5 °C für 2 h einstellen; 1.4116 nie über 0.5 h hinaus."),
            Map.entry("Tempering furnace 3", "Anlassofen 3"),
            Map.entry("from risk assessment RA-12: heat gloves, visor",
                    "aus Gefährdungsbeurteilung RA-12: Hitzehandschuhe, Visier"),
            Map.entry("the process engineer", "die Arbeitsvorbereitung"),
            Map.entry("The rack burns", "Das Gestell ist heiß"),
            Map.entry("when it looks black", "wenn es schwarz aussieht"),
            Map.entry("use tongs, put it down in the marked area", "Zange benutzen, auf der markierten Fläche abstellen"),
            Map.entry("Blades may fall", "Klingen können fallen"),
            Map.entry("only a hardened blade is tempered", "angelassen wird nur eine gehärtete Klinge"),
            Map.entry("a quenched blade left cold may crack", "eine abgeschreckte Klinge, die kalt liegt, kann reißen"),
            Map.entry("Rockwell C bench", "Rockwell-C-Gerät"),
            Map.entry("Hold the load", "Charge sperren"),
            Map.entry("hold the whole load, red card", "ganze Charge sperren, rote Karte"),
            Map.entry("the process engineer, in writing", "die Arbeitsvorbereitung, schriftlich"),
            Map.entry("tang flat, 20 mm behind the bolster", "Erlfläche, 20 mm hinter dem Kropf"),
            Map.entry("grinding needs it straight", "das Schleifen braucht sie gerade"),
            Map.entry("A blade is quenched before it is tempered", "Eine Klinge wird abgeschreckt, bevor sie angelassen wird"),
            Map.entry("The edge keeps its thickness", "Die Schneide behält ihre Dicke"),
            Map.entry("The last belt leaves the roughness", "Das letzte Band hinterlässt die Rauheit"),
            Map.entry("A quenched blade does not wait", "Eine abgeschreckte Klinge wartet nicht"),
            Map.entry("waits up to 5 h", "wartet bis zu 5 h"),
            Map.entry("none", "keiner")), Map.ofEntries(
            Map.entry("blade", "Klinge"),
            Map.entry("hardness", "Härte"),
            Map.entry("grind", "Schliff"),
            Map.entry("flat", "flach"),
            Map.entry("edge", "Schneide"),
            Map.entry("behind", "Dicke hinter der Schneide"),
            Map.entry("looks", "Aussehen"),
            Map.entry("medium", "Medium"),
            Map.entry("nitrogen", "Stickstoff"),
            Map.entry("as-quenched", "abgeschreckt"),
            Map.entry("tempered", "angelassen"),
            Map.entry("temperature", "Temperatur"),
            Map.entry("hold", "Haltezeit"),
            Map.entry("cycles", "Zyklen"),
            Map.entry("load", "Charge")));

    private SmallHouseInGerman() {}
}
