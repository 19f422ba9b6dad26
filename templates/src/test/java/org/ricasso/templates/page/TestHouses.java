package org.ricasso.templates.page;

import static org.ricasso.dsl.house.TestThings.thing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Edit;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.evaluate.Margin;
import org.ricasso.dsl.evaluate.Filled;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.walk.CheckedHouse;
import org.ricasso.dsl.walk.CheckedProduct;
import org.ricasso.dsl.walk.CheckedStep;
import org.ricasso.dsl.walk.Judgement;
import org.ricasso.dsl.walk.Outcome;
import org.ricasso.shared.quantity.Interval;
import org.ricasso.shared.quantity.Measure;
import org.ricasso.shared.quantity.Quantity;
import org.ricasso.shared.quantity.Shown;
import org.ricasso.shared.quantity.Unit;

/**
 * Checked houses made by hand: a small knife works (invented), and the same with every text passed through a function,
 * so that hostile texts reach every place of every page.
 */
final class TestHouses {
    private static final Unit CELSIUS = new Unit("°C", Measure.TEMPERATURE.dimension(), 1, 273.15, true, 0);
    private static final Unit HRC = new Unit("HRC", Measure.HARDNESS.dimension(), 1, 0, true, 1);
    private static final Unit MM = Unit.of("mm", Measure.LENGTH.dimension(), 0.001, 2);
    private static final Unit HOUR = Unit.of("h", Measure.DURATION.dimension(), 3600, 1);

    private final UnaryOperator<String> text;
    private final SourceFile file;

    private TestHouses(UnaryOperator<String> text) {
        this.text = text;
        this.file = new SourceFile(t("knives/cooks-200.ricasso"),
                t("    blade {") + "\n" + t("        roughness: max 0.4 µm") + "\n", false);
    }

    /** Two knives of three steps, one released, one a draft, with a finding. */
    static CheckedHouse small() {
        return of(UnaryOperator.identity());
    }

    /** The small house with each of its texts changed. */
    static CheckedHouse of(UnaryOperator<String> text) {
        TestHouses make = new TestHouses(text);
        Diagnostic finding = make.finding();
        return new CheckedHouse(List.of(make.knife("paring-90", "AB-1109", "Paring knife, 90 mm", false, List.of()),
                make.knife("cooks-200", "AB-2120", "Cook's knife, 200 mm", true, List.of(finding))), List.of(),
                List.of(finding));
    }

    private String t(String plain) {
        return text.apply(plain);
    }

    private CheckedProduct knife(String name, String number, String title, boolean released,
            List<Diagnostic> findings) {
        Thing steel = thing("steel", t("1.4116"), t("X50CrMoV15"), Map.of());
        Value hardness = number(HRC, 55, 58, "55..58 HRC");
        Value spine = new Value.Along(List.of(
                new Value.Station("heel", 0, quantity(MM, 0.0027, 0.0029, "2.8 ± 0.1 mm")),
                new Value.Station("tip - 10 mm", 0.19, quantity(MM, 0.0011, 0.0013, "1.2 ± 0.1 mm"))));
        Map<String, Value> edge = new LinkedHashMap<>();
        edge.put("behind", number(MM, 0.00025, 0.00035, "0.30 ± 0.05 mm"));
        Map<String, Value> blade = new LinkedHashMap<>();
        blade.put("steel", new Value.Ref(steel));
        blade.put("hardness", hardness);
        blade.put("spine", spine);
        blade.put("grind", Value.Words.of("flat"));
        blade.put("roughness", new Value.Absent("blade.roughness"));
        blade.put("edge", new Value.Entries(edge));
        Map<String, Value> entries = new LinkedHashMap<>();
        entries.put("number", new Value.Txt(t(number)));
        entries.put("revision", new Value.Txt(t("C")));
        entries.put("released", released ? new Value.Date("2026-09-14") : new Value.Absent("released"));
        entries.put("looks", new Value.Txt(t("zones A and B as LS-07")));
        entries.put("blade", new Value.Entries(blade));
        Thing product = thing("knife", name, t(title), entries, Set.of("blade.grind"));

        List<CheckedStep> steps = List.of(quench(), temper(), bench(hardness));
        List<Outcome> outcomes = List.of(
                new Outcome("blade.hardness", "blade.hardness", hardness, predicted(), Outcome.Made.AIMED, 170,
                        List.of(200)),
                new Outcome("blade.spine", "blade.spine", spine, spine, Outcome.Made.PROVED, 155, List.of()),
                new Outcome("blade.edge.behind", "blade.edge-thickness", edge.get("behind"),
                        number(MM, 0.00028, 0.00033, null), Outcome.Made.PROVED, 155, List.of(200)));
        List<Judgement> judgements = List.of(
                new Judgement("quench-before-temper", t("A blade is quenched before it is tempered"), 170,
                        Judgement.Verdict.HOLDS, "", List.of()),
                new Judgement("edge-behind", t("The edge keeps its thickness"), 155, Judgement.Verdict.HOLDS, "",
                        List.of(new Margin(null, 0.00007, 0.00002, MM, 2))),
                new Judgement("roughness-reached", t("The last belt leaves the roughness"), 0,
                        Judgement.Verdict.NOT_JUDGED, t("blade.roughness is not written"), List.of()),
                new Judgement("delay", t("A quenched blade does not wait"), 155, Judgement.Verdict.FAILS,
                        t("waits up to 5 h"), List.of()));
        return new CheckedProduct(product, steps, outcomes, judgements, findings,
                List.of(new CheckedProduct.Loop(200, 170, "blade.hardness", 2)));
    }

