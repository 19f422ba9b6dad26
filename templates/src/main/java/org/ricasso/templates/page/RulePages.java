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
    private RulePages() {}

    static RuleReport page(Identity identity, CheckedProduct checked, Sheets sheets) {
        return new RuleReport(identity, Sheets.SPEC_SHEET, checked.outcomes().stream().map(RulePages::made).toList(),
                rulings(checked, sheets, Judgement.Verdict.FAILS),
                rulings(checked, sheets, Judgement.Verdict.NOT_JUDGED),
                rulings(checked, sheets, Judgement.Verdict.HOLDS),
                checked.diagnostics().stream().map(Finding::of).toList());
    }

    private static RuleReport.Made made(Outcome outcome) {
        Margin margin = Margin.inside(outcome.asked(), outcome.found());
        return new RuleReport.Made(Names.path(outcome.entry()), ValueText.shown(outcome.asked()),
                Names.capital(SpecPages.word(outcome.made())), margin == null ? List.of() : List.of(room(margin)));
    }

    private static RuleReport.Room room(Margin margin) {
        String reach = margin.reach() == margin.aim() ? "" : room(margin.reach(), margin.shownReach());
        return new RuleReport.Room(PlainText.typeset(margin.text()), room(margin.aim(), margin.shownAim()), reach);
    }

    /** Nought is to spare, too: the limit itself is allowed. */
    private static String room(double margin, String shown) {
        return PlainText.number(shown.startsWith("-") ? shown.substring(1) : shown)
                + (Numbers.compare(margin, 0) >= 0 ? " to spare" : " beyond");
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
    private static List<RuleReport.Ruling> rulings(CheckedProduct checked, Sheets sheets, Judgement.Verdict verdict) {
        Map<String, List<Judgement>> byRule = new LinkedHashMap<>();
        for (Judgement judgement : checked.judgements()) {
            if (judgement.verdict() == verdict) {
                byRule.computeIfAbsent(judgement.rule(), r -> new ArrayList<>()).add(judgement);
            }
        }
        List<RuleReport.Ruling> result = new ArrayList<>();
        byRule.forEach((rule, judgements) -> result.add(ruling(rule, judgements, sheets)));
        return result;
    }

    private static RuleReport.Ruling ruling(String rule, List<Judgement> judgements, Sheets sheets) {
        boolean whole = false;
        List<StepLink> steps = new ArrayList<>();
        List<RuleReport.Place> places = new ArrayList<>();
        for (Judgement judgement : judgements) {
            List<StepLink> step = sheets.step(judgement.step());
            boolean told = judgement.detail() != null && !judgement.detail().isEmpty();
            if (told || !judgement.margins().isEmpty()) {
                places.add(new RuleReport.Place(step, told ? PlainText.typeset(judgement.detail()) : "",
                        judgement.margins().stream().map(RulePages::room).toList()));
            } else if (step.isEmpty()) {
                whole = true;
            } else {
                steps.addAll(step);
            }
        }
        return new RuleReport.Ruling(rule, judgements.get(0).title(), whole, steps, places);
    }
}
