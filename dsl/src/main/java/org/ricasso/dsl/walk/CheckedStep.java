package org.ricasso.dsl.walk;

import java.util.List;
import java.util.Map;
import org.ricasso.dsl.evaluate.Filled;
import org.ricasso.dsl.evaluate.Value;
import org.ricasso.dsl.house.Thing;
import org.ricasso.dsl.source.Span;

/**
 * A step after the walk: all that its page needs.
 *
 * @param number its number
 * @param operation the operation's name
 * @param title the operation's title
 * @param purpose the operation's purpose
 * @param works the title of the part it works, or of the whole piece
 * @param attributes the operation's other attributes (cautions and the like), in the vocabulary's order
 * @param centre the work centre, or {@code null}
 * @param settings what the step takes
 * @param arrival what the piece must be like
 * @param work the work, line by line, with what stands in the holes
 * @param measured what is measured of the piece
 * @param watched settings that are watched while the step works
 * @param handOver what the step changes
 * @param disturbs paths of the properties that it can change when it is out of control
 * @param setUp time to set up in seconds at least, or NaN where not stated
 * @param run the time a step takes as written and computed, or {@code null}
 * @param span the step's head in the text
 * @param brought the knowledge behind it that does not come with the tool
 */
public record CheckedStep(int number, String operation, String title, String purpose, String works,
        Map<String, Value> attributes, Thing centre, List<Setting> settings, List<Arrival> arrival,
        List<Filled> work, List<Measured> measured, List<Watched> watched, List<HandOver> handOver, List<String> disturbs,
        double setUp, Value run, Span span, List<Brought> brought) {
    public CheckedStep {
        // shared by all steps of an operation, which never changes it
        attributes = java.util.Collections.unmodifiableMap(attributes);
        settings = List.copyOf(settings);
        arrival = List.copyOf(arrival);
        work = List.copyOf(work);
        measured = List.copyOf(measured);
        watched = List.copyOf(watched);
        handOver = List.copyOf(handOver);
        disturbs = List.copyOf(disturbs);
        brought = List.copyOf(brought);
    }

    /** A step that watches no setting, disturbs nothing and rests on nothing but what comes with the tool. */
    public CheckedStep(int number, String operation, String title, String purpose, String works,
            Map<String, Value> attributes, Thing centre, List<Setting> settings, List<Arrival> arrival,
            List<Filled> work, List<Measured> measured, List<HandOver> handOver, double setUp, Value run, Span span) {
        this(number, operation, title, purpose, works, attributes, centre, settings, arrival, work, measured, List.of(), handOver,
                List.of(), setUp, run, span, List.of());
    }

    /** The work, line by line, settings filled in. */
    public List<String> instruct() {
        return work.stream().map(Filled::text).toList();
    }

    /** A setting. {@code byDefault}: it was not written, the vocabulary's default stands. */
    public record Setting(String name, Value value, boolean byDefault) {}

    /**
     * A condition on the piece that arrives.
     *
     * @param path the property, such as {@code blade.structure}
     * @param name the property's own name
     * @param condition what is asked, as text
     * @param complaint what happens otherwise
     * @param found what the route says the piece is
     * @param asked what is asked; null where only the text is known
     * @param since for a {@linkplain #isDuty() duty}, the number of the step that started the clock, else 0
     */
    public record Arrival(String path, String name, String condition, String complaint, Value found, Value asked,
            int since) {
        /** Whether the route cannot prove it, so that a time must be written down. */
        public boolean isDuty() {
            return since > 0;
        }
    }

    /**
     * A measurement.
     *
     * @param path the property
     * @param name its own name
     * @param limit the limit it is judged by, as a value
     * @param characteristic whether the product specifies it; else it is an in-process characteristic
     * @param entries gauge, sample, reaction and whatever else kind measurement declares
     */
    public record Measured(String path, String name, Value limit, boolean characteristic, Map<String, Value> entries) {
        public Measured {
            entries = java.util.Collections.unmodifiableMap(entries);
        }
    }

    /**
     * A setting that is watched while the step works: a process characteristic.
     *
     * @param setting its name
     * @param limit what it is judged by: the setting with its tolerance
     * @param entries gauge, sample, reaction and whatever else kind measurement declares
     */
    public record Watched(String setting, Value limit, Map<String, Value> entries) {
        public Watched {
            entries = java.util.Collections.unmodifiableMap(entries);
        }
    }

    /** A property that the step leaves changed. */
    public record HandOver(String path, String name, Value value) {}
}
