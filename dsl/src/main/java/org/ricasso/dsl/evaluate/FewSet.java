package org.ricasso.dsl.evaluate;

import java.util.AbstractSet;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/**
 * A set of few elements in the order in which they came. It takes no room while it is empty, as most are: thousands are made
 * for each product.
 */
final class FewSet<E> extends AbstractSet<E> {
    private List<E> elements = List.of();

    @Override
    public boolean add(E element) {
        if (elements.contains(element)) {
            return false;
        }
        if (elements.isEmpty()) {
            elements = new ArrayList<>(4);
        }
        elements.add(element);
        return true;
    }

    @Override
    public boolean contains(Object element) {
        return elements.contains(element);
    }

    @Override
    public void clear() {
        elements = List.of();
    }

    @Override
    public Iterator<E> iterator() {
        return elements.iterator();
    }

    @Override
    public int size() {
        return elements.size();
    }
}
