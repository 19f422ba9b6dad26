package org.ricasso.dsl.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ricasso.dsl.diagnostics.Findings;
import org.ricasso.dsl.evaluate.EntryType;
import org.ricasso.dsl.evaluate.Type;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.syntax.Declaration;
import org.ricasso.dsl.vocabulary.Operation;
import org.ricasso.dsl.vocabulary.Vocabulary;

/**
 * Each shipped operation has all its parts. That each of its texts is said in German, with the titles of its tooling, consumables
 * and cautions, is held by the test of shipped words.
 */
class OperationPartsTest {
    private static final Vocabulary VOCABULARY = TrialHouse.whole().vocabulary(new Findings());
    /** Operations that ask nothing of the piece: any piece may be wiped, and any may lie in a magnet's field. */
    private static final Set<String> ASK_NOTHING = Set.of("demagnetise", "wipe-clean");
    private static final Pattern TWIN = Pattern.compile("([a-z-]+(?:, [a-z-]+)*): (.{20,})");

    static Stream<Operation> operations() {
        return VOCABULARY.operations().stream().filter(o -> o.span().file().shipped());
    }

    @ParameterizedTest
    @MethodSource("operations")
    void hasAllItsParts(Operation operation) {
        List<String> missing = new ArrayList<>();
        missing.add(operation.purpose().isBlank() ? "purpose" : null);
        missing.add(operation.at().isEmpty() ? "centres that it runs at" : null);
        operation.takes().stream().filter(setting -> isNumber(setting.type()) && setting.within() == null)
                .forEach(setting -> missing.add("range of " + setting.name()));
        missing.add(operation.needs().isEmpty() != ASK_NOTHING.contains(operation.name()) ? "needs, or their reason" : null);
        boolean inspects = Value.Words.of("yes").equals(operation.attributes().get("inspects"));
        missing.add(operation.leaves().isEmpty() && !inspects ? "leaves, or that it inspects" : null);
        for (String attribute : List.of("tooling", "consumables", "cautions", "source")) {
            missing.add(operation.attributes().containsKey(attribute) ? null : attribute);
        }
        missing.add(operation.setUp() == null || operation.run() == null ? "time" : null);
        missing.add(operation.instruct().size() < 2 ? "lines of work" : null);
        assertThat(missing.stream().filter(Objects::nonNull)).isEmpty();
    }

    /** What says that nothing is at hand or used up stands alone. */
    @ParameterizedTest
    @MethodSource("operations")
    void nothingIsSaidAlone(Operation operation) {
        for (String attribute : List.of("tooling", "consumables")) {
            List<String> names = names(operation.attributes().get(attribute));
            assertThat(names).doesNotHaveDuplicates();
            assertThat(names.size() == 1 || names.stream().noneMatch(n -> n.startsWith("no-"))).as("%s of %s", attribute, operation.name()).isTrue();
        }
    }

    @Test
    void whatIsDeclaredIsUsed() {
        for (String kind : List.of("tooling", "consumable")) {
            Set<String> used = new TreeSet<>();
            operations().forEach(o -> used.addAll(names(o.attributes().get(kind.equals("tooling") ? "tooling" : "consumables"))));
            assertThat(VOCABULARY.things(kind)).extracting(Thing::name).containsExactlyElementsOf(used);
        }
    }

    /** Whatever takes a thing that is of one use says for which work. */
    @Test
    void whatTakesAToolSaysForWhichWork() {
        assertThat(operations().filter(o -> o.takes().stream().anyMatch(t -> t.type() instanceof Type.ThingOf of
                && VOCABULARY.entries(of.kind()).containsKey("use")) && !o.attributes().containsKey("use")).map(Operation::name)).isEmpty();
    }

    /** Two operations with the same needs and leaves are one, unless each of them says why they are two; and no other says so. */
    @Test
    void twinsAreNamedAndJustified() {
        Map<String, Set<String>> alike = new TreeMap<>();
        operations().forEach(o -> alike.computeIfAbsent(asksAndLeaves(o), k -> new TreeSet<>()).add(o.name()));
        Map<String, String> found = new TreeMap<>();
        alike.values().stream().filter(names -> names.size() > 1).forEach(names -> names.forEach(name ->
                found.put(name, names.stream().filter(n -> !n.equals(name)).collect(Collectors.joining(", ")))));
        Map<String, String> justified = new TreeMap<>();
        operations().filter(o -> o.attributes().containsKey("twin")).forEach(o -> {
            Matcher twin = TWIN.matcher(((Value.Txt) o.attributes().get("twin")).text());
            assertThat(twin.matches()).as("twin of %s: names, then a reason", o.name()).isTrue();
            justified.put(o.name(), twin.group(1));
        });
        assertThat(justified).isEqualTo(found).isNotEmpty();
    }

    private static String asksAndLeaves(Operation operation) {
        Stream<String> needs = operation.needs().stream().map(n -> "needs " + n.property().path() + ": " + line(n.condition().span().text()));
        Stream<String> leaves = VOCABULARY.operationText(operation.name()).leaves().stream().filter(Declaration.Effect.Leave.class::isInstance)
                .map(Declaration.Effect.Leave.class::cast).map(l -> "leaves "
                        + VOCABULARY.propertyFor(operation.works(), l.path().text()).path() + ": " + line(l.value().span().text()));
        return Stream.concat(needs, leaves).sorted().collect(Collectors.joining("\n"));
    }

    private static String line(String text) {
        return text.strip().replaceAll("\\s+", " ");
    }

    private static List<String> names(Value value) {
        return (value instanceof Value.Several several ? several.values().stream() : Stream.of(value))
                .map(v -> ((Value.Ref) v).thing().name()).toList();
    }

    private static boolean isNumber(Type type) {
        Type element = type instanceof Type.ListOf list ? list.element() : type;
        return element instanceof Type.Measured || element instanceof Type.AlongAxis;
    }
}
