package org.ricasso.dsl.walk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.ricasso.dsl.evaluate.Axis;
import org.ricasso.dsl.evaluate.Comparison;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Frame;
import org.ricasso.dsl.evaluate.Input;
import org.ricasso.dsl.evaluate.Margin;
import org.ricasso.dsl.evaluate.Node;
import org.ricasso.dsl.evaluate.Property;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.RouteStep;
import org.ricasso.dsl.vocabulary.Operation;
import org.ricasso.dsl.vocabulary.Rule;
import org.ricasso.dsl.vocabulary.Vocabulary;

/** Notes, while a route is walked, which pass left each property as it is, and how. */
final class Passes {
    /** The pass that left a property which is taken for what a need asks, since a finding says that it is not. */
    private static final String ASSUMED = "assumed";
    private final Vocabulary vocabulary;
    private final Map<Value[], String[]> leavers = new IdentityHashMap<>();
    private final Map<String, Frame> frames = new HashMap<>();
    private final Map<String, Integer> counts = new HashMap<>();
    private final List<Account.Left> start = new ArrayList<>();
    private final List<Account.Pass> passes = new ArrayList<>();
    private final List<Account.Judged> judged = new ArrayList<>();
    private final Map<String, Map<String, Computed>> axes = new TreeMap<>();

