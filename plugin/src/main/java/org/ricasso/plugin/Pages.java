package org.ricasso.plugin;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ricasso.dsl.walk.CheckedHouse;
final class Pages {
    static SortedMap<String, byte[]> of(CheckedHouse house) { return new TreeMap<>(); }
}
