package org.ricasso.templates.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ricasso.dsl.evaluate.Margin;
import org.ricasso.dsl.walk.CheckedProduct;
import org.ricasso.dsl.walk.Judgement;
import org.ricasso.dsl.walk.Outcome;
import org.ricasso.shared.quantity.Numbers;

/** Makes the rule report of a product. */
final class RulePages {
    private final CheckedProduct checked;
    private final Sheets sheets;
    private final Tongue tongue;

    private RulePages(CheckedProduct checked, Sheets sheets, Tongue tongue) {
        this.checked = checked;
        this.sheets = sheets;
        this.tongue = tongue;
    }

    static RuleReport page(Identity identity, CheckedProduct checked, Sheets sheets, Tongue tongue) {
        RulePages pages = new RulePages(checked, sheets, tongue);
        return new RuleReport(identity, Sheets.SPEC_SHEET, checked.outcomes().stream().map(pages::made).toList(),
                pages.rulings(Judgement.Verdict.FAILS), pages.rulings(Judgement.Verdict.NOT_JUDGED),
                pages.rulings(Judgement.Verdict.HOLDS), checked.diagnostics().stream().map(Finding::of).toList());
    }

    private RuleReport.Made made(Outcome outcome) {
        Margin margin = Margin.inside(outcome.asked(), outcome.found());
        return new RuleReport.Made(tongue.path(Tongue.entriesOf(checked.product()), outcome.entry()),
                tongue.values().shown(outcome.asked(), Tongue.property(checked.product(), outcome.path())),
                Names.capital(SpecPages.word(outcome.made(), tongue)), margin == null ? List.of() : List.of(room(margin)));
    }

    /** A comparison stands as it is written in the rule. */
    private RuleReport.Room room(Margin margin) {
        String reach = margin.reach() == margin.aim() ? "" : room(margin.reach(), margin.shownReach());
        return new RuleReport.Room(tongue.source().typeset(Marks.clean(margin.text())), room(margin.aim(), margin.shownAim()),
                reach);
    }

    /** Nought is to spare, too: the limit itself is allowed. */
    private String room(double margin, String shown) {
        return tongue.say(Numbers.compare(margin, 0) >= 0 ? "rules.spare" : "rules.beyond", "margin",
                tongue.numbers().number(shown.startsWith("-") ? shown.substring(1) : shown));
    }

    /** How many rules could not be judged on some subject, as text; empty for none. */
    static String notJudged(CheckedProduct checked) {
        long count = checked.judgements().stream()
                .filter(j -> j.verdict() == Judgement.Verdict.NOT_JUDGED)
                .map(Judgement::rule)
                .distinct()
                .count();
        return count == 0 ? "" : String.valueOf(count);
    }

    /** Rules with the verdict in the order of the walk, each once with all its subjects. */
    private List<RuleReport.Ruling> rulings(Judgement.Verdict verdict) {
        Map<String, List<Judgement>> byRule = new LinkedHashMap<>();
        for (Judgement judgement : checked.judgements()) {
            if (judgement.verdict() == verdict) {
                byRule.computeIfAbsent(judgement.rule(), r -> new ArrayList<>()).add(judgement);
            }
        }
        List<RuleReport.Ruling> result = new ArrayList<>();
        byRule.forEach((rule, judgements) -> result.add(ruling(rule, judgements)));
        return result;
    }

    private RuleReport.Ruling ruling(String rule, List<Judgement> judgements) {
        boolean whole = false;
        List<StepLink> steps = new ArrayList<>();
        List<RuleReport.Place> places = new ArrayList<>();
        for (Judgement judgement : judgements) {
            List<StepLink> step = sheets.step(judgement.step());
            String told = detail(judgement);
            if (!told.isEmpty() || !judgement.margins().isEmpty()) {
                places.add(new RuleReport.Place(step, told, judgement.margins().stream().map(this::room).toList()));
            } else if (step.isEmpty()) {
                whole = true;
            } else {
                steps.addAll(step);
            }
        }
        return new RuleReport.Ruling(rule, tongue.text(owner(judgements.get(0)), judgements.get(0).title()), whole, steps,
                places);
    }

    private static Where.Owner owner(Judgement judgement) {
        return new Where.Owner("rule", judgement.rule());
    }

    /** What the rule says of a breach; why it was not judged is in the language of findings. */
    private String detail(Judgement judgement) {
        String detail = judgement.detail();
        if (detail == null || detail.isEmpty()) {
            return "";
        }
        if (judgement.said() != null) {
            return tongue.filled(owner(judgement), judgement.said(), Tongue.entriesOf(checked.product()));
        }
        return detail.equals(judgement.title()) ? tongue.typeset(owner(judgement), detail)
                : tongue.source().typeset(tongue.quoted(detail));
    }
}
