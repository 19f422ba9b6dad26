package org.ricasso.templates.page;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/**
 * Fingerprints of what a page says: the first twelve digits of a SHA-256 over its view model in a canonical form. A
 * change of the layout alone does not change it.
 *
 * @param digits the fingerprint
 * @param borrows whether the page holds texts that its language has no words for
 */
record Fingerprint(String digits, boolean borrows) {
    private static final int LENGTH = 12;
    private static final ClassValue<Form> FORMS = new ClassValue<>() {
        @Override
        protected Form computeValue(Class<?> type) {
            return Form.of(type);
        }
    };

    /** The fingerprint of a view model: a record of texts, truths, lists and further such records. */
    static String of(Record model) {
        return taken(model).digits();
    }

    /** The fingerprint of a view model, and whether the model borrows texts. */
    static Fingerprint taken(Record model) {
        StringBuilder canonical = new StringBuilder();
        write(canonical, model);
        return new Fingerprint(ofText(canonical.toString()), Marks.hasBorrowed(canonical));
    }

    static String ofText(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest).substring(0, LENGTH);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** Lengths stand before texts and lists, so that no two contents share a form. */
    private static void write(StringBuilder to, Object value) {
        if (value instanceof String text) {
            to.append('s').append(text.length()).append(':').append(text);
        } else if (value instanceof Boolean truth) {
            to.append(truth ? 't' : 'f');
        } else if (value instanceof List<?> list) {
            to.append('l').append(list.size()).append(':');
            list.forEach(element -> write(to, element));
        } else if (value instanceof Record inner) {
            Form form = FORMS.get(inner.getClass());
            to.append(form.head());
            for (int i = 0; i < form.names().size(); i++) {
                to.append(form.names().get(i)).append('=');
                write(to, read(inner, form.accessors().get(i)));
            }
        } else {
            throw new IllegalArgumentException("a view model holds texts, truths, lists and records, not " + value);
        }
    }

    private static Object read(Record record, Method accessor) {
        try {
            return accessor.invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the view models are public records", e);
        }
    }

    /** How a record class is written; looked up once, since a page holds hundreds of records. */
    private record Form(String head, List<String> names, List<Method> accessors) {
        static Form of(Class<?> type) {
            List<RecordComponent> components = List.of(type.getRecordComponents());
            return new Form("r" + type.getSimpleName() + components.size() + ":",
                    components.stream().map(RecordComponent::getName).toList(),
                    components.stream().map(RecordComponent::getAccessor).toList());
        }
    }
}
