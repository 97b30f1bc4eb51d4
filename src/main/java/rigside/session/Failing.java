package rigside.session;

import java.util.Map;
import java.util.TreeMap;

/**
 * The instruments that fail now.
 *
 * @param why what is wrong with each, in words that begin with its id; by its id
 */
public record Failing(Map<String, String> why) {
    static final Failing NONE = new Failing(Map.of());

    public Failing {
        why = Map.copyOf(why);
    }

    Failing failing(String feed, String words) {
        Map<String, String> changed = new TreeMap<>(why);
        changed.put(feed, words);
        return new Failing(changed);
    }

    Failing well(String feed) {
        Map<String, String> changed = new TreeMap<>(why);
        changed.remove(feed);
        return new Failing(changed);
    }
}
