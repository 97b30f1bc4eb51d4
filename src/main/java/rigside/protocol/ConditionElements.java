package rigside.protocol;

import rigside.protocol.Condition.ParticleReading;
import rigside.yaml.Element;
import rigside.yaml.Key;
import rigside.yaml.Shape;

/** What is compared, and the pieces worn. */
final class ConditionElements {
    static final Element SPECIMEN =
            Element.of(
                    "specimen",
                    "The physical piece worn in a condition. One piece cannot speak for its whole"
                            + " make, and results say so.",
                    Key.required(
                            "piece",
                            Lines.ANY,
                            "How the piece is marked, so that it is found again."),
                    Key.required(
                            "worn-before",
                            new Shape.Whole(0, ConditionReader.MOST_WORN),
                            "How often it was put on before this session: seals and straps change"
                                    + " with wear."));

    static final Element CONDITION =
            Element.of(
                    "condition",
                    "One of the things compared: a mask as it is, the same mask with a part,"
                            + " another size, another strap. The first one listed is the reference;"
                            + " every other one is compared with it.",
                    Key.required(
                            "id",
                            Lines.ID,
                            "The short word other parts of the file refer to it by."),
                    Key.required("title", Lines.ANY, "The words the tester sees."),
                    Key.required(
                            "specimen",
                            new Shape.Group(SPECIMEN),
                            "The piece worn and how often it was worn before."),
                    Key.sometimes(
                            "particle-reading",
                            Shape.Word.of(ParticleReading.class, ConditionElements::meaning),
                            "where a fit factor is measured",
                            "Where the particles come from that are found inside the mask."));

    private ConditionElements() {}

    private static String meaning(ParticleReading reading) {
        return switch (reading) {
            case SEAL_ONLY ->
                    "the filters let next to nothing through, so what is found in the mask came"
                            + " past the seal";
            case SEAL_AND_FILTER ->
                    "some came through the filter: a fit factor then mixes seal and filter, and the"
                            + " report says so";
        };
    }
}
