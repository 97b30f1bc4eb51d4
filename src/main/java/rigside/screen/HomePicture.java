package rigside.screen;

import com.googlecode.lanterna.TerminalSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts the parts of the picture away from a session together for one size. */
record HomePicture(HomeView view, int columns, int rows) {

    /** From this width on the details stand beside the lists. */
    private static final int WIDE = 120;

    static Picture of(HomeView view, TerminalSize size) {
        return TooSmall.is(size)
                ? new Picture(TooSmall.lines(size), TooSmall.SEEN)
                : new HomePicture(view, size.getColumns(), size.getRows()).picture();
    }

    private Picture picture() {
        return switch (view.page()) {
            case HOME -> home();
            case HELP -> scrolled(HelpPicture.home(columns - 4));
            case REVIEW -> scrolled(review());
            case METHOD -> scrolled(session().map(MethodPicture::of).orElse(List.of()));
            case FLAGS -> scrolled(session().map(FlagsPicture::of).orElse(List.of()));
        };
    }

    private Picture home() {
        HomeLists lists = new HomeLists(view, columns >= WIDE ? lists() : columns, signs());
        int room = Picture.room(rows, top(), bottom());
        List<Line> body =
                columns >= WIDE
                        ? Line.beside(
                                lists.lines(room),
                                lists() + 2,
                                Scene.cut(detail(lists, columns - lists() - 4), room, "[v]"),
                                signs().cut())
                        : narrow(lists, room);
        Picture picture = Picture.fixed(rows, top(), body, bottom(), signs());
        int last = Math.max(0, view.protocols().size() + view.sessions().size() - 1);
        return new Picture(picture.lines(), new View.Seen(last, room, view.selected() >= last));
    }

    /** The lists' share of a wide window: their titles are long, the details wrap. */
    private int lists() {
        return columns * 3 / 5;
    }

    /** The details below the lists, in at least a third of the room. */
    private List<Line> narrow(HomeLists lists, int room) {
        List<Line> detail = new ArrayList<>(indented(detail(lists, columns - 4)));
        List<Line> body = new ArrayList<>(lists.lines(Math.max(8, room - detail.size() - 1)));
        body.add(Line.BLANK);
        body.addAll(Scene.cut(detail, room - body.size(), "[v]"));
        return body;
    }

    /** Of what is chosen, its title first where the list has no room for the whole of it. */
    private List<Line> detail(HomeLists lists, int width) {
        List<String> paragraphs =
                view.protocol()
                        .map(HomeView.ProtocolItem::detail)
                        .or(() -> view.session().map(HomeView.SessionItem::detail))
                        .orElse(List.of());
        List<Line> title =
                view.protocol()
                        .filter(lists::cuts)
                        .map(item -> Wrap.lines(Tone.STRONG, item.title(), width))
                        .orElse(List.of());
        return Line.stacked(
                title,
                paragraphs.stream().flatMap(each -> Wrap.lines(each, width).stream()).toList());
    }

    private List<Line> review() {
        List<Line> trouble =
                view.review().trouble().stream()
                        .flatMap(each -> Wrap.lines(Tone.WARN, each, columns - 4).stream())
                        .toList();
        return Scene.stack(
                trouble,
                session().map(TallyPicture::of).orElse(List.of()),
                Line.stacked(
                        Paragraphs.of(view.review().lines(), columns - 4),
                        Paragraphs.sheet(view.review().sheet(), columns - 4)));
    }

    /** The scene of the session that is read through. */
    private Optional<Scene> session() {
        int room = Picture.room(rows, top(), bottom());
        return view.review()
                .read()
                .map(
                        read ->
                                new View(
                                        read.state(),
                                        read.shown(),
                                        0,
                                        View.Page.TALLY,
                                        0,
                                        Optional.empty(),
                                        "",
                                        Optional.empty(),
                                        view.style()))
                .map(session -> new Scene(session, columns - 4, room, false, Big.USUAL));
    }

    private Picture scrolled(List<Line> body) {
        return Picture.scrolled(rows, top(), indented(body), bottom(), view.selected());
    }

    private static List<Line> indented(List<Line> lines) {
        return lines.stream().map(line -> line.indented(2)).toList();
    }

    private List<Line> top() {
        boolean reads =
                switch (view.page()) {
                    case HOME, HELP -> false;
                    case REVIEW, METHOD, FLAGS -> true;
                };
        HomeView.Review review = view.review();
        String notice =
                reads
                        ? Header.notice(review.simulated(), review.speed())
                        : view.page() == HomeView.Page.HOME
                                ? Header.notice(view.rig().simulated(), view.rig().speed())
                                : "";
        return List.of(
                Header.strip(reads ? review.title() : "Rigside", notice, columns, signs()),
                Line.of(
                        Tone.QUIET,
                        " Compares respirators on one wearer. Not a certified fit test."),
                Line.BLANK);
    }

    private List<Line> bottom() {
        List<Line> lines = new ArrayList<>();
        lines.add(Line.of(Tone.QUIET, signs().light().repeat(columns)));
        lines.addAll(
                view.message()
                        .map(
                                message ->
                                        Wrap.hanging(
                                                Line.of(Tone.WARN, " > "),
                                                Tone.STRONG,
                                                message,
                                                columns - 1))
                        .orElse(readings()));
        List<KeyLine.Named> keys =
                HomeKeys.of(view).stream()
                        .map(key -> new KeyLine.Named(key.label(), key.help()))
                        .toList();
        KeyLine.lines(keys, columns - 2).forEach(line -> lines.add(line.indented(1)));
        return List.copyOf(lines);
    }

    /** What a session started now would be told by, or the words being typed. */
    private List<Line> readings() {
        if (view.page() == HomeView.Page.HOME && view.sought().typing()) {
            return List.of(Line.of(" search: ").plus(Tone.STRONG, view.sought().words() + "_"));
        }
        return view.page() == HomeView.Page.HOME
                ? List.of(Line.of(" readings: ").plus(Tone.STRONG, view.rig().words()))
                : List.of();
    }

    private Glyphs signs() {
        return Glyphs.of(view.style());
    }
}
