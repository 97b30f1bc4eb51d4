package rigside.bench;

import com.googlecode.lanterna.input.KeyType;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import rigside.screen.SelfTestView;
import rigside.screen.SelfTestView.LiveKey;
import rigside.screen.Stroke;
import rigside.screen.View;

/**
 * What a self-test shows and which keys answer it. Once it is left nothing is asked or waited for
 * any more.
 */
final class Dialogue {
    static final LiveKey LEAVE = new LiveKey(Stroke.of('q'), "leave");

    private static final long SECOND = 1_000_000_000L;

    private final SelfTest.World world;
    private final View.Style style;
    private final double bounceSeconds;
    private boolean left;

    /**
     * @param bounceSeconds a key that comes again within this is one stroke held, or bouncing
     */
    Dialogue(SelfTest.World world, View.Style style, double bounceSeconds) {
        this.world = world;
        this.style = style;
        this.bounceSeconds = bounceSeconds;
    }

    boolean isLeft() {
        return left;
    }

    Stroke trigger() {
        return style.trigger();
    }

    /** The first such key before a moment, unless it is left. */
    Optional<Pressed> next(long until, Predicate<Pressed> wanted) {
        while (!left && world.nanos() < until) {
            Optional<Pressed> pressed = world.next(until - world.nanos());
            if (pressed.filter(wanted).isPresent()) {
                return pressed;
            }
            pressed.ifPresent(this::leaves);
        }
        return Optional.empty();
    }

    /** Shows something until its key is pressed; nothing once it is left. */
    void awaits(String title, List<String> lines, String help, Stroke stroke) {
        if (!left) {
            asks(title, lines, new LiveKey(stroke, help));
        }
    }

    /** Shows something until one of some keys is pressed; any of them when it is left. */
    Stroke asks(String title, List<String> lines, LiveKey... keys) {
        List<LiveKey> live = Stream.concat(Stream.of(keys), Stream.of(LEAVE)).toList();
        draw(title, Optional.empty(), lines, live);
        while (!left) {
            Optional<Pressed> pressed = world.next(SECOND);
            for (LiveKey key : keys) {
                if (pressed.filter(each -> means(each, key.stroke())).isPresent()) {
                    return key.stroke();
                }
            }
            pressed.ifPresent(this::leaves);
            draw(title, Optional.empty(), lines, live);
        }
        return keys[0].stroke();
    }

    /** Whether a key is that stroke, and not one held down or bouncing. */
    boolean means(Pressed pressed, Stroke stroke) {
        return Stroke.of(pressed.key()).equals(stroke) && !pressed.isRepeat(bounceSeconds);
    }

    private void leaves(Pressed pressed) {
        Stroke stroke = Stroke.of(pressed.key());
        left |=
                pressed.isEnd()
                        || stroke.equals(LEAVE.stroke())
                        || stroke.equals(Stroke.ctrl('c'))
                        || stroke.equals(Stroke.ctrl('q'))
                        || stroke.equals(Stroke.of(KeyType.Escape));
    }

    void draw(String title, Optional<String> big, List<String> lines, List<LiveKey> keys) {
        draw(title, big, lines, keys, Optional.empty());
    }

    void draw(
            String title,
            Optional<String> big,
            List<String> lines,
            List<LiveKey> keys,
            Optional<String> message) {
        world.draw(new SelfTestView(title, big, lines, message, keys, style));
    }
}
