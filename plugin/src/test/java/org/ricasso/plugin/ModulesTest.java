package org.ricasso.plugin;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The modules depend on each other in one direction. This module sees them all, so the rule is kept here. */
@AnalyzeClasses(packages = "org.ricasso", importOptions = ImportOption.DoNotIncludeTests.class)
class ModulesTest {
    private static final String SHARED = "org.ricasso.shared..";
    private static final String DSL = "org.ricasso.dsl..";
    private static final String TEMPLATES = "org.ricasso.templates..";
    private static final String PLUGIN = "org.ricasso.plugin..";

    @ArchTest
    static void allModulesAreSeen(JavaClasses classes) {
        for (String module : new String[] {SHARED, DSL, TEMPLATES, PLUGIN}) {
            assertThat(classes.that(resideInAPackage(module))).as(module).isNotEmpty();
        }
        assertThat(classes.that(not(resideInAnyPackage(SHARED, DSL, TEMPLATES, PLUGIN)))).isEmpty();
    }

    @ArchTest
    static final ArchRule SHARED_USES_NOTHING_OF_OURS = noClasses().that().resideInAPackage(SHARED)
            .should().dependOnClassesThat().resideInAnyPackage(DSL, TEMPLATES, PLUGIN);

    @ArchTest
    static final ArchRule THE_LANGUAGE_USES_SHARED_ALONE = noClasses().that().resideInAPackage(DSL)
            .should().dependOnClassesThat().resideInAnyPackage(TEMPLATES, PLUGIN);

    @ArchTest
    static final ArchRule PAGES_DO_NOT_KNOW_THE_PLUGIN = noClasses().that().resideInAPackage(TEMPLATES)
            .should().dependOnClassesThat().resideInAPackage(PLUGIN);

    @ArchTest
    static final ArchRule ONLY_THE_PLUGIN_KNOWS_MAVEN = noClasses().that().resideOutsideOfPackage(PLUGIN)
            .should().dependOnClassesThat().resideInAPackage("org.apache.maven..");

    @ArchTest
    static final ArchRule ONLY_THE_GOALS_KNOW_MAVEN = noClasses().that()
            .resideInAnyPackage("org.ricasso.plugin.report..", "org.ricasso.plugin.publish..")
            .should().dependOnClassesThat().resideInAPackage("org.apache.maven..");

    @ArchTest
    static final ArchRule ONLY_PAGES_KNOW_THE_TEMPLATE_ENGINE = noClasses().that().resideOutsideOfPackage(TEMPLATES)
            .should().dependOnClassesThat().resideInAPackage("freemarker..");

    @ArchTest
    static final ArchRule GOALS_ARE_NAMED_ALIKE = classes().that().haveSimpleNameEndingWith("Mojo")
            .should().resideInAPackage("org.ricasso.plugin");
}
