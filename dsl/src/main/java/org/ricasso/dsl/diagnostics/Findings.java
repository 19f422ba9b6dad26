package org.ricasso.dsl.diagnostics;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.ricasso.dsl.source.Span;

/**
 * Collects what a stage finds. A place that has an error gets no second one of the same name; where another product takes
 * the value over, it is named beside it.
 */
public final class Findings {
    private static final String UNKNOWN = "unknown-name";
    private static final int OTHERS = 3;
    private static final int TAKERS = 6;
    private final List<Diagnostic> found = new ArrayList<>();
    /** Where in the list the first finding of a name at a place stands, and the first unknown name of a wording. */
    private final Map<Object, Integer> known = new HashMap<>();
    /** Those who take over the value of a finding, by where it stands in the list; where there are several findings of it. */
    private final Map<Integer, Set<Mark>> takers = new HashMap<>();
    private final boolean journal;
    private final Unreadable unreadable;
    private final Set<String> dropped;

    public Findings() {
        this(Unreadable.NOTHING);
    }

    /** @param unreadable what could not be read, so that what follows from it is no finding */
    public Findings(Unreadable unreadable) {
        this.unreadable = unreadable;
        this.dropped = new HashSet<>();
        this.journal = false;
    }

    private Findings(Findings parent, boolean journal) {
        this.unreadable = parent.unreadable;
        this.dropped = parent.dropped;
        this.journal = journal;
    }

    /** An empty collection that knows of the same text that could not be read. */
    public Findings apart() {
        return new Findings(this, false);
    }

    /**
     * An empty collection that keeps all it is given, for work that is done beside other work: adding {@link #all} of it
     * in the order of the texts gives what one after the other would have given.
     */
    public Findings journal() {
        return new Findings(this, true);
    }

    /** Notes that a declaration was dropped for a fault that is reported, so that its name is not known. */
    public void drop(String name) {
        dropped.add(name);
    }

    /** Adds findings of the syntax: of several on one line the first, since the rest of the line follows from it. */
    public void addSyntax(Collection<Diagnostic> diagnostics) {
        Set<List<?>> lines = new HashSet<>();
        for (Diagnostic diagnostic : diagnostics) {
            Span span = diagnostic.primary().span();
            if (lines.add(List.of(span.file(), span.line()))) {
                keep(diagnostic);
            }
        }
    }

    /** Adds a finding, unless it stands on a line that could not be read. */
    public void add(Diagnostic diagnostic) {
        if (journal) {
            found.add(diagnostic);
            return;
        }
        if (unreadable.marks(diagnostic.primary().span())) {
            return;
        }
        Integer samePlace = known.get(List.of(diagnostic.name(), diagnostic.primary().span()));
        Integer sameName = diagnostic.name().equals(UNKNOWN) ? known.get(diagnostic.primary().text()) : null;
        if (sameName != null && (samePlace == null || sameName < samePlace)) {
            // one name that is missing is one fault, wherever it is used
            Diagnostic other = found.get(sameName);
            found.set(sameName, other.others().size() < OTHERS
                    ? other.and(new Mark(diagnostic.primary().span(), "here too")) : other);
        } else if (samePlace == null) {
            keep(diagnostic);
        } else {
            share(samePlace, diagnostic);
        }
    }

