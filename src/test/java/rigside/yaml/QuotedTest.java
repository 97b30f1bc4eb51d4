package rigside.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QuotedTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "plain words",
                "a \"quoted\" part",
                "it's",
                "back\\slash \\n \\u0041",
                "key: value # no comment",
                "- no item",
                "[no, list] {no: group}",
                "*alias &anchor !tag %directive @at `tick`",
                "yes",
                "012",
                "3 %",
                "\u00fc \u00e9 \u4e2d\u6587 \ud83d\ude37 \u200d",
                "|",
                ">-",
                "? what",
                "~"
            })
    void whateverTextHoldsIsReadBackAsItIs(String text) {
        assertEquals(Optional.empty(), Quoted.refusal(text));
        Document<String> read =
                Document.read(
                        "a.yaml",
                        "text: " + Quoted.text(text) + "\n",
                        fields -> {
                            Value<String> line = fields.required("text").line();
                            return fields.make(line::get);
                        });
        assertEquals(Optional.of(text), read.value(), () -> read.problems().toString());
    }

    @Test
    void whatCannotStandOnALineIsRefusedWithItsReason() {
        assertEquals(Optional.of("nothing is written"), Quoted.refusal("  "));
        assertEquals(
                Optional.of("it is 121 characters long, of at most 120"),
                Quoted.refusal("x".repeat(121)));
        assertEquals(Optional.empty(), Quoted.refusal("\ud83d\ude37".repeat(120)));
        assertTrue(Quoted.refusal("a\u202eb").orElseThrow().contains("U+202E"));
        assertTrue(Quoted.refusal("a\nb").isPresent());
        assertTrue(Quoted.refusal("half \ud83d").isPresent());
    }
}
