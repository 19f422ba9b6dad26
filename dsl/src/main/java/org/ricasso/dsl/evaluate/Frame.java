package org.ricasso.dsl.evaluate;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ricasso.dsl.house.Thing;

/** What an expression sees when it is evaluated. One frame serves one thread. */
public final class Frame {
    /** The product, the thing that a rule of a kind speaks of, the work centre; each may be null. */
    public Thing product;
    public Thing self;
    public Thing centre;
    /** The entries of the measurement that a rule speaks of, or null. */
    public Value.Entries block;
    /** What stands behind the further names of the scope. */
    public Map<String, Value> given = Map.of();
    /** The title of the step's operation, or null. */
    public String operation;
    /** The step's settings in the order of the operation. */
    public Value[] settings = {};
    /** In-between values in the order of their {@code let}. */
    public Value[] lets = {};
    /** The workpiece before and after the step, by slot. */
    public Value[] before = {};
    public Value[] after = {};
    /** Whether comparisons judge the reach rather than the aim. */
    public boolean reach;
    /** In a rule's example: what it binds, by path as written; else null. */
    public Map<String, Value> bound;
    /** In a rule's example: paths that were read and are not bound. */
    public final Set<String> missing = new FewSet<>();
    /** The path of an optional entry that was read and is not written, or null. */
    public String absent;
    /** Whether a value was unknown because of a fault that has been reported. */
    public boolean reported;
    /** Why values were unknown, in the order met. */
    public final List<Refusal> refusals = new ArrayList<>();
    /** Notes which knowledge is used; null when nobody asks. */
    public Uses uses;
    /** Records derivations; null when nobody asks why. */
    public Trace trace;

    /** Another frame that sees the same and has noted nothing. */
    public Frame copy() {
        Frame copy = new Frame();
        copy.product = product;
        copy.self = self;
        copy.centre = centre;
        copy.block = block;
        copy.given = given;
        copy.operation = operation;
        copy.settings = settings;
        copy.lets = lets;
        copy.before = before;
        copy.after = after;
        copy.reach = reach;
        copy.bound = bound;
        return copy;
    }

    /** Forgets what the last evaluation noted. */
    public void clearNotes() {
        absent = null;
        reported = false;
        refusals.clear();
        missing.clear();
    }

    /**
     * A table or calculation that gave no answer, or a property that nothing says.
     *
     * @param reason why, for people
     * @param reads what the refused argument reads
     * @param source where the knowledge comes from, or empty
     */
    public record Refusal(String reason, Reads reads, String source) {}
}
