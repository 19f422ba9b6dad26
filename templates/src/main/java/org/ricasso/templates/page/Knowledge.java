package org.ricasso.templates.page;

import org.ricasso.dsl.walk.Brought;

/**
 * A piece of knowledge that does not come with the tool.
 *
 * @param label what it is: operation, table, calculation, steel …
 * @param name what it is called: the title of an operation, else the name
 * @param title a thing's title, or empty
 * @param library the library that brought it; empty for the works' own
 * @param place file and line, or the class of a calculation
 * @param replaces whether it stands in place of what comes with the tool
 */
public record Knowledge(String label, String name, String title, String library, String place, boolean replaces) {
    static Knowledge of(Brought brought, Tongue tongue) {
        return switch (brought.what()) {
            // titles of tables and calculations have no words: they are known by their names in every language
            case "table" -> of(brought, tongue.say("knowledge.table"), brought.name(), "");
            case "calculation" -> of(brought, tongue.say("knowledge.calculation"), brought.name(), "");
            case "operation" -> of(brought, tongue.say("knowledge.operation"), title(brought, tongue), "");
            default -> of(brought, tongue.kind(brought.what()), brought.name(),
                    brought.title().equals(brought.name()) ? "" : title(brought, tongue));
        };
    }

    private static Knowledge of(Brought brought, String label, String name, String title) {
        return new Knowledge(label, name, title, brought.origin().library(), brought.place(), brought.replaces());
    }

    private static String title(Brought brought, Tongue tongue) {
        return tongue.typeset(new Where.Owner(brought.what(), brought.name()), brought.title());
    }
}
