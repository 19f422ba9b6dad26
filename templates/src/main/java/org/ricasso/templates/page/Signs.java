package org.ricasso.templates.page;

/** The signs of ISO 7010 by code. Their titles stand in the words of pages; a code without one keeps its shape. */
final class Signs {
    private static final String TITLES = "signs.";

    private Signs() {}

    static WorkInstruction.Sign of(String code, PageWords words) {
        return new WorkInstruction.Sign(code, words.has(TITLES + code) ? words.say(TITLES + code) : "", shape(code));
    }

    /** ISO 7010 says the category by the code's letter. */
    private static String shape(String code) {
        if (!code.matches("[WPMEF]\\d{3}")) {
            return "none";
        }
        return switch (code.charAt(0)) {
            case 'W' -> "warning";
            case 'P' -> "prohibition";
            case 'M' -> "mandatory";
            case 'E' -> "safe";
            default -> "fire";
        };
    }
}
