package org.ricasso.templates.page;

import org.ricasso.dsl.walk.Brought;

/**
 * A piece of knowledge that does not come with the tool.
 *
 * @param label what it is: operation, table, calculation, steel …
 * @param name its name
 * @param title what it is called, or empty where that is its name
 * @param library the library that brought it; empty for the works' own
 * @param place file and line, or the class of a calculation
 * @param replaces whether it stands in place of what comes with the tool
 */
public record Knowledge(String label, String name, String title, String library, String place, boolean replaces) {
    static Knowledge of(Brought brought, Tongue tongue) {
        String label = switch (brought.what()) {
            case "operation", "table", "calculation" -> tongue.say("knowledge." + brought.what());
            default -> tongue.kind(brought.what());
        };
        String title = tongue.typeset(new Where.Owner(brought.what(), brought.name()), brought.title());
        return new Knowledge(label, brought.name(), title.equals(brought.name()) ? "" : title,
                brought.origin().library(), brought.place(), brought.replaces());
    }
}
