package org.ricasso.templates.page;

import freemarker.core.HTMLOutputFormat;
import freemarker.template.SimpleScalar;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import org.ricasso.dsl.words.Words;

/** Texts on their way to a template: fit for a page, and what is in another language says so. */
final class MarkedText {
    private static final String BORROWED = "<span class=\"borrowed\" lang=\"" + Words.SOURCE + "\">";
    private static final String QUOTED = "<span lang=\"" + Words.SOURCE + "\">";
    private static final String END = "</span>";

    private MarkedText() {}

    static TemplateModel model(String text) {
        return Marks.has(text) ? marked(text) : new SimpleScalar(PlainText.of(text));
    }

    private static TemplateModel marked(String text) {
        StringBuilder html = new StringBuilder();
        boolean open = false;
        int i = 0;
        while (i < text.length()) {
            char c = text.charAt(i);
            if (Marks.isMark(c)) {
                // a mark inside another's text opens nothing
                if (c == Marks.END && open) {
                    html.append(END);
                    open = false;
                } else if (c != Marks.END && !open) {
                    html.append(c == Marks.BORROWED ? BORROWED : QUOTED);
                    open = true;
                }
                i++;
            } else {
                int next = Marks.first(text, i);
                html.append(HTMLOutputFormat.INSTANCE.escapePlainText(PlainText.of(text.substring(i, next))));
                i = next;
            }
        }
        if (open) {
            html.append(END);
        }
        try {
            return HTMLOutputFormat.INSTANCE.fromMarkup(html.toString());
        } catch (TemplateModelException e) {
            throw new IllegalStateException("markup is taken as it is", e);
        }
    }
}
