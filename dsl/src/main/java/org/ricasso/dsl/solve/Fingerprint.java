package org.ricasso.dsl.solve;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** A fingerprint of numbers and texts that something was solved from. */
public final class Fingerprint {
    private static final int DIGITS = 8;
    private final StringBuilder text = new StringBuilder();

    /** This with a text added. */
    public Fingerprint add(String one) {
        text.append(one).append('\n');
        return this;
    }

    /** This with a number added, at nine digits. */
    public Fingerprint add(double number) {
        return add(Double.isNaN(number) || Double.isInfinite(number) ? Double.toString(number)
                : new BigDecimal(number).round(new MathContext(9, RoundingMode.HALF_EVEN)).stripTrailingZeros().toString());
    }

    /** The first eight hexadecimal digits of a SHA-256 over all, UTF-8, a line feed behind each. */
    @Override
    public String toString() {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.toString().getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest).substring(0, DIGITS);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
