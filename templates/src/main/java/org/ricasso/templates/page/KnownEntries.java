package org.ricasso.templates.page;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The entries of the shipped vocabulary that have a place of their own on a page. Nothing else in this module names an
 * entry; a vocabulary that has none of these gets plain tables.
 */
final class KnownEntries {
    /** Of a product: what it is called on the floor, which state of the text this is, since when it holds. */
    static final String NUMBER = "number";
    static final String REVISION = "revision";
    static final String RELEASED = "released";

    /** Entries of a product that stand in the head of every sheet. */
    static final Set<String> IN_THE_HEAD = Set.of(NUMBER, REVISION, RELEASED);

    /** Of an operation: the dangers of the step. */
    static final String CAUTIONS = "cautions";

    /** Of an operation: what has to be at hand besides what its settings name, and what it uses up. */
    static final String TOOLING = "tooling";
    static final String CONSUMABLES = "consumables";

    /** Of a caution: what hurts, when, what to do, and the codes of its signs in ISO 7010. */
    static final String THING = "thing";
    static final String MOMENT = "moment";
    static final String ACT = "act";
    static final String SIGNS = "signs";

    /** Attributes of an operation that speak to the rules and not to a person at work. */
    static final Set<String> FOR_THE_RULES = Set.of("forges", "anneals", "hardens", "quenches", "chills", "tempers",
            "heats", "cuts", "bends", "abrades", "wets", "alkaline", "sharpens", "marks", "mounts", "tumbles", "welds",
            "packs", "inspects", "hones", "carries", "neutralises", "clamps-tang", "lasers", "throws", "use", "twin", "source");

    /** Of a work centre: protective equipment, emergency facts, whom to ask; as the works typed them. */
    static final String WEAR = "wear";
    static final String EMERGENCY = "emergency";
    static final String ASK = "ask";

    /** Entries of a work centre that have a place of their own, or that speak to the check alone. */
    static final Set<String> CENTRE_ELSEWHERE = Set.of(WEAR, EMERGENCY, ASK, "is", "scatter", "outline-scatter",
            "hole-scatter", "angle-scatter", "mass-scatter", "uniformity", "bow", "piece-heat", "inhibitor");

    /** Of a measurement: the limit of an in-process characteristic, which the page shows as the limit anyway. */
    static final String LIMIT = "limit";

    /** The parts of a measurement in the order in which an inspector asks for them; page words say what they are called. */
    static final List<String> MEASUREMENT = List.of("gauge", "sample", "place", "how", "why", "guard-band", "reaction");

    /** Parts of a measurement that speak to the check alone. */
    static final Set<String> MEASUREMENT_ELSEWHERE = Set.of(LIMIT, "accepted-ratio", "accepted-why");

    /**
     * What a page says of a thing that a measurement names.
     *
     * @param onOneLine whether it is said behind the thing's title, else each on a line of its own
     * @param entries its entries; page words say what they are called
     */
    record Said(boolean onOneLine, List<String> entries) {}

    /** By the thing's kind. In a gauge the entry may stand in a block of what it reads. */
    static final Map<String, Said> OF_A_THING = Map.of(
            "gauge", new Said(true, List.of("number", "due", "look", "resolution", "uncertainty")),
            "reaction", new Said(false, List.of("piece", "others", "restarts")));

    private KnownEntries() {}
}
