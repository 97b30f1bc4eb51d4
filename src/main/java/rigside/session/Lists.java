package rigside.session;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/** Changed copies of immutable lists. */
final class Lists {
    private Lists() {}

    static <T> List<T> plus(List<T> list, T last) {
        List<T> longer = new ArrayList<>(list);
        longer.add(last);
        return List.copyOf(longer);
    }

    /**
     * The list with the one element that matches changed.
     *
     * @throws DoesNotApply if none matches
     */
    static <T> List<T> changed(List<T> list, Predicate<T> which, UnaryOperator<T> change) {
        if (list.stream().noneMatch(which)) {
            throw new DoesNotApply("it changes something that is not there");
        }
        return list.stream().map(each -> which.test(each) ? change.apply(each) : each).toList();
    }
}
