package org.ricasso.dsl.solve;

import java.util.Comparator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A line of the lock: what a setting was solved to, and from what.
 *
 * @param key whose setting it is
 * @param operation the step's operation
 * @param value the setting as it would be written, such as {@code 205 ± 5 °C}
 * @param property the plain name of the property that it was solved for
 * @param asked the limit that the product asks of it, as written there
 * @param leaves the aim that the value leaves
 * @param fingerprint eight hexadecimal digits over all numbers that it was solved from
 */
public record LockEntry(Key key, String operation, String value, String property, String asked, String leaves,
        String fingerprint) {
    private static final Pattern LINE = Pattern.compile("(?<product>[^\\s/]+) / (?<step>[0-9]{1,5}) (?<operation>[^\\s/]+) / "
            + "(?<setting>[^\\s/]+) = (?<value>\\S.*?) for (?<property>\\S+) (?<asked>\\S.*?), leaves (?<leaves>\\S.*?)"
            + "  #(?<fingerprint>[0-9a-f]{8})");

    /** Whose setting an entry is: product, number of the step, setting. */
    public record Key(String product, int step, String setting) implements Comparable<Key> {
        private static final Comparator<Key> ORDER = Comparator.comparing(Key::product).thenComparingInt(Key::step)
                .thenComparing(Key::setting);

        @Override
        public int compareTo(Key other) {
            return ORDER.compare(this, other);
        }

        /** For people: {@code temperature of step 110 of paring-90}. */
        @Override
        public String toString() {
            return setting + " of step " + step + " of " + product;
        }
    }

    /** The entry that a line writes, or null where it writes none. */
    static LockEntry read(String line) {
        Matcher m = LINE.matcher(line);
        return !m.matches() ? null : new LockEntry(new Key(m.group("product"), Integer.parseInt(m.group("step")),
                m.group("setting")), m.group("operation"), m.group("value"), m.group("property"), m.group("asked"),
                m.group("leaves"), m.group("fingerprint"));
    }

    /** The line that writes this entry, without its end. */
    public String line() {
        return key.product() + " / " + key.step() + " " + operation + " / " + key.setting() + " = " + value + " for "
                + property + " " + asked + ", leaves " + leaves + "  #" + fingerprint;
    }

    /** Whether the other says the same setting for the same limit, whatever it was solved from besides. */
    public boolean saysAs(LockEntry other) {
        return key.equals(other.key) && operation.equals(other.operation) && value.equals(other.value)
                && property.equals(other.property) && asked.equals(other.asked);
    }
}
