package org.ricasso.dsl;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.DiagnosticPrinter;
import org.ricasso.dsl.house.Texts;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.syntax.TokenDamage;
import org.ricasso.dsl.trial.TrialHouse;
import org.ricasso.shared.calculation.Calculation;

/** A house that is checked batch by batch is found to be what it is found to be at once. */
class LargeHouseTest {
    private static final int EVERY = Integer.getInteger("ricasso.damage.every", 53) * 11;
    private static final List<Calculation> CALCULATIONS = Ricasso.calculations(LargeHouseTest.class.getClassLoader());

    private static final String FAMILY = "cooks.ricasso";

    /** The demonstration house with some copies of a knife; nothing is to be solved, and nothing is said in other words. */
    private static Texts house() {
        Texts whole = TrialHouse.whole().texts();
        List<SourceFile> files = new ArrayList<>();
        for (SourceFile file : whole.files()) {
            if (file.shipped() || !file.text().contains("words de")) {
                files.add(file.shipped() ? file : new SourceFile(file.name(), solved(file.text()), false));
            }
        }
        String paring = solved(TrialHouse.whole().file(TrialHouse.PARING).text());
        for (int i = 1; i <= 3; i++) {
            files.add(file("copy-" + i, paring.replaceFirst("knife paring-90", "knife copy-" + i).replace("AB-1109", "AB-C" + i)));
        }
        return new Texts(files, whole.data());
    }

    /** What is made for the knife that is copied fits its copies, too. */
    private static String solved(String text) {
        return text.replaceAll("solve\\(hardness[^)]*\\)", "180 ± 5 °C")
                .replaceAll("fits:( +)paring-90, customer-90", "fits:$1paring-90, customer-90, copy-1, copy-2, copy-3");
    }

    private static SourceFile file(String name, String text) {
        return new SourceFile(name + ".ricasso", text, false);
    }

    private static Texts with(Texts texts, String name, java.util.function.UnaryOperator<String> change) {
        List<SourceFile> files = new ArrayList<>(texts.files());
        files.replaceAll(f -> f.name().equals(name) ? new SourceFile(name, change.apply(f.text()), f.shipped()) : f);
        assertThat(files).isNotEqualTo(texts.files());
        return new Texts(files, texts.data());
    }

    private static String printed(List<Diagnostic> found) {
        DiagnosticPrinter printer = new DiagnosticPrinter(StandardCharsets.UTF_8, false);
        return found.stream().map(printer::print).collect(Collectors.joining("\n"));
    }

    /** Checks both ways with batches of one group; gives what was found. */
    private static String same(String what, Texts texts) {
        Ricasso whole = Ricasso.check(texts, CALCULATIONS, Set.of());
        List<String> handed = new ArrayList<>();
        Verdict verdict = LargeHouse.check(texts, CALCULATIONS, p -> handed.add(p.product().name()), 1);
        String expected = printed(whole.checked().diagnostics());
        assertThat(printed(verdict.diagnostics())).as(what).isEqualTo(expected);
        assertThat(handed).as(what).doesNotHaveDuplicates();
        assertThat(new TreeSet<>(handed)).as(what).isEqualTo(whole.checked().products().stream()
                .map(p -> p.product().name()).collect(Collectors.toCollection(TreeSet::new)));
        assertThat(verdict.products()).as(what).isEqualTo(handed.size());
        assertThat(verdict.holds()).as(what).isEqualTo(whole.checked().holds());
        return expected;
    }

    @Test
    void aHouseThatHolds() {
        assertThat(same("house", house())).isEmpty();
    }

    @Test
    void findingsThatConcernSeveralTextsAreTheSame() {
        Texts house = house();
        // a name that is missing in two texts is one fault
        Texts twice = with(with(house, "copy-1.ricasso", t -> t.replace("at belt-1 ", "at belt-11 ")), "copy-3.ricasso",
                t -> t.replace("at belt-1 ", "at belt-11 "));
        assertThat(same("one name in two texts", twice)).contains("here too");
        assertThat(same("a product twice", with(house, "copy-3.ricasso", t -> t.replace("knife copy-3", "knife copy-1"))))
                .contains("declared-twice");
        assertThat(same("like nothing", with(house, FAMILY, t -> t.replace("like cooks-200", "like cooks-20"))))
                .contains("write cooks-200");
        assertThat(same("a text that is not plain rests on one that is", with(house, FAMILY, t -> t + "knife {")))
                .isNotEmpty();
        assertThat(same("a fault that rows take over", with(house, TrialHouse.COOKS,
                t -> t.replaceFirst("steel:( +)1\\.4116", "steel:$11.4161")))).contains("unknown-name");
        assertThat(same("a row that is no good", with(house, FAMILY, t -> t.replaceFirst("160 ± 1 mm", "160 ± 1 °C"))))
                .isNotEmpty();
        assertThat(same("a fault in what all rest on", with(house, TrialHouse.WORKS, t -> t.replace("is:         tempering-furnace",
                "is:         tempering-furnac")))).isNotNull();
        assertThat(same("a line of the works that cannot be read", with(house, TrialHouse.WORKS,
                t -> t.replaceFirst("centre temper-3", "centre centre temper-3")))).isNotEmpty();
        assertThat(same("a tool that does not fit", with(house, "copy-2.ricasso", t -> t.replace("B-1109", "B-4115"))))
                .contains("B-4115 fits boning-150; this knife is copy-2", "set tool of step 30 to B-1109");
        assertThat(same("a tool for a knife that is not there", with(house, "stock-and-tools.ricasso",
                t -> t.replace("copy-3", "copy-33")))).contains("no knife is named copy-33", "write copy-3");
        assertThat(same("a brace that is lost", with(house, "copy-3.ricasso", t -> t.replaceFirst("\\{\\n", "\n")))).isNotEmpty();
    }

    @Test
    void damagedTextsAreTheSame() {
        Texts house = house();
        Map<String, SourceFile> byName = house.files().stream().collect(Collectors.toMap(SourceFile::name, f -> f));
        int count = 0;
        for (String name : List.of("copy-2.ricasso", FAMILY, TrialHouse.WORKS)) {
            List<TokenDamage.Damaged> cases = TokenDamage.of(byName.get(name), 0);
            int every = name.equals(FAMILY) ? EVERY / 3 : EVERY;
            for (int i = every / 2; i < cases.size(); i += every) {
                TokenDamage.Damaged damaged = cases.get(i);
                same(damaged.what(), with(house, name, t -> damaged.file().text()));
                count++;
            }
        }
        System.out.println("large house: " + count + " damaged houses checked in batches and at once");
        assertThat(count).isGreaterThan(15);
    }
}
