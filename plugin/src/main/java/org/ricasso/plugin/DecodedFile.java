package org.ricasso.plugin;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.Mark;
import org.ricasso.dsl.diagnostics.Remedy;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;
import org.ricasso.plugin.report.ReportRule;

/**
 * A file's bytes read strictly as UTF-8. A byte order mark is not part of the text; line ends stay as they are.
 *
 * @param file the text, with U+FFFD where bytes are not UTF-8
 * @param diagnostic what is wrong with its bytes, at the first wrong place
 */
record DecodedFile(SourceFile file, Optional<Diagnostic> diagnostic) {
    private static final char BYTE_ORDER_MARK = '\uFEFF';
    private static final char REPLACEMENT = '\uFFFD';
    private static final String OLDER = "windows-1252";

    /** What a report says of this finding. */
    static final ReportRule RULE = new ReportRule("A text is written in UTF-8",
            "A text is written in UTF-8. A byte that is not UTF-8 may have been meant as any sign, so nothing is"
                    + " guessed: the texts are read again when the file is saved in UTF-8.");

    static DecodedFile of(String name, byte[] bytes) {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        int first = -1;
        byte wrong = 0;
        int count = 0;
        while (true) {
            CoderResult result = decoder.decode(in, out, true);
            if (!result.isError()) {
                break;
            }
            if (count++ == 0) {
                first = out.position();
                wrong = in.get(in.position());
            }
            in.position(in.position() + result.length());
            out.put(REPLACEMENT);
        }
        decoder.flush(out);
        String text = out.flip().toString();
        if (!text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK) {
            text = text.substring(1);
            first--;
        }
        SourceFile file = new SourceFile(name, text, false);
        return new DecodedFile(file, count == 0 ? Optional.empty()
                : Optional.of(notUtf8(file, first, wrong, count, utf16(bytes))));
    }

    private static Diagnostic notUtf8(SourceFile file, int offset, byte wrong, int count, boolean utf16) {
        String hex = String.format(java.util.Locale.ROOT, "0x%02X", wrong & 0xFF);
        Diagnostic result = Diagnostic.error("not-utf-8",
                new Mark(new Span(file, offset, offset + 1), "the byte " + hex + " is not UTF-8 here"));
        if (utf16) {
            result = result.because("the file begins with the byte order mark of UTF-16");
        } else {
            Optional<String> older = older(wrong);
            if (older.isPresent()) {
                result = result.because("in " + OLDER + ", an older encoding, this byte is " + older.get());
            }
        }
        if (count > 1) {
            result = result.also("the file holds " + (count - 1) + " more such "
                    + (count == 2 ? "place" : "places"));
        }
        return result.remedy(new Remedy("save the file in the encoding UTF-8", List.of()));
    }

    private static boolean utf16(byte[] bytes) {
        return bytes.length >= 2 && (bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE
                || bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF);
    }

    private static Optional<String> older(byte wrong) {
        if (!Charset.isSupported(OLDER)) {
            return Optional.empty();
        }
        String text = new String(new byte[] {wrong}, Charset.forName(OLDER));
        boolean shows = text.codePoints().noneMatch(c -> c == REPLACEMENT || Character.isISOControl(c));
        return shows ? Optional.of(text) : Optional.empty();
    }
}
