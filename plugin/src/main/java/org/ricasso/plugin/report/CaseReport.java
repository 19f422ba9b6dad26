package org.ricasso.plugin.report;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.DiagnosticPrinter;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.walk.CheckedHouse;
import org.ricasso.dsl.walk.CheckedProduct;

/**
 * Findings in the XML form that test tools write: a case for each product and one for the house's own texts. An error is a
 * failure with the finding as it is printed; warnings and notes stand in the case's output. No times, no machine: the same
 * findings give the same bytes.
 */
public final class CaseReport {
    private final DiagnosticPrinter printer = new DiagnosticPrinter(StandardCharsets.UTF_8, false);

    /** The report, UTF-8 with line feeds. */
    public byte[] of(CheckedHouse house) {
        List<Diagnostic> others = new ArrayList<>(house.diagnostics());
        // by name and place: what several products take over is told once for the house, with all of them
        Set<List<?>> ofProducts = new HashSet<>();
        house.products().forEach(p -> p.diagnostics().forEach(d -> ofProducts.add(place(d))));
        others.removeIf(d -> ofProducts.contains(place(d)));
        long failures = house.products().stream().filter(p -> fails(p.diagnostics())).count() + (fails(others) ? 1 : 0);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out, "UTF-8");
            xml.writeStartDocument("UTF-8", "1.0");
            xml.writeCharacters("\n");
            xml.writeStartElement("testsuite");
            xml.writeAttribute("name", "ricasso");
            xml.writeAttribute("tests", Integer.toString(house.products().size() + 1));
            xml.writeAttribute("failures", Long.toString(failures));
            xml.writeAttribute("errors", "0");
            xml.writeAttribute("skipped", "0");
            testCase(xml, "house", "texts", others);
            for (CheckedProduct product : house.products()) {
                testCase(xml, product.product().kind(), product.product().name(), product.diagnostics());
            }
            xml.writeCharacters("\n");
            xml.writeEndElement();
            xml.writeEndDocument();
            xml.close();
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException(impossible);
        }
        out.write('\n');
        return out.toByteArray();
    }

    private static List<?> place(Diagnostic diagnostic) {
        return List.of(diagnostic.name(), diagnostic.primary().span());
    }

    private static boolean fails(List<Diagnostic> found) {
        return found.stream().anyMatch(d -> d.severity() == Severity.ERROR);
    }

    private void testCase(XMLStreamWriter xml, String group, String name, List<Diagnostic> found)
            throws XMLStreamException {
        xml.writeCharacters("\n  ");
        xml.writeStartElement("testcase");
        xml.writeAttribute("classname", group);
        xml.writeAttribute("name", plain(name));
        StringBuilder told = new StringBuilder();
        StringBuilder errors = new StringBuilder();
        Diagnostic first = null;
        for (Diagnostic diagnostic : found) {
            boolean error = diagnostic.severity() == Severity.ERROR;
            first = error && first == null ? diagnostic : first;
            (error ? errors : told).append(printer.print(diagnostic)).append('\n');
        }
        if (first != null) {
            xml.writeCharacters("\n    ");
            xml.writeStartElement("failure");
            xml.writeAttribute("type", first.name());
            xml.writeAttribute("message", plain(first.primary().span() + " " + first.primary().text()));
            xml.writeCharacters(plain(errors.toString()));
            xml.writeEndElement();
        }
        if (!told.isEmpty()) {
            xml.writeCharacters("\n    ");
            xml.writeStartElement("system-out");
            xml.writeCharacters(plain(told.toString()));
            xml.writeEndElement();
        }
        if (first != null || !told.isEmpty()) {
            xml.writeCharacters("\n  ");
        }
        xml.writeEndElement();
    }

    /** Characters that XML 1.0 has no way to write become U+FFFD. */
    private static String plain(String text) {
        StringBuilder result = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            boolean written = c == '\t' || c == '\n' || c >= 0x20 && c < 0xD800 || c > 0xDFFF && c != 0xFFFE && c != 0xFFFF;
            result.appendCodePoint(c == '\r' ? '\n' : written ? c : 0xFFFD);
        });
        return result.toString();
    }
}
