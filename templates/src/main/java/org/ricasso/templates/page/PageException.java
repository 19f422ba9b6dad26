package org.ricasso.templates.page;

/** A mistake in a template. Nothing of the set is handed out. */
public final class PageException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String template;
    private final int line;
    private final int column;
    private final String page;
    private final String problem;

    /**
     * @param template the template's name
     * @param line the line in it from 1, or 0 where it is not known
     * @param column the column in it from 1, or 0 where it is not known
     * @param page the path of the page that was being rendered
     * @param problem what is wrong, for people
     */
    public PageException(String template, int line, int column, String page, String problem, Throwable cause) {
        super(template + ":" + line + ":" + column + ": " + problem + " (while rendering " + page + ")", cause);
        this.template = template;
        this.line = line;
        this.column = column;
        this.page = page;
        this.problem = problem;
    }

    public String template() {
        return template;
    }

    public int line() {
        return line;
    }

    public int column() {
        return column;
    }

    public String page() {
        return page;
    }

    public String problem() {
        return problem;
    }
}
