package rigside.protocol;

import java.util.List;
import java.util.Optional;

/**
 * One timed activity.
 *
 * @param title its name
 * @param say what to do and say
 * @param seconds its length
 * @param counted whether it enters the overall value
 * @param ambient when ambient air is sampled, in time order; may be empty
 * @param mask when the air in the mask is sampled
 * @param pressure when the mask pressure is read
 */
public record Exercise(
        String title,
        String say,
        double seconds,
        boolean counted,
        List<Window> ambient,
        Optional<Window> mask,
        Optional<Window> pressure) {
    public Exercise {
        ambient = List.copyOf(ambient);
    }
}
