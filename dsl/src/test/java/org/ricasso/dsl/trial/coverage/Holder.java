package org.ricasso.dsl.trial.coverage;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.ricasso.dsl.catalogue.Catalogue;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.vocabulary.Operation;
import org.ricasso.dsl.vocabulary.Vocabulary;

/**
 * What holds a rule or a parameter of the reference: {@code need crop.structure}, {@code rule honed-at-once}.
 *
 * @param what a need, leave, range, setting, rule, finding, caution, property, table or calculation; an entry of a kind; the time of an operation
 * @param name its name; of an operation's need, leave, range or setting the operation's name and, behind a dot, its own
 */
public record Holder(String what, String name) {
    /** Those that a check judges. */
    static final Set<String> JUDGED = Set.of("need", "rule", "range", "finding");

    /** Those that a cell lists, with semicolons. */
    public static List<Holder> in(String cell) {
        return Arrays.stream(cell.split(";")).map(String::strip).filter(s -> !s.isEmpty()).map(s -> {
            String[] words = s.split(" ");
            if (words.length != 2) {
                throw new AssertionError("what and name: " + s);
            }
            return new Holder(words[0], words[1]);
        }).toList();
    }

    public String operation() {
        return name.substring(0, name.indexOf('.'));
    }

    /** What it is called in its operation. */
    public String own() {
        return name.substring(name.indexOf('.') + 1);
    }

    /** Whether the shipped texts hold it. */
    boolean exists(Vocabulary vocabulary) {
        return switch (what) {
            case "need" -> need(vocabulary) != null;
            case "leave" -> operation(vocabulary) != null
                    && operation(vocabulary).leaves().stream().anyMatch(l -> l.property().path().equals(path(vocabulary)));
            case "setting" -> setting(vocabulary) != null;
            case "range" -> setting(vocabulary) != null && (setting(vocabulary).within() != null || setting(vocabulary).usual() != null);
            case "rule" -> vocabulary.rule(name) != null;
            case "finding" -> Catalogue.shipped().entry(name) != null;
            case "caution" -> vocabulary.thing("caution", name) != null;
            case "entry" -> vocabulary.entryType(operation(), own()) != null;
            case "property" -> vocabulary.properties().stream().anyMatch(p -> p.path().equals(name));
            case "table" -> vocabulary.table(name) != null;
            case "calculation" -> vocabulary.calculation(name) != null;
            case "time" -> vocabulary.operation(name) != null && vocabulary.operation(name).run() != null;
            default -> throw new AssertionError("no such thing as a " + what);
        };
    }

    public Operation operation(Vocabulary vocabulary) {
        return vocabulary.operation(operation());
    }

    public Operation.Need need(Vocabulary vocabulary) {
        return operation(vocabulary) == null ? null : operation(vocabulary).needs().stream()
                .filter(n -> n.property().path().equals(path(vocabulary))).findFirst().orElse(null);
    }

    EntryType setting(Vocabulary vocabulary) {
        Operation operation = operation(vocabulary);
        return operation == null || operation.setting(own()) < 0 ? null : operation.takes().get(operation.setting(own()));
    }

    /** The property's path, which in an operation may be said without the part that it works. */
    private String path(Vocabulary vocabulary) {
        String works = operation(vocabulary).works();
        return own().contains(".") || works == null || vocabulary.property(works, own()) == null ? own() : works + "." + own();
    }

    @Override
    public String toString() {
        return what + " " + name;
    }
}
