package org.ricasso.dsl.trial;

import org.junit.jupiter.api.Test;
import org.ricasso.dsl.diagnostics.*;
import java.nio.charset.StandardCharsets;
class SolveTest {
    @Test
    void t() {
        TrialHouse h = TrialHouse.whole().with(TrialHouse.PARING, "110 temper at temper-3 { temperature: 180 ± 5 °C;", "110 temper at temper-3 { temperature: solve(hardness, within: 5 °C);");
        long t0 = System.nanoTime();
        var s = h.solve();
        System.out.println(s + " " + (System.nanoTime()-t0)/1e6);
        for (int i=0;i<5;i++){ t0 = System.nanoTime(); h.solve(); System.out.println((System.nanoTime()-t0)/1e6);}
        DiagnosticPrinter p = new DiagnosticPrinter(StandardCharsets.UTF_8, false);
        h.diagnostics().forEach(d -> System.out.println(p.print(d)));
        h.withLock(s.text()).diagnostics().forEach(d -> System.out.println(p.print(d)));
        h.withLock(s.text().replace("± 5 °C for", "± 6 °C for")).diagnostics().forEach(d -> System.out.println(p.print(d)));
    }
}
