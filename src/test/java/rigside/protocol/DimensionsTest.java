package rigside.protocol;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import rigside.session.Story;

/** Every quantity of a protocol takes its unit; one of another kind is told with both kinds. */
class DimensionsTest {
    /** Where a key has a number with a unit after it, or two numbers. */
    private static final Pattern AMOUNT =
            Pattern.compile("([a-z][a-z-]*): ((?:[0-9.]+ to )?[0-9.]+) ([A-Za-z%/][^\n,}\\]#]*)");

    /** A key, and the file with another unit behind it. */
    private record Changed(String key, String text) {}

    private static List<Changed> all(String unit) {
        List<Changed> all = new ArrayList<>();
        for (String resource :
                List.of(
                        "/rigside/protocol/base.yaml",
                        "/session/groups.yaml",
                        "/protocols/seal-and-breathing.yaml")) {
            String text = Story.text(resource);
            Matcher amount = AMOUNT.matcher(text);
            while (amount.find()) {
                all.add(
                        new Changed(
                                amount.group(1),
                                text.substring(0, amount.end(2))
                                        + unit
                                        + " "
                                        + text.substring(amount.end())));
            }
        }
        return all;
    }

    private static String problems(Changed changed) {
        return Shipped.problems(changed.text()).toString();
    }

    @Test
    void aQuantityOfAnotherKindIsToldWithWhatItIsAndWhatItMustBe() {
        Pattern both = Pattern.compile(" K', a temperature, must be (a|an|between) [a-z]");
        for (Changed changed : all(" K")) {
            String problems = problems(changed);
            assertTrue(
                    both.matcher(problems).find() && problems.contains("'" + changed.key() + "'"),
                    changed.key() + ": " + problems);
        }
    }

    @Test
    void aQuantityWithoutItsUnitIsToldToo() {
        Pattern both = Pattern.compile("', a plain number, must be (a|an|between) [a-z]");
        for (Changed changed : all("")) {
            String problems = problems(changed);
            assertTrue(
                    both.matcher(problems).find() && problems.contains("'" + changed.key() + "'"),
                    changed.key() + ": " + problems);
        }
    }

    /** So that the files keep the quantities that these tests are about. */
    @Test
    void theFilesHaveQuantitiesOfManyKinds() {
        Set<String> keys = new TreeSet<>();
        all("").forEach(each -> keys.add(each.key()));
        List<String> known =
                List.of(
                        ("above ambient at-least at-most confidence detection-limit donning-takes"
                                        + " expected-spread for held-for lead-in longest mask"
                                        + " meaningful pressure resolution rest sample-flow"
                                        + " shortest target tolerance trial-takes")
                                .split(" "));
        assertTrue(keys.containsAll(known), keys.toString());
    }
}
