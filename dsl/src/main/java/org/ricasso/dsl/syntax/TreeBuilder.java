package org.ricasso.dsl.syntax;

import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.ParserRuleContext;
import org.ricasso.dsl.diagnostics.Diagnostic;
import org.ricasso.dsl.source.SourceFile;
import org.ricasso.dsl.source.Span;
import org.ricasso.dsl.syntax.Declaration.Effect;
import org.ricasso.dsl.syntax.Declaration.ValueEntry;
import org.ricasso.dsl.syntax.grammar.SpecParser;

/** Makes the tree's declarations of what ANTLR read; what only looks right to the grammar is found here. */
final class TreeBuilder {
    private final SourceFile file;
    private final List<Diagnostic> findings;
    private final Spans spans;
    private final TextBuilder texts;
    private final ExpressionBuilder expressions;
    private final BlockBuilder blocks;

    TreeBuilder(SourceFile file, List<Diagnostic> findings) {
        this.file = file;
        this.findings = findings;
        this.spans = new Spans(file);
        this.texts = new TextBuilder(file, findings);
        this.expressions = new ExpressionBuilder(spans, texts, findings);
        this.blocks = new BlockBuilder(spans, expressions, findings);
    }

    SyntaxTree tree(SpecParser.FileContext context) {
        return new SyntaxTree(file, context.declaration().stream().map(this::declaration).toList());
    }

    Expression value(SpecParser.ValueContext context) {
        return expressions.value(context);
    }

    Expression expression(SpecParser.ExprContext context) {
        return expressions.expression(context);
    }

    private Declaration declaration(SpecParser.DeclarationContext context) {
        if (context instanceof SpecParser.ThingDeclarationContext thing) {
            return new Declaration.ThingDeclaration(spans.name(thing.start), head(thing.head()),
                    blocks.block(thing.block()), headSpan(context, thing.head()));
        }
        if (context instanceof SpecParser.KindDeclarationContext kind) {
            return new Declaration.KindDeclaration(head(kind.head()), blocks.fields(kind.fieldBlock()),
                    headSpan(context, kind.head()));
        }
        if (context instanceof SpecParser.WorkpieceDeclarationContext piece) {
            return workpiece(piece);
        }
        if (context instanceof SpecParser.OperationDeclarationContext operation) {
            return operation(operation);
        }
        if (context instanceof SpecParser.RouteDeclarationContext route) {
            return new Declaration.RouteDeclaration(head(route.head()), blocks.routeItems(route.routeBlock()),
                    headSpan(context, route.head()));
        }
        if (context instanceof SpecParser.WordsDeclarationContext words) {
            return new Declaration.WordsDeclaration(spans.name(words.word()),
                    words.wordsBlock().wordsItem().stream().map(this::wordsItem).toList(), headSpan(context, words.word()));
        }
        return context instanceof SpecParser.TableDeclarationContext table ? table(table)
                : rule((SpecParser.RuleDeclarationContext) context);
    }

    private Head head(SpecParser.HeadContext context) {
        return new Head(spans.name(context.name(0)), texts.optional(context.STRING()),
                spans.optionalName(context.like), spans.optionalName(context.replaces));
    }

    private Declaration.WordsItem wordsItem(SpecParser.WordsItemContext context) {
        if (context instanceof SpecParser.WordsEntryContext entry) {
            return new Declaration.Translation(blocks.path(entry.path()), texts.text(entry.STRING().getSymbol()),
                    spans.of(entry));
        }
        SpecParser.WordsPartContext part;
        Name name;
        Text title = null;
        if (context instanceof SpecParser.WordsOfContext of) {
            part = of.wordsPart();
            name = spans.name(of.name());
            title = texts.optional(of.STRING());
        } else {
            SpecParser.WordsOfWorkpieceContext piece = (SpecParser.WordsOfWorkpieceContext) context;
            part = piece.wordsPart();
            name = spans.name(piece.word());
        }
        List<Declaration.Translation> entries = new ArrayList<>();
        List<Text> instruct = new ArrayList<>();
        for (SpecParser.WordsLineContext line : part.wordsLine()) {
            if (line instanceof SpecParser.WordsTextContext text) {
                entries.add(new Declaration.Translation(blocks.column(text.column()), texts.text(text.STRING().getSymbol()),
                        spans.of(text)));
            } else {
                ((SpecParser.WordsInstructContext) line).textBlock().STRING()
                        .forEach(s -> instruct.add(texts.text(s.getSymbol())));
            }
        }
        return new Declaration.WordsOf(spans.name(context.start), name, title, entries, instruct, spans.of(name(context)));
    }

    private static ParserRuleContext name(SpecParser.WordsItemContext context) {
        return context instanceof SpecParser.WordsOfContext of ? of.name()
                : ((SpecParser.WordsOfWorkpieceContext) context).word();
    }

    private Span headSpan(ParserRuleContext declaration, ParserRuleContext head) {
        return spans.of(declaration.start, head.stop);
    }

    private Declaration workpiece(SpecParser.WorkpieceDeclarationContext context) {
        List<Field> fields = new ArrayList<>();
        List<Declaration.Part> parts = new ArrayList<>();
        for (SpecParser.PieceItemContext item : context.pieceBlock().pieceItem()) {
            if (item.field() != null) {
                fields.add(blocks.field(item.field()));
            } else {
                SpecParser.PartContext part = item.part();
                parts.add(new Declaration.Part(spans.name(part.word()), texts.optional(part.STRING()),
                        blocks.fields(part.fieldBlock())));
            }
        }
        return new Declaration.WorkpieceDeclaration(spans.name(context.word()), fields, parts,
                headSpan(context, context.word()));
    }

