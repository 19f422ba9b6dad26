package org.ricasso.dsl.trial.faults;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A mistake that an engineer makes in a knife.
 *
 * @param kind the kind of mistake
 * @param what what was done, without the knife's name, so that the same mistake in two knives is called the same
 * @param knife the knife with the mistake
 * @param where where a foreman points at, whatever is said of it: {@code step 30}, {@code step 30 hold} for a setting or measurement,
 *     {@code spec blade.steel}
 * @param lacking whether he also points at what lacks something now, as the second opinion says
 */
record Fault(String kind, String what, WrittenKnife knife, Set<String> where, boolean lacking) {

    static String step(int id) {
        return "step " + id;
    }

    static String in(int id, String name) {
        return "step " + id + " " + name;
    }

    static String spec(String path) {
        return "spec " + path;
    }

    static Set<String> places(String... places) {
        return Stream.of(places).collect(Collectors.toCollection(java.util.TreeSet::new));
    }

    /** The stretch of a text that a place is; null if there is none any more. */
    static KnifeText.Stretch stretch(KnifeText text, String place) {
        List<String> words = List.of(place.split(" "));
        if (words.get(0).equals("spec")) {
            return text.entry(words.get(1));
        }
        int id = Integer.parseInt(words.get(1));
        return words.size() == 2 ? text.step(id) : text.in(id, words.get(2));
    }

    @Override
    public String toString() {
        return knife.name() + ": " + kind + ": " + what;
    }
}
