package org.ricasso.dsl.vocabulary;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Node;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.evaluate.Reads;
import org.ricasso.dsl.evaluate.TextNode;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.Span;

/**
 * An operation, checked against the vocabulary.
 *
 * @param name its name
 * @param title its title
 * @param purpose what it is for
 * @param at the types of work centre it may run at; empty where none are named
 * @param works the part it works, or null for the whole piece
 * @param takes its settings
 * @param needs what it needs of the piece
 * @param lets in-between values, in order
 * @param leaves what it leaves
 * @param disturbs slots that it can change if out of control
 * @param measures slots that its steps may measure
 * @param joins parts that it makes part of the piece
 * @param attributes its attributes by name, defaults filled in
 * @param setUp time to set up, or null
 * @param run time a step takes, or null
 * @param instruct the work, line by line
 * @param span where it is declared
 * @param letNames the names of the in-between values, in their order
 */
public record Operation(String name, String title, String purpose, List<Thing> at, String works, List<EntryType> takes,
        List<Need> needs, List<Node> lets, List<Leave> leaves, Set<Integer> disturbs, Set<Integer> measures, Set<String> joins,
        Map<String, Value> attributes, Node setUp, Node run, List<TextNode> instruct, Span span,
        List<String> letNames) {
    public Operation {
        at = List.copyOf(at);
        takes = List.copyOf(takes);
        needs = List.copyOf(needs);
        lets = List.copyOf(lets);
        leaves = List.copyOf(leaves);
        disturbs = Collections.unmodifiableSet(disturbs);
        measures = Collections.unmodifiableSet(measures);
        joins = Collections.unmodifiableSet(joins);
        attributes = Collections.unmodifiableMap(new LinkedHashMap<>(attributes));
        instruct = List.copyOf(instruct);
        letNames = List.copyOf(letNames);
    }

    /** A condition on the piece that arrives. */
    public record Need(Property property, Node condition, String complaint, Reads reads, Span span) {}

    /** A property and what the operation leaves it at. */
    public record Leave(Property property, Node value, Reads reads) {}

    /** The index of a setting, or -1. */
    public int setting(String setting) {
        for (int i = 0; i < takes.size(); i++) {
            if (takes.get(i).name().equals(setting)) {
                return i;
            }
        }
        return -1;
    }
}
