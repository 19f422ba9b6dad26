package org.ricasso.dsl.evaluate;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.BinaryOperator;
import java.util.function.UnaryOperator;
import org.ricasso.shared.quantity.Numbers;
import org.ricasso.shared.quantity.Quantity;

/** Operations on numbers that vary along an axis, station by station. */
final class Alongs {
    private Alongs() {}

    static Value map(Value.Along along, UnaryOperator<Quantity> operation) {
        List<Value.Station> result = new ArrayList<>(along.stations().size());
        for (Value.Station station : along.stations()) {
            result.add(new Value.Station(station.label(), station.position(), operation.apply(station.quantity())));
        }
        return new Value.Along(result);
    }

    /** Combines two numbers, of which at least one varies, at the stations of both. */
    static Value combine(Value a, Value b, BinaryOperator<Quantity> operation) {
        if (a instanceof Value.Num num && b instanceof Value.Along along) {
            return map(along, q -> operation.apply(num.quantity(), q));
        }
        if (b instanceof Value.Num num && a instanceof Value.Along along) {
            return map(along, q -> operation.apply(q, num.quantity()));
        }
        TreeMap<Double, String> positions = new TreeMap<>();
        collect((Value.Along) a, positions);
        collect((Value.Along) b, positions);
        List<Value.Station> result = new ArrayList<>(positions.size());
        positions.forEach((position, label) -> result.add(
                new Value.Station(label, position, operation.apply(at(a, position), at(b, position)))));
        return new Value.Along(result);
    }

    private static void collect(Value.Along along, TreeMap<Double, String> positions) {
        for (Value.Station station : along.stations()) {
            Double near = positions.floorKey(station.position() + 1e-9);
            if (near == null || Numbers.compare(near, station.position()) != 0) {
                positions.put(station.position(), station.label());
            }
        }
    }

    /** The value at a station, straight between its neighbours, level beyond the outermost. */
    static Quantity at(Value value, double position) {
        if (value instanceof Value.Num num) {
            return num.quantity();
        }
        List<Value.Station> stations = ((Value.Along) value).stations();
        Value.Station last = stations.get(0);
        if (position <= last.position()) {
            return last.quantity();
        }
        for (Value.Station next : stations.subList(1, stations.size())) {
            if (position <= next.position()) {
                double share = (position - last.position()) / (next.position() - last.position());
                return share >= 1 ? next.quantity() : Arithmetic.between(last.quantity(), next.quantity(), share);
            }
            last = next;
        }
        return last.quantity();
    }

    /** The band of all values between two stations. */
    static Quantity between(Value value, double from, double to, Arithmetic arithmetic) {
        Quantity result = arithmetic.hull(at(value, from), at(value, to));
        if (value instanceof Value.Along along) {
            for (Value.Station station : along.stations()) {
                if (station.position() > from && station.position() < to) {
                    result = arithmetic.hull(result, station.quantity());
                }
            }
        }
        return result;
    }

    /** The band of all values. */
    static Quantity hull(Value.Along along, Arithmetic arithmetic) {
        Quantity result = along.stations().get(0).quantity();
        for (Value.Station station : along.stations()) {
            result = arithmetic.hull(result, station.quantity());
        }
        return result;
    }
}
