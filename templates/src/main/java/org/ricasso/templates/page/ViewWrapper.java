package org.ricasso.templates.page;

import freemarker.ext.beans.MemberSelectorListMemberAccessPolicy;
import freemarker.ext.beans.WhitelistMemberAccessPolicy;
import freemarker.template.DefaultObjectWrapper;
import freemarker.template.DefaultObjectWrapperConfiguration;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.Version;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;

/**
 * What templates can reach: the components of the view records, and nothing else of any object. Every text passes here
 * on its way to a template, so this is where it is made fit for a page.
 */
final class ViewWrapper extends DefaultObjectWrapper {
    private static final List<Class<? extends Record>> VIEWS = List.of(
            CoverageMatrix.class, CoverageMatrix.Cell.class, CoverageMatrix.Characteristic.class, CoverageMatrix.Process.class,
            CoverageMatrix.Row.class, Fact.class, LanguageLink.class, Finding.class, Finding.Place.class, Finding.Cure.class, Identity.class, Knowledge.class,
            Overview.class,
            Overview.Product.class, RouteCard.class, RouteCard.Rework.class, RouteCard.Row.class, RuleReport.class, RuleReport.Made.class, RuleReport.Room.class,
            RuleReport.Ruling.class, RuleReport.Place.class, Shown.class,
            Shown.Line.class, SpecSheet.class, SpecSheet.Section.class, SpecSheet.Group.class, SpecSheet.Row.class,
            SpecSheet.Became.class, StepLink.class, WorkInstruction.class, WorkInstruction.Arrival.class,
            WorkInstruction.Caution.class, WorkInstruction.Check.class, WorkInstruction.Clock.class,
            WorkInstruction.Run.class, WorkInstruction.Sign.class, WorkInstruction.Work.class);

    ViewWrapper(Version version) {
        super(new Settings(version), true);
    }

    private static final class Settings extends DefaultObjectWrapperConfiguration {
        Settings(Version version) {
            super(version);
            setMemberAccessPolicy(new WhitelistMemberAccessPolicy(components()));
            setDOMNodeSupport(false);
            setJythonSupport(false);
        }
    }

    private static List<MemberSelectorListMemberAccessPolicy.MemberSelector> components() {
        List<MemberSelectorListMemberAccessPolicy.MemberSelector> result = new ArrayList<>();
        for (Class<? extends Record> view : VIEWS) {
            for (RecordComponent component : view.getRecordComponents()) {
                result.add(new MemberSelectorListMemberAccessPolicy.MemberSelector(view, component.getAccessor()));
            }
        }
        return result;
    }

    @Override
    public TemplateModel wrap(Object object) throws TemplateModelException {
        return object instanceof String text ? MarkedText.model(text) : super.wrap(object);
    }
}
