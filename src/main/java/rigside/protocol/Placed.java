package rigside.protocol;

import java.util.List;
import rigside.yaml.Value;

/**
 * A step in its place in a part of the procedure, with groups written out.
 *
 * @param step as it will be, but for what it depends on
 * @param feeds the measures it feeds, at their places
 * @param depends the earlier answers it depends on
 */
record Placed(Step step, List<Value<String>> feeds, List<Depends> depends) {
    Placed {
        feeds = List.copyOf(feeds);
        depends = List.copyOf(depends);
    }

    /**
     * An earlier answer, as it is written.
     *
     * @param back see {@link OnlyIf}
     */
    record Depends(OnlyIfText text, int back) {}
}
