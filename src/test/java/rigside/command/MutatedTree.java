package rigside.command;

import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeId;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.resolver.Resolver;

/** A file that is sound YAML, with keys and items deleted, doubled, moved and of other kinds. */
final class MutatedTree {
    /** Parts that hold each other would be copied without end. */
    private static final int MOST_COPIED = 500;

    private static final List<String> WORDS =
            List.of(
                    "",
                    "~",
                    "yes",
                    "0",
                    "-1",
                    "1e9",
                    ".inf",
                    "10 %",
                    "2 times",
                    "90 s",
                    "25 Pa",
                    "0.8 to 1.25",
                    "0 to 10 s",
                    "seal",
                    "plain",
                    "note",
                    "\u001B",
                    "x y",
                    "a: b",
                    "x".repeat(5000));

    private final SplittableRandom random;
    private final Node root;
    private final List<SequenceNode> lists = new ArrayList<>();
    private final List<MappingNode> groups = new ArrayList<>();
    private final List<ScalarNode> words = new ArrayList<>();
    private int copied;

    private MutatedTree(Node root, SplittableRandom random) {
        this.root = root;
        this.random = random;
        gather(root);
    }

    /** The text with so many changes in its tree, written anew. */
    static String of(String text, int changes, SplittableRandom random) {
        Yaml yaml = new Yaml(new LoaderOptions());
        MutatedTree tree = new MutatedTree(yaml.compose(new StringReader(text)), random);
        for (int i = 0; i < changes; i++) {
            tree.change();
        }
        StringWriter out = new StringWriter();
        yaml.serialize(tree.root, out);
        return out.toString();
    }

    private void gather(Node node) {
        if (node instanceof SequenceNode list) {
            lists.add(list);
            list.getValue().forEach(this::gather);
        } else if (node instanceof MappingNode group) {
            groups.add(group);
            group.getValue().forEach(each -> gather(each.getValueNode()));
        } else {
            words.add((ScalarNode) node);
        }
    }

    private void change() {
        copied = 0;
        if (random.nextInt(8) == 0) {
            (random.nextBoolean() ? pick(lists) : pick(groups))
                    .setFlowStyle(random.nextBoolean() ? FlowStyle.FLOW : FlowStyle.BLOCK);
        }
        if (random.nextInt(3) == 0) {
            changeItems(pick(lists).getValue());
        } else {
            changeKeys(pick(groups).getValue());
        }
    }

    private void changeItems(List<Node> items) {
        if (items.isEmpty()) {
            items.add(any());
            return;
        }
        int at = random.nextInt(items.size());
        switch (random.nextInt(5)) {
            case 0 -> items.remove(at);
            case 1 -> items.add(copy(items.get(at)));
            case 2 -> pick(lists).getValue().add(items.remove(at));
            case 3 -> Collections.shuffle(items, new Random(random.nextLong()));
            default -> items.set(at, another(items.get(at)));
        }
    }

    private void changeKeys(List<NodeTuple> keys) {
        if (keys.isEmpty()) {
            keys.add(new NodeTuple(scalar("title"), any()));
            return;
        }
        int at = random.nextInt(keys.size());
        NodeTuple tuple = keys.get(at);
        switch (random.nextInt(8)) {
            case 0 -> keys.remove(at);
            case 1 -> keys.add(new NodeTuple(tuple.getKeyNode(), copy(tuple.getValueNode())));
            case 2 -> pick(groups).getValue().add(keys.remove(at));
            case 3 -> pick(groups).getValue().add(copy(tuple));
            case 4 -> keys.set(at, new NodeTuple(anyKey(), tuple.getValueNode()));
            case 5 -> Collections.shuffle(keys, new Random(random.nextLong()));
            case 6 -> keys.set(at, new NodeTuple(any(), tuple.getValueNode()));
            default ->
                    keys.set(at, new NodeTuple(tuple.getKeyNode(), another(tuple.getValueNode())));
        }
    }

    /** Something else in the place of a node, perhaps around it, perhaps out of it. */
    private Node another(Node node) {
        return switch (random.nextInt(8)) {
            case 0 -> list(node);
            case 1 -> group(node);
            case 2 -> deep(node, 1 + random.nextInt(60));
            case 3 -> inside(node);
            case 4 -> list(copy(node), copy(node));
            // The very same node twice, or within itself, is written as an anchor and an alias.
            case 5 -> random.nextBoolean() ? pick(lists) : pick(groups);
            case 6 -> pick(words);
            default -> any();
        };
    }

    private Node deep(Node node, int levels) {
        Node deep = node;
        for (int i = 0; i < levels; i++) {
            deep = random.nextBoolean() ? list(deep) : group(deep);
        }
        return deep;
    }

    private Node inside(Node node) {
        if (node instanceof SequenceNode list && !list.getValue().isEmpty()) {
            return list.getValue().get(0);
        }
        return node instanceof MappingNode group && !group.getValue().isEmpty()
                ? group.getValue().get(0).getValueNode()
                : list();
    }

    private Node any() {
        return switch (random.nextInt(4)) {
            case 0 -> scalar(MutatedWords.pick(WORDS, random));
            case 1 -> copy(random.nextBoolean() ? pick(lists) : pick(groups));
            default -> scalar(pick(words).getValue());
        };
    }

    private Node anyKey() {
        List<NodeTuple> keys = pick(groups).getValue();
        return keys.isEmpty() ? any() : keys.get(random.nextInt(keys.size())).getKeyNode();
    }

    private <T> T pick(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    private NodeTuple copy(NodeTuple tuple) {
        return new NodeTuple(copy(tuple.getKeyNode()), copy(tuple.getValueNode()));
    }

    private Node copy(Node node) {
        if (copied++ > MOST_COPIED) {
            return node;
        }
        if (node instanceof SequenceNode list) {
            return list(list.getValue().stream().map(this::copy).toArray(Node[]::new));
        }
        if (node instanceof MappingNode group) {
            return new MappingNode(
                    Tag.MAP,
                    new ArrayList<>(group.getValue().stream().map(this::copy).toList()),
                    FlowStyle.BLOCK);
        }
        return scalar(((ScalarNode) node).getValue());
    }

    private static Node list(Node... items) {
        return new SequenceNode(Tag.SEQ, new ArrayList<>(List.of(items)), FlowStyle.BLOCK);
    }

    private static Node group(Node value) {
        List<NodeTuple> keys = new ArrayList<>(List.of(new NodeTuple(scalar("title"), value)));
        return new MappingNode(Tag.MAP, keys, FlowStyle.BLOCK);
    }

    private static Node scalar(String text) {
        Tag tag = new Resolver().resolve(NodeId.scalar, text, true);
        return new ScalarNode(tag, text, null, null, ScalarStyle.PLAIN);
    }
}
