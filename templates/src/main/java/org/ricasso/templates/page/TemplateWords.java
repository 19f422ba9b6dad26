package org.ricasso.templates.page;

import freemarker.template.SimpleScalar;
import freemarker.template.TemplateBooleanModel;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateHashModelEx;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateModelIterator;
import freemarker.template.TemplateScalarModel;
import freemarker.template.TemplateSequenceModel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The words of pages as templates reach them: {@code say(key)} and {@code say(key, {"hole": text})}, {@code plain} for
 * attributes, {@code pieces(key)} where markup stands in the holes. Made once a language, since every page asks for dozens.
 */
final class TemplateWords {
    private final PageWords words;
    private final Map<String, TemplateModel> said = new HashMap<>();
    private final Map<String, TemplateModel> pieces = new HashMap<>();

    TemplateWords(PageWords words) {
        this.words = words;
        for (String key : words.keys()) {
            PageWords.Entry entry = words.entry(key);
            if (entry.whole() != null) {
                said.put(key, MarkedText.model(words.say(key)));
            }
            pieces.put(key, new Pieces(entry.borrowed() ? TemplateBooleanModel.TRUE : TemplateBooleanModel.FALSE,
                    new Sequence(entry.pieces().stream().map(piece -> (TemplateModel) new Piece(
                            new SimpleScalar(piece.isHole() ? piece.text() : ""),
                            new SimpleScalar(piece.isHole() ? "" : PlainText.of(piece.text())))).toList())));
        }
    }

    /** Puts what templates call. */
    void into(Map<String, Object> model) {
        model.put("say", (TemplateMethodModelEx) this::say);
        model.put("plain", (TemplateMethodModelEx) arguments -> new SimpleScalar(PlainText.of(words.plain(key(arguments)))));
        model.put("pieces", (TemplateMethodModelEx) arguments -> {
            words.entry(key(arguments));
            return pieces.get(key(arguments));
        });
    }

    private Object say(List<?> arguments) throws TemplateModelException {
        String key = key(arguments);
        if (arguments.size() == 1) {
            TemplateModel whole = said.get(key);
            return whole != null ? whole : MarkedText.model(words.say(key));
        }
        List<String> filled = new ArrayList<>();
        TemplateHashModelEx holes = (TemplateHashModelEx) arguments.get(1);
        for (TemplateModelIterator names = holes.keys().iterator(); names.hasNext(); ) {
            String name = ((TemplateScalarModel) names.next()).getAsString();
            filled.add(name);
            filled.add(holes.get(name).toString());
        }
        return MarkedText.model(words.say(key, filled.toArray(String[]::new)));
    }

    private static String key(List<?> arguments) throws TemplateModelException {
        return ((TemplateScalarModel) arguments.get(0)).getAsString();
    }

    private record Pieces(TemplateModel borrowed, TemplateModel list) implements TemplateHashModel {
        @Override
        public TemplateModel get(String key) {
            return key.equals("borrowed") ? borrowed : list;
        }

        @Override
        public boolean isEmpty() {
            return false;
        }
    }

    private record Piece(TemplateModel hole, TemplateModel text) implements TemplateHashModel {
        @Override
        public TemplateModel get(String key) {
            return key.equals("hole") ? hole : text;
        }

        @Override
        public boolean isEmpty() {
            return false;
        }
    }

    private record Sequence(List<TemplateModel> elements) implements TemplateSequenceModel {
        @Override
        public TemplateModel get(int index) {
            return elements.get(index);
        }

        @Override
        public int size() {
            return elements.size();
        }
    }
}