    private CheckedStep quench() {
        return new CheckedStep(155, "quench", t("Quench"), t("Makes the blade hard."), t("Blade"), Map.of(), null,
                List.of(new CheckedStep.Setting("medium", Value.Words.of("nitrogen"), false)), List.of(),
                List.of(Filled.plain(t("Open the valve."))), List.of(),
                List.of(new CheckedStep.HandOver("blade.since-quench", "since-quench", new Value.Clock(0)),
                        new CheckedStep.HandOver("blade.structure", "structure", Value.Words.of("as-quenched"))),
                Double.NaN, null, span());
    }

    private CheckedStep temper() {
        Map<String, Value> centre = new LinkedHashMap<>();
        centre.put("is", Value.Words.of("tempering-furnace"));
        centre.put("load", new Value.Txt(t("200 kg")));
        centre.put("wear", new Value.Txt(t("from risk assessment RA-12: heat gloves, visor")));
        centre.put("ask", new Value.Txt(t("the process engineer")));
        Thing furnace = thing("centre", t("temper-3"), t("Tempering furnace 3"), centre);
        Map<String, Value> hot = new LinkedHashMap<>();
        hot.put("thing", new Value.Txt(t("The rack burns")));
        hot.put("moment", new Value.Txt(t("when it looks black")));
        hot.put("act", new Value.Txt(t("use tongs, put it down in the marked area")));
        hot.put("signs", new Value.Several(List.of(new Value.Txt("W017"), new Value.Txt("P010"))));
        Map<String, Value> attributes = new LinkedHashMap<>();
        attributes.put("cautions", new Value.Several(List.of(
                new Value.Ref(thing("caution", "hot-rack", t("Hot rack"), hot)),
                new Value.Txt(t("Blades may fall")))));
        attributes.put("tempers", Value.Words.of("yes"));
        attributes.put("smell", new Value.Txt(t("none")));
        return new CheckedStep(170, "temper", t("Temper"),
                t("Gives the hardened blade toughness for a little of its hardness."), t("Blade"), attributes, furnace,
                List.of(new CheckedStep.Setting("temperature", number(CELSIUS, 448.15, 458.15, "180 ± 5 °C"), false),
                        new CheckedStep.Setting("hold", number(HOUR, 7200, 7200, "2 h"), false),
                        new CheckedStep.Setting("cycles", number(Unit.NONE, 1, 1, "1"), true)),
                List.of(new CheckedStep.Arrival("blade.structure", "structure", t("as-quenched or tempered"),
                                t("only a hardened blade is tempered"), Value.Words.of("as-quenched"), null, 0),
                        new CheckedStep.Arrival("blade.since-quench", "since-quench", t("max 4 h"),
                                t("a quenched blade left cold may crack"), new Value.Clock(1800), null, 155)),
                List.of(Filled.plain(t("Load the rack so that no blade touches another.")),
                        Filled.plain(t("Set 180 ± 5 °C for 2 h."))), List.of(),
                List.of(new CheckedStep.Watched("temperature", number(CELSIUS, 448.15, 458.15, "180 ± 5 °C"),
                        Map.of("gauge", new Value.Ref(thing("gauge", "recorder", t("Furnace recorder"), Map.of()))))),
                List.of(new CheckedStep.HandOver("blade.hardness", "hardness", predicted()),
                        new CheckedStep.HandOver("blade.structure", "structure", Value.Words.of("tempered"))),
                List.of("blade.spine"), 900, new Value.Rate(quantity(HOUR, 14400, 14400, null), "load"), span(), List.of());
    }

