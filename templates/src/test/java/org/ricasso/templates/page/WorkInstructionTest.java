package org.ricasso.templates.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** The page of a step read as a person at the machine reads it: from the top, aloud. */
class WorkInstructionTest {
    private static final Map<String, String> PAGES = Pages.of(TestHouses.small());

    @Test
    void theTemperingPageReadAloud() {
        assertThat(Pages.text(PAGES.get("ab-2120/step-170.html"))).containsSubsequence(
                "170 Temper", "at temper-3 Tempering furnace 3", "AB-2120", "Cook's knife, 200 mm", "Revision C",
                "Released 2026-09-14", "Comes from 155 Quench", "Goes to 200 Test the hardness",
                "Before you start", "W017 Hot surface", "P010 Do not touch",
                "The rack burns – when it looks black – use tongs, put it down in the marked area",
                "Protective equipment: from risk assessment RA-12: heat gloves, visor", "Ask: the process engineer",
                "What arrives", "Structure as-quenched or tempered Only a hardened blade is tempered.",
                "Since quench : max 4 h , counted from step 155 Quench", "Time out of step 155", "Time in here",
                "Set", "Temperature 180 ± 5 °C", "Hold 2 h", "Cycles 1 default", "Set-up: 15 min.",
                "Run: 4 h per load computed",
                "Do", "Set 180 ± 5 °C for 2 h .",
                "Measure", "Temperature", "180 ± 5 °C", "Watched while the step works. The setting is its limit.",
                "Gauge Furnace recorder",
                "Hand on", "The next step looks at nothing that changes here.",
                "What else this step changes", "Hardness 56.2 to 57.1 HRC computed, with scatter 54.7 to 58.6 HRC", "Structure tempered",
                "Your site's safety rules, the machine maker's manual and your training come first.");
    }

    @Test
    void theClockStandsOnTheStepThatStartsItToo() {
        assertThat(Pages.text(PAGES.get("ab-2120/step-155.html"))).containsSubsequence(
                "First step of the route", "Hand on", "Since quench : max 4 h , until step 170 Temper",
                "Time out of here", "Step 170 looks at:", "Structure as-quenched");
    }

    @Test
    void whatIsMeasuredIsToldInFull() {
        assertThat(Pages.text(PAGES.get("ab-2120/step-200.html"))).containsSubsequence(
                "Last step of the route", "Hardness", "55 to 58 HRC", "Gauge Rockwell C bench (no. G-031, reads to 0.1 HRC)",
                "How many 5 per load", "Where tang flat, 20 mm behind the bolster", "If not right Hold the load",
                "This piece: hold the whole load, red card", "Start again: the process engineer, in writing",
                "Straightness", "max 0.4 mm", "The specification does not ask for it.",
                "Why grinding needs it straight", "If not right Hold the load, as above");
    }

    @Test
    void protectiveEquipmentIsNeverMadeUp() {
        assertThat(Pages.text(PAGES.get("ab-2120/step-200.html")))
                .contains("Protective equipment: not stated by the works. Ask before you start.");
    }

    @Test
    void aDraftSaysSoOnEverySheetAndAReleasedOneNowhere() {
        Pages.html(PAGES).forEach((path, page) -> {
            if (path.startsWith("ab-1109/")) {
                assertThat(Pages.text(page)).as(path)
                        .contains("DRAFT Nobody has released this sheet. Do not make parts from it.")
                        .contains("DRAFT, not released");
                assertThat(page).as(path).contains("2c  DRAFT").contains("class=\"watermark\"");
            } else if (path.startsWith("ab-2120/")) {
                assertThat(page).as(path).doesNotContain("DRAFT");
            }
        });
        assertThat(Pages.text(PAGES.get("index.html"))).containsSubsequence("AB-1109", "DRAFT, not released",
                "AB-2120", "Released 2026-09-14");
    }

    @Test
    void aSettingIsSetOffInTheLine() {
        assertThat(PAGES.get("ab-2120/step-170.html"))
                .contains("Set <strong>180\u00A0±\u00A05\u00A0°C</strong> for <strong>2\u00A0h</strong>.");
    }
}