    Passes(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    void begin(Value[] state, Frame frame) {
        String[] left = new String[state.length];
        leavers.put(state, left);
        for (Property property : vocabulary.properties()) {
            if (property.starts() != null) {
                left[property.slot()] = Account.START;
                start.add(new Account.Left(property, state[property.slot()],
                        Computed.of("starts " + property.path(), property.starts(), frame), List.of()));
            }
        }
        for (Axis axis : vocabulary.axes()) {
            Map<String, Computed> places = new TreeMap<>();
            for (String station : axis.stationNames()) {
                Node place = vocabulary.stationOf(axis, station);
                if (place != null) {
                    places.put(station, Computed.of("axis " + axis.name() + " " + station, place, frame));
                }
            }
            axes.put(axis.name(), places);
        }
    }

    /** A part comes into the piece with all that its own route left. */
    void joinedIn(Value[] state, Value[] piece, Value[] alone, String part) {
        String[] left = leavers.get(piece).clone();
        for (Property property : vocabulary.properties()) {
            if (part.equals(property.part())) {
                left[property.slot()] = leavers.get(alone)[property.slot()];
            }
        }
        leavers.put(state, left);
    }

    /** A step that nobody knows says nothing. */
    void unknown(Value[] state) {
        leavers.put(state, new String[state.length]);
    }

    /**
     * A step was done.
     *
     * @param index its place in the walk
     * @param from the state as the step before left it; the frame holds what the step made of it
     */
    void step(int index, RouteStep step, Value[] from, Frame frame) {
        Operation operation = step.operation();
        String key = key(step.number());
        String[] before = leavers.get(from).clone();
        for (int slot = 0; slot < before.length; slot++) {
            if (frame.before[slot] != from[slot]) {
                before[slot] = ASSUMED;
            }
        }
        Computed.Leaver leaver = state -> before[state.property().slot()];
        String name = "operation " + operation.name() + " ";
        Map<String, Computed> defaults = new LinkedHashMap<>();
        for (int i = 0; i < step.settings().length; i++) {
            EntryType setting = operation.takes().get(i);
            if (step.settings()[i] == null) {
                defaults.put(setting.name(), Computed.of(name + "default " + setting.name(), setting.byDefault(), frame, leaver));
            }
        }
        List<Account.Asked> asked = new ArrayList<>();
        Map<String, Integer> needs = new HashMap<>();
        for (Operation.Need need : operation.needs()) {
            int nth = needs.merge(need.property().path(), 1, Integer::sum);
            asked.add(new Account.Asked(need.property(), Computed.of(name + "needs " + need.property().path()
                    + (nth == 1 ? "" : " " + nth), need.condition(), frame, leaver), leavers.get(from)[need.property().slot()]));
        }
        Map<String, Computed> between = new LinkedHashMap<>();
        for (int i = 0; i < operation.lets().size(); i++) {
            String let = operation.letNames().get(i);
            between.put(let, Computed.of(name + "let " + let, operation.lets().get(i), frame, leaver));
        }
        String[] after = before.clone();
        for (int slot = 0; slot < after.length; slot++) {
            // what was assumed for the step's sake alone
            after[slot] = frame.after[slot] == from[slot] ? leavers.get(from)[slot] : after[slot];
        }
        List<Account.Left> leaves = new ArrayList<>();
        for (Operation.Leave leave : operation.leaves()) {
            Property property = leave.property();
            leaves.add(new Account.Left(property, frame.after[property.slot()],
                    Computed.of(name + "leaves " + property.path(), leave.value(), frame, leaver), List.of()));
            after[property.slot()] = key;
        }
        for (Property property : vocabulary.properties()) {
            int slot = property.slot();
            if (frame.after[slot] instanceof Value.Clock && !key.equals(after[slot]) && frame.after[slot] != frame.before[slot]) {
                leaves.add(new Account.Left(property, frame.after[slot], null, Arrays.asList(before[slot])));
                after[slot] = key;
            }
        }
        leavers.put(frame.before, before);
        leavers.put(frame.after, after);
        // rules that are judged next put their own in-between values into the frame
        frames.put(key, frame.copy());
        passes.add(new Account.Pass(key, index, step, false, defaults, asked, between, leaves,
                time(operation.setUp(), name + "set-up", frame, leaver), time(operation.run(), name + "run", frame, leaver)));
        frame.clearNotes();
    }

    private static Computed time(Node node, String name, Frame frame, Computed.Leaver leaver) {
        return node == null ? null : Computed.of(name, node, frame, leaver);
    }

    /** The ways out of a loop come together. */
    void joined(int index, RouteStep step, Value[] state, Value[] one, Value[] other) {
        String key = key(step.number());
        String[] left = leavers.get(one).clone();
        String[] round = leavers.get(other);
        List<Account.Left> leaves = new ArrayList<>();
        for (Property property : vocabulary.properties()) {
            int slot = property.slot();
            if (!one[slot].equals(other[slot])) {
                leaves.add(new Account.Left(property, state[slot], null, Arrays.asList(left[slot], round[slot])));
                left[slot] = key;
            }
        }
        leavers.put(state, left);
        passes.add(new Account.Pass(key, index, step, true, Map.of(), List.of(), Map.of(), leaves, null, null));
    }

    /** @param number the step's number, 0 for the product */
    void judged(Rule rule, Rule.Form form, int number, Frame frame) {
        Computed.Leaver leaver = state -> leavers.get(state.after() ? frame.after : frame.before)[state.property().slot()];
        // conditions inside are judged as the rule judges
        frame.reach = rule.level() == Rule.Level.SAFETY;
        List<Account.Sides> sides = new ArrayList<>();
        for (Comparison comparison : form.require().comparisons()) {
            String name = "rule " + rule.name() + " compares " + (sides.size() + 1);
            Computed left = Computed.of(name + " left", comparison.left(), frame, leaver);
            Computed right = Computed.of(name + " right", comparison.right(), frame, leaver);
            Margin margin = Margin.of(comparison, left.value(), right.value());
            if (margin != null) {
                sides.add(new Account.Sides(left, right, margin));
            }
        }
        if (!sides.isEmpty()) {
            Map<String, Computed> between = new LinkedHashMap<>();
            for (int i = 0; i < form.lets().size(); i++) {
                String let = rule.syntax().lets().get(i).name().text();
                between.put(let, Computed.of("rule " + rule.name() + " let " + let, form.lets().get(i), frame, leaver));
            }
            judged.add(new Account.Judged(rule.name(), number, between, sides));
        }
        frame.reach = false;
        frame.clearNotes();
    }

    /** The pass that left a property as it is in a state, or null. */
    String leaver(Value[] state, int slot) {
        return leavers.get(state)[slot];
    }

    /** The pass of a key, or null where it is none: the beginning, or nothing known. */
    Account.Pass pass(String key) {
        return passes.stream().filter(pass -> pass.key().equals(key)).findFirst().orElse(null);
    }

    /** What the expressions of a pass saw. */
    Frame frame(String key) {
        return frames.get(key);
    }

    Account account(Value[] last) {
        Map<String, String> end = new TreeMap<>();
        for (Property property : vocabulary.properties()) {
            String left = leavers.get(last)[property.slot()];
            if (left != null) {
                end.put(property.path(), left);
            }
        }
        return new Account(start, passes, end, judged, axes);
    }

    private String key(int number) {
        int count = counts.merge(Integer.toString(number), 1, Integer::sum);
        return count == 1 ? Integer.toString(number) : number + "/" + count;
    }
}
