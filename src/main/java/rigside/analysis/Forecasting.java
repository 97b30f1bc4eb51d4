package rigside.analysis;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import rigside.decide.Forecast;
import rigside.decide.Forecasts;

/**
 * Forecasts, each played once: an analysis is asked for after every key, while its rounds change
 * only from donning to donning, and playing takes some tens of milliseconds. What comes back is a
 * pure function of the arguments all the same.
 */
final class Forecasting {

    private static final int KEPT = 64;

    private static final Map<Asked, Forecast> PLAYED =
            new LinkedHashMap<>(KEPT, 0.75f, true) {
                private static final long serialVersionUID = 1L;

                @Override
                protected boolean removeEldestEntry(Map.Entry<Asked, Forecast> eldest) {
                    return size() > KEPT;
                }
            };

    private record Asked(Setting setting, Rows rows, long seed, int rounds) {}

    private Forecasting() {}

    /**
     * What going on from these values may bring.
     *
     * @param seed of the session
     * @param rounds complete so far; each has random numbers of its own
     */
    static Forecast of(Setting setting, Rows rows, long seed, int rounds) {
        Asked asked = new Asked(setting, rows, seed, rounds);
        synchronized (PLAYED) {
            return PLAYED.computeIfAbsent(asked, Forecasting::played);
        }
    }

    private static Forecast played(Asked asked) {
        Setting setting = asked.setting();
        Rows rows = asked.rows();
        Scale scale = setting.scale();
        Random random = new Random(asked.seed() * 31 + asked.rounds());
        return setting.isPaired()
                ? Forecasts.paired(
                        setting.rules(rows),
                        rows.differences(scale),
                        setting.plan().most() - asked.rounds() + rows.other().size(),
                        setting.compared().expectedSpread(),
                        random)
                : Forecasts.independent(
                        setting.rules(rows),
                        rows.reference(scale),
                        rows.other(scale),
                        setting.compared().expectedSpread(),
                        random);
    }
}
