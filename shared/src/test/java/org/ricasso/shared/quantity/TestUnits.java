package org.ricasso.shared.quantity;

import java.util.Map;

/** A table of units written out by hand, so that quantities are tested without the shipped vocabulary. */
public final class TestUnits {
    public static final UnitTable TABLE = table();

    private TestUnits() {}

    /** Reads {@code 180 °C}, {@code 4 %} or {@code 0.2} as a number in coherent units, a point where the unit says so. */
    public static double read(String text) {
        return read(text, true);
    }

    /** Reads a number in coherent units as an amount or difference. */
    public static double difference(String text) {
        return read(text, false);
    }

    public static Unit unit(String sign) {
        return TABLE.find(sign).orElseThrow(() -> new IllegalArgumentException("no unit " + sign));
    }

    private static double read(String text, boolean points) {
        int blank = text.indexOf(' ');
        if (blank < 0) {
            return Double.parseDouble(text);
        }
        Unit unit = unit(text.substring(blank + 1));
        return unit.toCoherent(Double.parseDouble(text.substring(0, blank)), points && unit.point());
    }

    private static UnitTable table() {
        UnitTable.Builder builder = UnitTable.builder();
        Map<String, String> scaled = Map.ofEntries(Map.entry("mm", "1e-3 m"), Map.entry("cm", "1e-2 m"),
                Map.entry("µm", "1e-6 m"), Map.entry("nm", "1e-9 m"), Map.entry("km", "1e3 m"),
                Map.entry("inch", "0.0254 m"), Map.entry("ft", "0.3048 m"), Map.entry("g", "1e-3 kg"),
                Map.entry("mg", "1e-6 kg"), Map.entry("t", "1e3 kg"), Map.entry("lb", "0.45359237 kg"),
                Map.entry("min", "60 s"), Map.entry("h", "3600 s"), Map.entry("d", "86400 s"), Map.entry("ms", "1e-3 s"),
                Map.entry("mA", "1e-3 A"), Map.entry("kA", "1e3 A"), Map.entry("mK", "1e-3 K"), Map.entry("l", "1e-3 m³"));
        scaled.forEach((sign, as) -> add(builder, sign, as, 3));
        add(builder, "°", StrictMath.PI / 180 + " rad", 1);
        builder.add(new Unit("%", Dimension.NUMBER, 0.01, 0, false, 1));
        builder.add(new Unit("‰", Dimension.NUMBER, 0.001, 0, false, 1));
        Dimension temperature = Dimension.of(Base.TEMPERATURE);
        builder.add(new Unit("°C", temperature, 1, 273.15, true, 0));
        builder.add(new Unit("°F", temperature, 1 / 1.8, 459.67 / 1.8, true, 0));
        String[][] derived = {{"N", "1 kg·m/s²"}, {"kN", "1e3 N"}, {"MN", "1e6 N"}, {"Pa", "1 N/m²"}, {"kPa", "1e3 Pa"},
            {"MPa", "1e6 Pa"}, {"GPa", "1e9 Pa"}, {"bar", "1e5 Pa"}, {"mbar", "1e2 Pa"}, {"J", "1 N·m"}, {"mJ", "1e-3 J"},
            {"kJ", "1e3 J"}, {"MJ", "1e6 J"}, {"W", "1 J/s"}, {"kW", "1e3 W"}, {"kWh", "3.6e6 J"}, {"V", "1 W/A"},
            {"Ω", "1 V/A"}, {"µΩ", "1e-6 Ω"}, {"Hz", "1 1/s"}, {"kHz", "1e3 Hz"}, {"C", "1 A·s"}, {"lbf", "4.4482216152605 N"},
            {"psi", "6894.757293168361 Pa"}};
        for (String[] unit : derived) {
            add(builder, unit[0], unit[1], 1);
        }
        builder.show(builder.find("mm").orElseThrow());
        builder.show(builder.find("°C").orElseThrow());
        return builder.build();
    }

    private static void add(UnitTable.Builder builder, String sign, String as, int decimals) {
        int blank = as.indexOf(' ');
        Unit unit = builder.find(as.substring(blank + 1)).orElseThrow(() -> new IllegalArgumentException(as));
        double factor = Double.parseDouble(as.substring(0, blank)) * unit.factor();
        if (!builder.add(Unit.of(sign, unit.dimension(), factor, decimals))) {
            throw new IllegalArgumentException("twice: " + sign);
        }
    }
}
