package rigside.journal;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import rigside.session.Place;
import rigside.session.Slot;
import rigside.session.Stage;
import rigside.session.Value;

/** Puts fields into a JSON object one after the other; their order is the order on the line. */
record Line(ObjectNode node) {

    Line put(String name, long value) {
        node.put(name, value);
        return this;
    }

    /** A number; one that is not finite is put as a word. */
    Line put(String name, double value) {
        if (Math.abs(value) <= Double.MAX_VALUE) {
            node.put(name, value);
        } else {
            node.put(name, NonFinite.word(value));
        }
        return this;
    }

    /** Nothing when empty. */
    Line put(String name, OptionalDouble value) {
        return value.isPresent() ? put(name, value.getAsDouble()) : this;
    }

    Line put(String name, String value) {
        node.put(name, Objects.requireNonNull(value, name));
        return this;
    }

    Line put(String name, boolean value) {
        node.put(name, value);
        return this;
    }

    Line put(String name, List<Integer> values) {
        ArrayNode array = node.putArray(name);
        values.forEach(array::add);
        return this;
    }

    <T> Line put(String name, List<T> values, BiConsumer<Line, T> each) {
        ArrayNode array = node.putArray(name);
        values.forEach(value -> each.accept(new Line(array.addObject()), value));
        return this;
    }

    Line put(Place place) {
        Line line = new Line(node.putObject("place")).put("stage", Words.of(place.stage()));
        if (place.stage() == Stage.DONNING) {
            line.put("donning", place.donning());
        }
        line.put("step", place.step());
        return this;
    }

    Line put(Slot slot) {
        Line inner = new Line(node.putObject("slot"));
        slot.match(new SlotWriter(inner));
        return this;
    }

    Line put(Value value) {
        Line inner = new Line(node.putObject("value"));
        if (value instanceof Value.Measured measured) {
            inner.put("number", measured.quantity().value())
                    .put("unit", measured.quantity().unit().symbol());
        } else if (value instanceof Value.Said said) {
            inner.put("text", said.text());
        } else {
            throw new IllegalStateException("no written form for " + value.getClass());
        }
        return this;
    }

    /** The written form of a gap. */
    private record SlotWriter(Line line) implements Slot.Cases<Line> {
        @Override
        public Line field(Slot.Field slot) {
            return start("field", slot).put("id", slot.id());
        }

        @Override
        public Line ambient(Slot.Ambient slot) {
            return start("ambient", slot)
                    .put("exercise", slot.exercise())
                    .put("window", slot.window());
        }

        @Override
        public Line mask(Slot.Mask slot) {
            return start("mask", slot).put("exercise", slot.exercise());
        }

        @Override
        public Line pressure(Slot.Pressure slot) {
            return start("pressure", slot).put("exercise", slot.exercise());
        }

        @Override
        public Line trial(Slot.Trial slot) {
            return start("trial", slot).put("trial", slot.trial());
        }

        @Override
        public Line gate(Slot.Gate slot) {
            return start("gate", slot).put("gate", slot.gate());
        }

        private Line start(String kind, Slot slot) {
            return line.put("kind", kind).put(slot.place());
        }
    }
}
