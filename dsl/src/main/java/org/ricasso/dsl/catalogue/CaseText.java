package org.ricasso.dsl.catalogue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A text of cases: a head, then sections that begin with {@code ## name}, each of paragraphs and of fences that are named by
 * the word behind their backquotes.
 *
 * @param title what the first line says behind {@code #}
 * @param head the paragraphs before the first section
 * @param sections the sections, in the order of the text
 */
record CaseText(String title, List<String> head, List<Section> sections) {
    private static final String TITLE = "# ";
    private static final String SECTION = "## ";
    private static final String FENCE = "```";

    /**
     * @param name what stands behind {@code ##}
     * @param lines the line of text behind the name, up to the first blank line, and then one for each paragraph
     * @param fences what stands in the fences, each with its last line feed, by their names in the order of the text
     */
    record Section(String name, List<String> lines, Map<String, String> fences) {
        Section {
            lines = List.copyOf(lines);
            fences = Collections.unmodifiableMap(fences);
        }
    }

    CaseText {
        head = List.copyOf(head);
        sections = List.copyOf(sections);
    }

    /** @throws IllegalStateException if the text has not this form */
    static CaseText of(String text) {
        Iterator<String> lines = text.lines().iterator();
        String title = lines.hasNext() ? lines.next() : "";
        if (!title.startsWith(TITLE)) {
            throw new IllegalStateException("the first line has no title: " + title);
        }
        List<Section> sections = new ArrayList<>();
        Reading reading = new Reading(title.substring(TITLE.length()));
        String next = reading.read(lines);
        Section head = reading.section();
        while (next != null) {
            reading = new Reading(next.substring(SECTION.length()).strip());
            next = reading.read(lines);
            sections.add(reading.section());
        }
        return new CaseText(head.name(), head.lines(), sections);
    }

    /** One section, or the head, while it is read. */
    private static final class Reading {
        private final String name;
        private final List<String> paragraphs = new ArrayList<>();
        private final Map<String, String> fences = new LinkedHashMap<>();
        private final StringBuilder paragraph = new StringBuilder();

        Reading(String name) {
            this.name = name;
        }

        /** @return the line that begins the next section, or null at the end */
        String read(Iterator<String> lines) {
            while (lines.hasNext()) {
                String line = lines.next();
                if (line.startsWith(SECTION)) {
                    return line;
                }
                if (line.startsWith(FENCE)) {
                    endParagraph();
                    fence(line.substring(FENCE.length()).strip(), lines);
                } else if (line.isBlank()) {
                    endParagraph();
                } else {
                    paragraph.append(paragraph.isEmpty() ? "" : " ").append(line.strip());
                }
            }
            return null;
        }

        Section section() {
            endParagraph();
            return new Section(name, paragraphs, fences);
        }

        private void endParagraph() {
            if (!paragraph.isEmpty()) {
                paragraphs.add(paragraph.toString());
                paragraph.setLength(0);
            }
        }

        private void fence(String word, Iterator<String> lines) {
            StringBuilder text = new StringBuilder();
            String line = null;
            while (lines.hasNext() && !(line = lines.next()).startsWith(FENCE)) {
                text.append(line).append('\n');
            }
            if (line == null || !line.startsWith(FENCE)) {
                throw new IllegalStateException(name + ": a fence is not closed");
            }
            if (word.isEmpty() || fences.put(word, text.toString()) != null) {
                throw new IllegalStateException(name + ": fences want different words, here is again " + FENCE + word);
            }
        }
    }
}
