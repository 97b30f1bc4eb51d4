package rigside.screen;

import com.googlecode.lanterna.TerminalSize;
import java.util.ArrayList;
import java.util.List;

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
        };
    }

    private Picture home() {
        HomeLists lists = new HomeLists(view, columns >= WIDE ? columns / 2 : columns, signs());
        int room = Picture.room(rows, top(), bottom());
        List<Line> body =
                columns >= WIDE
                        ? Line.beside(
                                lists.lines(room),
                                columns / 2 + 2,
                                detail(columns / 2 - 4),
                                signs().cut())
                        : narrow(lists, room);
        Picture picture = Picture.fixed(rows, top(), body, bottom(), signs());
        int last = Math.max(0, view.protocols().size() + view.sessions().size() - 1);
        return new Picture(picture.lines(), new View.Seen(last, room, view.selected() >= last));
    }

    /** The details below the lists, in at least a third of the room. */
    private List<Line> narrow(HomeLists lists, int room) {
        List<Line> detail = new ArrayList<>(indented(detail(columns - 4)));
        List<Line> body = new ArrayList<>(lists.lines(Math.max(8, room - detail.size() - 1)));
        body.add(Line.BLANK);
        int left = Math.max(0, room - body.size());
        body.addAll(detail.subList(0, Math.min(left, detail.size())));
        return body;
    }

    private List<Line> detail(int width) {
        List<String> paragraphs =
                view.protocol()
                        .map(HomeView.ProtocolItem::detail)
                        .or(() -> view.session().map(HomeView.SessionItem::detail))
                        .orElse(List.of());
        return paragraphs.stream().flatMap(each -> Wrap.lines(each, width).stream()).toList();
    }

    private List<Line> review() {
        List<Line> lines = new ArrayList<>();
        lines.add(Line.of(Tone.STRONG, view.review().title()));
        lines.add(Line.BLANK);
        view.review()
                .lines()
                .forEach(
                        each ->
                                lines.addAll(
                                        each.isBlank()
                                                ? List.of(Line.BLANK)
                                                : Wrap.lines(each, columns - 4)));
        return lines;
    }

    private Picture scrolled(List<Line> body) {
        return Picture.scrolled(rows, top(), indented(body), bottom(), view.selected());
    }

    private static List<Line> indented(List<Line> lines) {
        return lines.stream().map(line -> line.indented(2)).toList();
    }

    private List<Line> top() {
        String notice =
                switch (view.page()) {
                    case HOME -> Header.notice(view.rig().simulated(), view.rig().speed());
                    case HELP -> "";
                    case REVIEW -> Header.notice(view.review().simulated(), view.review().speed());
                };
        return List.of(
                Header.strip("Rigside", notice, columns, signs()),
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

    /** What a session started now would be told by. */
    private List<Line> readings() {
        return view.page() == HomeView.Page.HOME
                ? List.of(Line.of(" readings: ").plus(Tone.STRONG, view.rig().words()))
                : List.of();
    }

    private Glyphs signs() {
        return Glyphs.of(view.style());
    }
}