    private Declaration operation(SpecParser.OperationDeclarationContext context) {
        Sections sections = new Sections(spans, findings);
        List<ValueEntry> entries = new ArrayList<>();
        List<Field> takes = new ArrayList<>();
        List<Declaration.Need> needs = new ArrayList<>();
        List<Effect> leaves = new ArrayList<>();
        List<ValueEntry> time = new ArrayList<>();
        List<Text> instruct = new ArrayList<>();
        for (SpecParser.OperationItemContext item : context.operationBlock().operationItem()) {
            if (item instanceof SpecParser.OperationEntryContext entry) {
                entries.add(valueEntry(entry.valueEntry()));
                continue;
            }
            sections.once(item.start);
            if (item instanceof SpecParser.TakesContext section) {
                takes.addAll(blocks.fields(section.fieldBlock()));
            } else if (item instanceof SpecParser.NeedsContext section) {
                section.needsBlock().need().forEach(n -> needs.add(need(n)));
            } else if (item instanceof SpecParser.LeavesContext section) {
                section.leavesBlock().effect().forEach(e -> leaves.add(effect(e)));
            } else if (item instanceof SpecParser.TimeContext section) {
                time.addAll(valueEntries(section.valueBlock()));
            } else if (item instanceof SpecParser.InstructContext section) {
                section.textBlock().STRING().forEach(s -> instruct.add(texts.text(s.getSymbol())));
            }
        }
        return new Declaration.OperationDeclaration(head(context.head()), entries, takes, needs, leaves, time, instruct,
                headSpan(context, context.head()));
    }

    private Declaration.Need need(SpecParser.NeedContext context) {
        return new Declaration.Need(blocks.path(context.path()), expressions.value(context.value()),
                texts.text(context.STRING().getSymbol()), spans.of(context));
    }

    private Effect effect(SpecParser.EffectContext context) {
        return context.let() != null ? let(context.let())
                : new Effect.Leave(blocks.path(context.path()), expressions.value(context.value()), spans.of(context));
    }

    private Effect.Let let(SpecParser.LetContext context) {
        return new Effect.Let(spans.name(context.word()), expressions.value(context.value()), spans.of(context));
    }

    private ValueEntry valueEntry(SpecParser.ValueEntryContext context) {
        return new ValueEntry(spans.name(context.word()), expressions.value(context.value()), spans.of(context));
    }

    private List<ValueEntry> valueEntries(SpecParser.ValueBlockContext context) {
        return context.valueEntry().stream().map(this::valueEntry).toList();
    }

    private Declaration table(SpecParser.TableDeclarationContext context) {
        Sections sections = new Sections(spans, findings);
        List<Field> columns = new ArrayList<>();
        List<ValueEntry> entries = new ArrayList<>();
        Grid rows = null;
        for (SpecParser.TableItemContext item : context.tableBlock().tableItem()) {
            if (item instanceof SpecParser.ColumnsContext section) {
                sections.once(item.start);
                columns.addAll(blocks.fields(section.fieldBlock()));
                continue;
            }
            SpecParser.TableEntryContext entry = (SpecParser.TableEntryContext) item;
            Name name = spans.name(entry.word());
            if (entry.entryValue().grid() == null) {
                entries.add(new ValueEntry(name, expressions.value(entry.entryValue().value()), spans.of(entry)));
            } else if (name.text().equals("rows")) {
                sections.once(item.start);
                rows = blocks.grid(entry.entryValue().grid());
            } else {
                findings.add(SyntaxFindings.gridNotHere(name));
            }
        }
        return new Declaration.TableDeclaration(head(context.head()), columns, entries, rows,
                headSpan(context, context.head()));
    }

    private Declaration rule(SpecParser.RuleDeclarationContext context) {
        Sections sections = new Sections(spans, findings);
        List<Effect.Let> lets = new ArrayList<>();
        List<ValueEntry> entries = new ArrayList<>();
        List<ValueEntry> remedy = new ArrayList<>();
        Span remedySpan = null;
        List<Declaration.Example> examples = new ArrayList<>();
        for (SpecParser.RuleItemContext item : context.ruleBlock().ruleItem()) {
            if (item instanceof SpecParser.RuleLetContext let) {
                lets.add(let(let.let()));
            } else if (item instanceof SpecParser.RemedyContext section) {
                sections.once(item.start);
                remedy.addAll(valueEntries(section.valueBlock()));
                remedySpan = spans.of(section.start);
            } else if (item instanceof SpecParser.ExampleContext example) {
                examples.add(example(example));
            } else if (item instanceof SpecParser.RuleEntryContext entry) {
                entries.add(valueEntry(entry.valueEntry()));
            }
        }
        return new Declaration.RuleDeclaration(head(context.head()), lets, entries, remedy, remedySpan, examples,
                headSpan(context, context.head()));
    }

    private Declaration.Example example(SpecParser.ExampleContext context) {
        List<Declaration.Binding> bindings = new ArrayList<>();
        for (SpecParser.BindingContext binding : context.exampleBlock().binding()) {
            bindings.add(new Declaration.Binding(blocks.path(binding.path()), blocks.entryValue(binding.entryValue()),
                    spans.of(binding)));
        }
        return new Declaration.Example(spans.name(context.word()), bindings, headSpan(context, context.word()));
    }
}
