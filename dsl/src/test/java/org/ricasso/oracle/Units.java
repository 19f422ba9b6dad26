package org.ricasso.oracle;

import java.util.HashMap;
import java.util.Map;

/** The signs of units that routes and the reference's tables are written in. Factors: SI Brochure, 9th edition. */
final class Units {
    private record Unit(String measures, double factor, double zero) {}

    private static final Map<String, Unit> UNITS = new HashMap<>();

    static {
        put("length", "mm 1 µm 0.001 cm 10 m 1000 inch 25.4 mm/side 1 mm/rev 1");
        put("time", "s 1 min 60 h 3600 d 86400");
        put("speed", "m/s 1 mm/s 0.001 m/min 0.016666666666666666 cm/s 0.01");
        put("pressure", "bar 1 MPa 10 mbar 0.001 Pa 0.00001");
        put("force", "N 1 kN 1000 MN 1000000 mN 0.001");
        put("mass", "g 1 kg 1000 t 1000000");
        put("share", "% 0.01");
        put("share", "x 1");
        put("angle", "° 1 rad 57.29577951308232");
        put("frequency", "kHz 1 Hz 0.001");
        put("power", "W 1 kW 1000");
        put("tension", "V 1");
        put("current", "A 1 kA 1000");
        put("flow", "l/min 1 l/s 60");
        put("rate", "°C/h 1 K/h 1 K/min 60 K/s 3600 °C/s 3600");
        put("Rockwell", "HRC 1");
        put("Brinell", "HB 1");
        put("difference", "K 1");
        UNITS.put("°C", new Unit("temperature", 1, 0));
        UNITS.put("°F", new Unit("temperature", 5.0 / 9, -32 * 5.0 / 9));
        UNITS.put("", new Unit("share", 1, 0));
    }

    private Units() {}

    private static void put(String measures, String signs) {
        String[] parts = signs.split(" ");
        for (int i = 0; i < parts.length; i += 2) {
            UNITS.put(parts[i], new Unit(measures, Double.parseDouble(parts[i + 1]), 0));
        }
    }

    /** Whether the sign is known. */
    static boolean known(String sign) {
        return UNITS.containsKey(sign);
    }

    /** A value in another unit, or NaN where the two do not measure the same. */
    static double convert(double value, String from, String to) {
        Unit a = UNITS.get(from);
        Unit b = UNITS.get(to);
        if (a == null || b == null || !a.measures().equals(b.measures())) {
            return Double.NaN;
        }
        return (value * a.factor() + a.zero() - b.zero()) / b.factor();
    }
}
