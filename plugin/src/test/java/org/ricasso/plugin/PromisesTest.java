package org.ricasso.plugin;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Set;

/** What may not be used anywhere, since the same text gives the same bytes: clock, locale, environment, chance. */
@AnalyzeClasses(packages = "org.ricasso", importOptions = ImportOption.DoNotIncludeTests.class)
class PromisesTest {
    private static final String[] THE_LANGUAGE = {"org.ricasso.shared..", "org.ricasso.dsl..", "org.ricasso.templates.."};

    /** Methods of {@code Math} whose last bit is the machine's own; {@code StrictMath} has the same everywhere. */
    private static final Set<String> TRANSCENDENTAL = Set.of("sin", "cos", "tan", "asin", "acos", "atan", "atan2", "exp",
            "expm1", "log", "log10", "log1p", "pow", "sinh", "cosh", "tanh", "cbrt", "hypot", "random");

    /** Calls that read the clock, the machine or its settings, by owner and name. */
    private static final Set<String> OF_THE_MACHINE = Set.of("java.util.Locale.getDefault",
            "java.util.TimeZone.getDefault", "java.time.ZoneId.systemDefault", "java.lang.System.currentTimeMillis",
            "java.lang.System.nanoTime", "java.lang.System.getenv", "java.lang.System.getProperty",
            "java.lang.System.lineSeparator", "java.nio.charset.Charset.defaultCharset", "java.time.Instant.now",
            "java.time.LocalDate.now", "java.time.LocalDateTime.now", "java.time.ZonedDateTime.now",
            "java.time.OffsetDateTime.now", "java.util.UUID.randomUUID", "java.util.Date.<init>",
            "java.util.Random.<init>", "java.lang.Math.random", "java.io.File.listFiles");

    /** Calls that follow the default locale or charset unless they are told one, by owner, name and parameters. */
    private static final Set<String> WITHOUT_SAYING = Set.of("java.lang.String.toLowerCase()",
            "java.lang.String.toUpperCase()", "java.lang.String.getBytes()", "java.lang.String.<init>([B)",
            "java.lang.String.formatted([Ljava.lang.Object;)",
            "java.lang.String.format(java.lang.String,[Ljava.lang.Object;)");

    @ArchTest
    static final ArchRule MATHEMATICS_IS_STRICT = noClasses().should().accessTargetWhere(where("Math's own rounding",
            access -> access.getTargetOwner().getName().equals("java.lang.Math")
                    && TRANSCENDENTAL.contains(access.getTarget().getName())));

    @ArchTest
    static final ArchRule NOTHING_OF_THE_MACHINE_IS_READ = noClasses().that().resideInAnyPackage(THE_LANGUAGE)
            .should().accessTargetWhere(where("a call that reads the machine", access -> OF_THE_MACHINE.contains(
                    access.getTargetOwner().getName() + "." + access.getTarget().getName())));

    @ArchTest
    static final ArchRule LOCALE_AND_CHARSET_ARE_SAID = noClasses().should().accessTargetWhere(
            where("a call that follows the default locale or charset", PromisesTest::isWithoutSaying));

    @ArchTest
    static final ArchRule CLASSES_ARE_NAMED_FOR_WHAT_THEY_ARE = noClasses().should()
            .haveNameMatching(".*(Manager|Helper|Util|Utils)(\\$.*)?");

    private static DescribedPredicate<JavaAccess<?>> where(String what, java.util.function.Predicate<JavaAccess<?>> is) {
        return describe("it is " + what, is);
    }

    private static boolean isWithoutSaying(JavaAccess<?> access) {
        return access.getTarget() instanceof com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget target
                && WITHOUT_SAYING.contains(target.getOwner().getName() + "." + target.getName() + "("
                        + String.join(",", target.getRawParameterTypes().stream().map(t -> t.getName()).toList()) + ")");
    }
}
