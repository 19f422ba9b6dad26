package org.ricasso.dsl.diagnostics;

import org.ricasso.dsl.source.Span;

/** What texts that could not be read take from what is said of the rest: a consequence is no finding of its own. */
public interface Unreadable {
    /** Texts that were read whole. */
    Unreadable NOTHING = new Unreadable() {
        @Override
        public boolean speaksOf(String name) {
            return false;
        }

        @Override
        public boolean marks(Span span) {
            return false;
        }

        @Override
        public boolean declarationLost() {
            return false;
        }

        @Override
        public boolean ofVocabulary() {
            return false;
        }
    };

    /** Whether a name stands where the text could not be read, so that its declaration may be what was lost. */
    boolean speaksOf(String name);

    /** Whether a place stands on a line that could not be read. */
    boolean marks(Span span);

    /** Whether the head of a declaration could not be read, so that any name may be the one that was lost. */
    boolean declarationLost();

    /** Whether a declaration of the vocabulary could not be read whole. */
    boolean ofVocabulary();
}
