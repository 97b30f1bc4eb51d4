package rigside.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rigside.protocol.Field;
import rigside.protocol.OnlyIf;
import rigside.protocol.Protocol;
import rigside.protocol.Step;

/** When a step is done at all, whatever the condition: in words, for who reads no ids. */
record When(Protocol protocol) {

    static List<Block> of(Protocol protocol, Step step) {
        List<Block> blocks = new ArrayList<>();
        if (step.head().applies().onlyAfterPuttingOn()) {
            blocks.add(new Block.Words("Only when the mask was just put on."));
        }
        When when = new When(protocol);
        step.head()
                .applies()
                .onlyIf()
                .forEach(each -> blocks.add(new Block.Words(when.words(each))));
        return List.copyOf(blocks);
    }

    /** A group that depends on an answer is done whole or not at all. */
    private String words(OnlyIf onlyIf) {
        return "Only if "
                + (onlyIf.back() > 0 ? "before this group of steps " : "")
                + "'"
                + asked(onlyIf.answer())
                + "' "
                + onlyIf.test().words()
                + ".";
    }

    private String asked(String id) {
        Stream<Step> steps =
                Stream.of(protocol.before(), protocol.donning(), protocol.after())
                        .flatMap(List::stream);
        return Stream.concat(texts(protocol.facts(), id), steps.flatMap(step -> texts(step, id)))
                .findFirst()
                .orElse(id);
    }

    private static Stream<String> texts(Step step, String id) {
        if (step instanceof Step.Checklist list) {
            return list.items().stream()
                    .filter(item -> item.id().filter(id::equals).isPresent())
                    .map(Step.Checklist.Item::text);
        }
        if (step instanceof Step.Form form) {
            return texts(form.fields(), id);
        }
        return step instanceof Step.Observations seen ? texts(seen.fields(), id) : Stream.empty();
    }

    private static Stream<String> texts(List<Field> fields, String id) {
        return fields.stream().filter(field -> field.id().equals(id)).map(Field::ask);
    }
}
