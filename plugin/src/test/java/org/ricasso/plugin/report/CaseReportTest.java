package org.ricasso.plugin.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.maven.plugin.surefire.log.api.NullConsoleLogger;
import org.apache.maven.plugins.surefire.report.ReportTestCase;
import org.apache.maven.plugins.surefire.report.ReportTestSuite;
import org.apache.maven.plugins.surefire.report.TestSuiteXmlParser;
import org.junit.jupiter.api.Test;
import org.ricasso.dsl.Ricasso;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.diagnostics.DiagnosticPrinter;
import org.ricasso.dsl.diagnostics.Severity;
import org.ricasso.dsl.walk.CheckedProduct;

/** The XML with a case a product, read by the reader that Maven's own test reports are made with. */
class CaseReportTest {
    /** Tempering that leaves no blade as hard as it is specified. */
    private static Ricasso tooSoft() throws Exception {
        return TestHouse.checked(TestHouse.texts(text -> text.replaceAll("(\\btemper\\s+at\\s+[\\w-]+\\s*\\{\\s*temperature:\\s*)\\d+",
                "$1" + 420)));
    }

    /** The suites as that reader parts them: one for each class name. */
    private static List<ReportTestSuite> read(Ricasso ricasso) throws Exception {
        byte[] xml = new CaseReport().of(ricasso.checked());
        return new TestSuiteXmlParser(new NullConsoleLogger())
                .parse(new InputStreamReader(new ByteArrayInputStream(xml), StandardCharsets.UTF_8));
    }

    @Test
    void aCaseForEachProductAndOneForTheTexts() throws Exception {
        Ricasso ricasso = TestHouse.checked(TestHouse.texts(text -> text));
        List<ReportTestSuite> suites = read(ricasso);
        assertThat(suites).extracting(ReportTestSuite::getFullClassName)
                .containsExactly("house", ricasso.house().vocabulary().productKind());
        assertThat(suites.get(0).getTestCases()).extracting(ReportTestCase::getName).containsExactly("texts");
        assertThat(suites.get(1).getTestCases()).extracting(ReportTestCase::getName)
                .containsExactlyElementsOf(ricasso.checked().products().stream().map(p -> p.product().name()).toList());
        for (ReportTestSuite suite : suites) {
            assertThat(suite.getNumberOfTests()).isEqualTo(suite.getTestCases().size());
            assertThat(suite.getTestCases()).allMatch(ReportTestCase::isSuccessful);
        }
    }

    @Test
    void theProductsWithErrorsFailAndNoOthers() throws Exception {
        Ricasso ricasso = tooSoft();
        ReportTestSuite products = read(ricasso).get(1);
        Map<String, ReportTestCase> cases = products.getTestCases().stream()
                .collect(Collectors.toMap(ReportTestCase::getName, c -> c));
        DiagnosticPrinter printer = new DiagnosticPrinter(StandardCharsets.UTF_8, false);
        int failed = 0;
        for (CheckedProduct product : ricasso.checked().products()) {
            List<Diagnostic> errors = product.diagnostics().stream().filter(d -> d.severity() == Severity.ERROR).toList();
            ReportTestCase found = cases.get(product.product().name());
            assertThat(found.hasFailure()).isEqualTo(!errors.isEmpty());
            if (!errors.isEmpty()) {
                failed++;
                assertThat(found.getFailureType()).isEqualTo(errors.get(0).name());
                assertThat(found.getFailureMessage()).contains(errors.get(0).primary().text());
                errors.forEach(error -> assertThat(found.getFailureDetail()).contains(printer.print(error).strip()));
            }
        }
        assertThat(failed).isPositive();
        assertThat(products.getNumberOfFailures()).isEqualTo(failed);
    }

    @Test
    void theSameFindingsGiveTheSameBytes() throws Exception {
        byte[] xml = new CaseReport().of(tooSoft().checked());
        assertThat(new CaseReport().of(tooSoft().checked())).isEqualTo(xml);
        assertThat(new String(xml, StandardCharsets.UTF_8)).doesNotContain("\r", "time=", "timestamp", "hostname");
    }
}
