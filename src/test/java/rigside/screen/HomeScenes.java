package rigside.screen;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import rigside.session.Story;

/** What a tester looks at away from a session; all of it invented. */
final class HomeScenes {
    private HomeScenes() {}

    private static final HomeView.Rig TYPED = new HomeView.Rig("typed by you", false, 1);

    private static final HomeView.Rig SIMULATED =
            new HomeView.Rig("simulated, 30 times as fast; every value invented", true, 30);

    private static final List<HomeView.ProtocolItem> PROTOCOLS =
            List.of(
                    new HomeView.ProtocolItem(
                            "seal-and-breathing.yaml",
                            "Seal and breathing, with and without an added part",
                            false,
                            0,
                            "about 38 min a round",
                            List.of(
                                    "Does the added part change how well the mask seals or how hard"
                                            + " it is to breathe through?",
                                    "Conditions: Mask as it is; Mask with the added part",
                                    "3 to 10 rounds")),
                    new HomeView.ProtocolItem(
                            "breathing-only.yaml",
                            "Breathing only",
                            false,
                            0,
                            "about 15 min a round",
                            List.of("Is it harder to breathe through?")),
                    new HomeView.ProtocolItem(
                            "my-own.yaml",
                            "",
                            true,
                            2,
                            "",
                            List.of(
                                    "my-own.yaml:31:5: unknown kind of step 'exersises'",
                                    "did you mean 'exercises'?")));

    private static final List<HomeView.SessionItem> SESSIONS =
            List.of(
                    new HomeView.SessionItem(
                            "Seal and breathing, with and without an added part",
                            "5 Jan 2026, 08:00",
                            "round 2, donning 3",
                            true,
                            List.of("Left in the middle of donning 3.")),
                    new HomeView.SessionItem(
                            "Breathing only",
                            "4 Jan 2026, 17:30",
                            "closed, 6 rounds",
                            false,
                            List.of("6 complete rounds.")));

    static Map<String, HomeView> all() {
        Map<String, HomeView> views = new LinkedHashMap<>();
        views.put("home", home(0, SIMULATED, Optional.empty()));
        views.put("home-problems", home(2, TYPED, Optional.of("my-own.yaml has 2 problems")));
        views.put("home-session", home(3, TYPED, Optional.empty()));
        views.put("home-closed-session", home(4, TYPED, Optional.empty()));
        views.put("home-many", many());
        views.put("home-searching", sought(new HomeView.Sought(true, "seal br", 5000, ""), 3));
        views.put(
                "home-none-found",
                sought(new HomeView.Sought(true, "seal brr", 5000, ""), 2, List.of()));
        views.put("home-found", sought(new HomeView.Sought(false, "seal br", 5000, ""), 3));
        views.put(
                "home-reading",
                sought(
                        new HomeView.Sought(false, "", 0, "reading 1200 of 5000 sessions"),
                        0,
                        List.of()));
        views.put("home-long-about", longAbout());
        views.put("home-empty", view(HomeView.Page.HOME, List.of(), List.of(), 0));
        views.put("home-help", view(HomeView.Page.HELP, PROTOCOLS, SESSIONS, 0));
        Story closed = Scenes.ended().goOn();
        views.put("home-review", review(HomeView.Page.REVIEW, closed));
        views.put("home-review-method", review(HomeView.Page.METHOD, closed));
        views.put("home-review-flags", review(HomeView.Page.FLAGS, closed));
        views.put("home-review-help", review(HomeView.Page.HELP, closed));
        views.put(
                "home-review-open",
                review(HomeView.Page.REVIEW, Scenes.rounds(2).purged().exercised("39")));
        views.put("home-about", about());
        return views;
    }

    private static HomeView home(int selected, HomeView.Rig rig, Optional<String> message) {
        return new HomeView(
                HomeView.Page.HOME,
                PROTOCOLS,
                SESSIONS,
                selected,
                rig,
                HomeView.Review.NONE,
                message,
                Scenes.UNICODE);
    }

    private static HomeView view(
            HomeView.Page page,
            List<HomeView.ProtocolItem> protocols,
            List<HomeView.SessionItem> sessions,
            int selected) {
        return new HomeView(
                page,
                protocols,
                sessions,
                selected,
                TYPED,
                HomeView.Review.NONE,
                Optional.empty(),
                Scenes.UNICODE);
    }

    private static HomeView sought(HomeView.Sought sought, int selected) {
        return sought(sought, selected, SESSIONS);
    }

    private static HomeView sought(
            HomeView.Sought sought, int selected, List<HomeView.SessionItem> sessions) {
        return new HomeView(
                HomeView.Page.HOME,
                PROTOCOLS,
                sessions,
                sought,
                selected,
                TYPED,
                HomeView.Review.NONE,
                Optional.empty(),
                Scenes.UNICODE);
    }

    private static HomeView many() {
        List<HomeView.SessionItem> sessions =
                IntStream.rangeClosed(1, 40)
                        .mapToObj(
                                at ->
                                        new HomeView.SessionItem(
                                                "Session " + at,
                                                "5 Jan 2026, 08:00",
                                                "closed, 3 rounds",
                                                false,
                                                List.of("Number " + at + ".")))
                        .toList();
        return view(HomeView.Page.HOME, PROTOCOLS, sessions, 30);
    }

    private static HomeView longAbout() {
        List<String> detail =
                IntStream.rangeClosed(1, 40).mapToObj(at -> "Paragraph " + at + ".").toList();
        HomeView.ProtocolItem item =
                new HomeView.ProtocolItem(
                        "long.yaml", "Much to say", true, 0, "about 38 min", detail);
        return view(HomeView.Page.HOME, List.of(item), SESSIONS, 0);
    }

    static HomeView review(HomeView.Page page, Story story) {
        View read = Reasons.in(Scenes.step(story));
        return new HomeView(
                page,
                PROTOCOLS,
                SESSIONS,
                0,
                TYPED,
                new HomeView.Review(
                        "Small comparison",
                        List.of(),
                        Optional.of(new HomeView.Read(read.state(), read.shown(), true)),
                        IntStream.rangeClosed(1, 30).mapToObj(at -> "Line " + at).toList(),
                        true,
                        30),
                Optional.empty(),
                Scenes.UNICODE);
    }

    private static HomeView about() {
        return new HomeView(
                HomeView.Page.REVIEW,
                PROTOCOLS,
                SESSIONS,
                0,
                TYPED,
                new HomeView.Review(PROTOCOLS.get(0).title(), PROTOCOLS.get(0).detail()),
                Optional.empty(),
                Scenes.UNICODE);
    }
}