    private CheckedStep bench(Value hardness) {
        Map<String, Value> reading = new LinkedHashMap<>();
        reading.put("resolution", number(HRC, 0.1, 0.1, "0.1 HRC"));
        Map<String, Value> gauge = new LinkedHashMap<>();
        gauge.put("number", new Value.Txt(t("G-031")));
        gauge.put("hardness", new Value.Entries(reading));
        Map<String, Value> reaction = new LinkedHashMap<>();
        reaction.put("piece", new Value.Txt(t("hold the whole load, red card")));
        reaction.put("restarts", new Value.Txt(t("the process engineer, in writing")));
        Map<String, Value> entries = new LinkedHashMap<>();
        Value hold = new Value.Ref(thing("reaction", "hold-load", t("Hold the load"), reaction));
        entries.put("reaction", hold);
        entries.put("gauge", new Value.Ref(thing("gauge", "rockwell-c", t("Rockwell C bench"), gauge)));
        entries.put("sample", new Value.Rate(quantity(Unit.NONE, 5, 5, "5"), "load"));
        entries.put("place", new Value.Txt(t("tang flat, 20 mm behind the bolster")));
        return new CheckedStep(200, "test-hardness", t("Test the hardness"), t("Shows what the heat left."), t("Blade"),
                Map.of(), thing("centre", t("hardness-bench"), t("hardness-bench"), Map.of()), List.of(), List.of(),
                List.of(), List.of(
                        new CheckedStep.Measured("blade.hardness", "hardness", hardness, true, entries),
                        new CheckedStep.Measured("blade.straightness", "straightness",
                                number(MM, Double.NEGATIVE_INFINITY, 0.0004, "max 0.4 mm"), false,
                                Map.of("why", new Value.Txt(t("grinding needs it straight")), "reaction", hold))),
                List.of(), Double.NaN, null, span());
    }

    private Diagnostic finding() {
        return Diagnostic.warning("roughness-not-written", new Mark(span(), t("no step is asked for a roughness")))
                .and(new Mark(new Span(file, 0, 3), t("the blade stands here")))
                .because(t("a belt leaves what it leaves"))
                .also(t("the finish is satin"))
                .remedy(new Remedy(t("write the roughness"), List.of(new Edit(span(), t("max 0.5 µm")))))
                .source(t("common practice"));
    }

    private Span span() {
        int start = file.lineStart(2);
        return new Span(file, start, start + Math.min(4, file.lineText(2).length()));
    }

    /** Aim 56.2..57.1, with scatter 54.7..58.6. */
    private static Value predicted() {
        return new Value.Num(new Quantity(Measure.HARDNESS, new Interval(56.2, 57.1), new Interval(54.7, 58.6),
                Double.NaN, Shown.in(HRC)));
    }

    private static Value number(Unit unit, double least, double most, String written) {
        return new Value.Num(quantity(unit, least, most, written));
    }

    private static Quantity quantity(Unit unit, double least, double most, String written) {
        Interval band = new Interval(least, most);
        return new Quantity(unit.measure(), band, band, band.isSingle() ? least : Double.NaN,
                new Shown(unit, unit.decimals(), written));
    }

    /** A house that has nothing of the shipped vocabulary: a bakery. */
    static CheckedHouse bakery() {
        Map<String, Value> crust = new LinkedHashMap<>();
        crust.put("colour", Value.Words.of("brown"));
        Map<String, Value> entries = new LinkedHashMap<>();
        entries.put("flour", new Value.Ref(thing("flour", "rye", "Rye flour", Map.of())));
        entries.put("crust", new Value.Entries(crust));
        Thing loaf = thing("loaf", "farmhouse", "Farmhouse loaf", entries);
        Map<String, Value> attributes = new LinkedHashMap<>();
        attributes.put("smells-of", new Value.Txt("bread"));
        Map<String, Value> measurement = new LinkedHashMap<>();
        measurement.put("nose", new Value.Ref(thing("nose", "baker", "The baker's nose", Map.of())));
        SourceFile text = new SourceFile("loaves.bakery", "loaf farmhouse", false);
        CheckedStep bake = new CheckedStep(10, "bake", "Bake", null, "Loaf", attributes,
                thing("oven", "oven-1", "Deck oven", Map.of("stone", new Value.Txt("chamotte"))),
                List.of(new CheckedStep.Setting("heat", number(CELSIUS, 503.15, 513.15, "235 ± 5 °C"), false)),
                List.of(new CheckedStep.Arrival("dough", "dough", "risen", null, Value.Words.of("risen"), null, 0)),
                List.of(Filled.plain("Bake at 235 ± 5 °C.")),
                List.of(new CheckedStep.Measured("crust", "crust", Value.Words.of("brown"), true, measurement)),
                List.of(new CheckedStep.HandOver("crust", "crust", Value.Words.of("brown"))), Double.NaN, null,
                new Span(text, 0, 4));
        List<CheckedStep> steps = new ArrayList<>(List.of(bake));
        return new CheckedHouse(List.of(new CheckedProduct(loaf, steps, List.of(new Outcome("crust.colour", "crust",
                Value.Words.of("brown"), Value.Words.of("brown"), Outcome.Made.PROVED, 10, List.of(10))), List.of(),
                List.of(), List.of())), List.of(), List.of());
    }
}