    /** One value that several take over is one fault: told as its writer's where that has it too, with those who take it over. */
    private void share(int place, Diagnostic other) {
        Diagnostic kept = found.get(place);
        List<Mark> own = withoutTakers(kept);
        List<Mark> others = withoutTakers(other);
        boolean ofTaker = own.size() < kept.others().size();
        boolean ofWriter = others.size() == other.others().size();
        if (!ofTaker && ofWriter && !takers.containsKey(place)) {
            return;
        }
        Set<Mark> all = takers.computeIfAbsent(place, p -> new TreeSet<>(Mark.PLACES));
        kept.others().stream().filter(Mark::isTaker).forEach(all::add);
        other.others().stream().filter(Mark::isTaker).forEach(all::add);
        Diagnostic told = ofTaker && ofWriter ? other : kept;
        // what mends it has to mend it for all who have it
        List<Remedy> remedies = kept.remedies().stream().filter(r -> r.edits().isEmpty()
                || other.remedies().stream().anyMatch(o -> o.edits().equals(r.edits()))).toList();
        // its own marks say whether it is a taker's; all takers join what is told in the end
        found.set(place, new Diagnostic(told.name(), told.severity(), told.primary(), told.others(), told.because(), told.also(),
                remedies, told.sources()));
    }

    private static List<Mark> withoutTakers(Diagnostic diagnostic) {
        return diagnostic.others().stream().filter(mark -> !mark.isTaker()).toList();
    }

    private Diagnostic withTakers(int place) {
        Diagnostic told = found.get(place);
        Set<Mark> all = takers.get(place);
        if (all == null) {
            return told;
        }
        List<Mark> others = new ArrayList<>(withoutTakers(told));
        all.stream().limit(TAKERS).forEach(others::add);
        List<String> also = new ArrayList<>(told.also());
        if (all.size() > TAKERS) {
            also.add("taken over by " + (all.size() - TAKERS) + " more");
        }
        return new Diagnostic(told.name(), told.severity(), told.primary(), others, told.because(), also, told.remedies(),
                told.sources());
    }

    private void keep(Diagnostic diagnostic) {
        known.putIfAbsent(List.of(diagnostic.name(), diagnostic.primary().span()), found.size());
        if (diagnostic.name().equals(UNKNOWN)) {
            known.putIfAbsent(diagnostic.primary().text(), found.size());
        }
        found.add(diagnostic);
    }

    public void addAll(Collection<Diagnostic> diagnostics) {
        diagnostics.forEach(this::add);
    }

    public void error(String name, Span span, String text) {
        add(Diagnostic.error(name, new Mark(span, text)));
    }

    /** Whether a declaration could not be read at all, so that what is not there may be what was lost. */
    public boolean declarationLost() {
        return unreadable.declarationLost() || unreadable.ofVocabulary();
    }

    /** What a declaration of the vocabulary lacks; nothing where one could not be read whole, since that may be it. */
    public void missing(String name, Span span, String text) {
        if (!unreadable.ofVocabulary()) {
            error(name, span, text);
        }
    }

    /** An unknown name, with the names near it; the nearest is a remedy that can be applied. */
    public void unknownName(Span span, String what, String name, Collection<String> known) {
        if (unreadable.speaksOf(name) || dropped.contains(name)) {
            return;
        }
        Diagnostic diagnostic = Diagnostic.error(UNKNOWN, new Mark(span, "no " + what + " is named " + name));
        add(near(diagnostic, name, known));
    }

    /** A finding with the names near one that is not known; the one that is nearer than all others can be applied. */
    public static Diagnostic near(Diagnostic diagnostic, String name, Collection<String> known) {
        Diagnostic result = diagnostic;
        for (String one : Nearest.to(name, known)) {
            result = result.remedy(Nearest.only(name, known).equals(one)
                    ? new Remedy("write " + one, List.of(new Edit(diagnostic.primary().span(), one)))
                    : new Remedy("or is it " + one, List.of()));
        }
        return result;
    }

    /** An unknown name of a thing; nothing where a declaration could not be read, since it may be this one. */
    public void unknownThing(Span span, String kind, String name, Collection<String> known) {
        if (!unreadable.declarationLost()) {
            unknownName(span, kind, name, known);
        }
    }

    public boolean isEmpty() {
        return found.isEmpty();
    }

    public int count() {
        return found.size();
    }

    public List<Diagnostic> all() {
        return takers.isEmpty() ? List.copyOf(found) : IntStream.range(0, found.size()).mapToObj(this::withTakers).toList();
    }
}
